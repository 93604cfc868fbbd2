/** Where what is told again ends: "it was five Salt Harrier I potted on today one was too weak". */
import { wordAt } from '../../grammar/rule.js';
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import { tellsDeed } from './deeds.js';
import { lastOf, type MarkMeant, wordBack } from './record.js';

const IS = whole`was|were|is|are|wasn't|weren't|isn't|aren't|had|hadn't|looked`;

/** "It was …": told again, whatever came before. */
const isCleft = (before: readonly Piece[]): boolean =>
  before.some(
    (_, at) => at < 3 && /^(?:it|that|they)$/.test(wordAt(before, at)) && IS.test(wordAt(before, at + 1)),
  );

/** "The other one's roots were too small": why so few. */
const isOfOthers = (behind: readonly Piece[]): boolean =>
  wordAt(behind, 0) === 'the' &&
  /^(?:others?|rest|remaining)$/.test(wordAt(behind, 1)) &&
  [2, 3, 4].some((at) => IS.test(wordAt(behind, at)));

export const toldAgain: readonly MarkMeant[] = [
  {
    name: 'it was <count> <plant> I <deed> the other ones were <how>',
    mark: '.',
    begins: ['count', 'word'],
    when: (before, behind) =>
      isCleft(before) &&
      before.some((piece) => tellsDeed(piece)) &&
      !/^(?:of|to|in|into|with|from|and|but|all|for|that|which|the|only)$/.test(wordBack(before)) &&
      (behind[0]?.is === 'count' ? IS.test(wordAt(behind, 1)) : isOfOthers(behind)),
    phrasings: [
      [
        'it was six Salt Harrier I potted on this afternoon the other ones roots were too small',
        'it was six Salt Harrier I potted on this afternoon. the other ones roots were too small',
      ],
      [
        'it was five Salt Harrier I potted on today one was too weak',
        'it was five Salt Harrier I potted on today. one was too weak',
      ],
    ],
    mustNot: [
      'it was six Salt Harrier I potted on with the other ones',
      'it was six Salt Harrier I potted on the rest I planted out',
    ],
  },
  {
    name: 'it was <count> <plant> I <deed> I put <count>',
    mark: ',',
    begins: ['word'],
    when: (before, behind) => {
      const said = behind[2];
      const the = wordAt(behind, 2) === 'the' ? behind[3] : undefined;
      const isNumber = said?.is === 'count' && behind.slice(3, 6).every(({ is }) => is === 'word');
      return (
        /^(?:i|we)$/.test(wordAt(behind, 0)) &&
        /^(?:put|wrote|said|typed|logged)$/.test(wordAt(behind, 1)) &&
        (isNumber || said?.is === 'when' || the?.is === 'when') &&
        (isCleft(before) || before.some((_, at) => IS.test(wordAt(before, at)))) &&
        before.some((piece) => tellsDeed(piece)) &&
        /^(?:when|word)$/.test(lastOf(before)?.is ?? '') &&
        !/^(?:and|but|than|not|what|so|that|as|because|like)$/.test(wordBack(before))
      );
    },
    phrasings: [
      [
        'it was nine Salt Harrier I took yesterday I put six like a fool',
        'it was nine Salt Harrier I took yesterday, I put six like a fool',
      ],
    ],
    mustNot: ['it was the Salt Harrier I took yesterday I put six in the porch'],
  },
  {
    name: 'it was the <plant> I moved all of them',
    mark: ',',
    begins: ['word'],
    when: (before, behind) =>
      isCleft(before) &&
      lastOf(before)?.is === 'plant' &&
      before.every(({ is }) => is === 'word' || is === 'plant') &&
      /^(?:i|we)$/.test(wordAt(behind, 0)) &&
      tellsDeed(behind[1]) &&
      [2, 3].some((at) => {
        const piece = behind[at];
        return piece?.is === 'count' ? piece.quantity.whole !== undefined : wordAt(behind, at) === 'them';
      }),
    phrasings: [
      [
        'it was the Salt Harrier I moved all of them to the greenhouse',
        'it was the Salt Harrier, I moved all of them to the greenhouse',
      ],
    ],
    mustNot: ['it was the Salt Harrier I moved to the greenhouse'],
  },
];
