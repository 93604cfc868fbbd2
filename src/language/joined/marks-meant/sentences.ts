/** Where another sentence begins: another day's deed, what was got round to, a question. */
import { wordAt } from '../../grammar/rule.js';
import { isOpening } from '../openings.js';
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import { hasObject, tellsDeed } from './deeds.js';
import { lastOf, type MarkMeant, wordBack } from './record.js';

const ASKS = whole`when|how|where|what|which|why`;
const ASKS_WITH = whole`will|do|did|are|is|was|were|many|much|should|can|could|have|has|long|would|does`;

export const sentencesBegun: readonly MarkMeant[] = [
  {
    name: 'it was only <count> I ran out',
    mark: ',',
    begins: ['word'],
    when: (before, behind) =>
      before.at(-1)?.is === 'count' &&
      /^(?:was|only|were|it's)$/.test(wordBack(before, 2)) &&
      /^(?:i|we)$/.test(wordAt(behind, 0)) &&
      /^(?:ran (?:out|short)|got (?:muddled|distracted|confused|called)|was (?:tired|rushing|distracted))$/.test(
        `${wordAt(behind, 1)} ${wordAt(behind, 2)}`,
      ),
    phrasings: [['it was only fifteen I ran out of pots', 'it was only fifteen, I ran out of pots']],
    mustNot: ['it was only fifteen I potted on'],
  },
  {
    name: '<day> <deed> <day> <deed>',
    mark: '.',
    begins: ['when'],
    when: (before, behind) => {
      const told = behind[1];
      const isNext = tellsDeed(told) ? hasObject(behind.slice(1)) : told?.is === 'count';
      return (
        before[0]?.is === 'when' &&
        before.some((piece) => piece.is === 'word' && piece.verb?.form === 'past') &&
        isNext &&
        !/^(?:on|in|since|from|until|till|by|for|of|last|at|and|then)$/.test(wordBack(before))
      );
    },
    phrasings: [
      [
        'Saturday fed the greenhouse Sunday struck twelve Salt Harrier',
        'Saturday fed the greenhouse. Sunday struck twelve Salt Harrier',
      ],
      [
        'yesterday nine Salt Harrier taken this morning five more',
        'yesterday nine Salt Harrier taken. this morning five more',
      ],
    ],
    mustNot: ['yesterday potted on the Salt Harrier struck in May', 'yesterday took six Salt Harrier'],
  },
  {
    name: 'got round to <plant> <day> <count>',
    mark: '.',
    begins: ['count'],
    when: (before, behind) =>
      isOpening(before, 0, before.length) && behind.slice(0, 6).every(({ is }) => is !== 'plant'),
    phrasings: [
      [
        'finally got round to the Salt Harrier this afternoon nine tips dipped in hormone',
        'finally got round to the Salt Harrier this afternoon. nine tips dipped in hormone',
      ],
    ],
    mustNot: [
      'finally got round to potting the Salt Harrier nine of them',
      'got round to the Salt Harrier nine Tallow Bell died',
    ],
  },
  {
    // What was found has its own plant before it; those named behind were not seen to.
    name: "<count> rooted didn't bother with <plant>",
    mark: ',',
    begins: ['word'],
    when: (before, behind) => {
      const last = lastOf(before);
      const named = behind.findIndex(({ is }) => is === 'plant');
      return (
        /^(?:didn't|haven't|hadn't|never)$/.test(wordAt(behind, 0)) &&
        /^(?:get|got|bother|bothered|touch|touched|reach|reached|look|looked|manage|managed)$/.test(
          wordAt(behind, 1),
        ) &&
        named > 1 &&
        behind.slice(2, named).every(({ is }) => is === 'word') &&
        before.some(({ is }) => is === 'plant') &&
        last?.is === 'word' &&
        !/^(?:that|which|who)$/.test(wordBack(before, 2)) &&
        (last.text === 'roots' || (last.verb?.form === 'past' && /^(?:root|die|rot)$/.test(last.verb.lemma)))
      );
    },
    phrasings: [
      [
        "looked at the Salt Harrier and six are rooted didn't bother with the Tallow Bell",
        "looked at the Salt Harrier and six are rooted, didn't bother with the Tallow Bell",
      ],
    ],
    mustNot: ["the six Salt Harrier that rooted didn't touch the Tallow Bell's pot"],
  },
  {
    name: '<deed> <question>',
    mark: '.',
    begins: ['word'],
    when: (before, behind) => {
      const asked = behind.findIndex(({ is }) => is === 'break');
      const mark = behind[asked];
      return (
        mark?.is === 'break' &&
        mark.mark === '?' &&
        ASKS.test(wordAt(behind, 0)) &&
        ASKS_WITH.test(wordAt(behind, 1)) &&
        !/^(?:and|but|or|so|know|see|say|tell|told|asked|ask|wonder|wondered|wondering|idea|me|sure|since|from|to|about|of|on|for|exactly)$/.test(
          wordBack(before),
        ) &&
        before.some((piece) => tellsDeed(piece)) &&
        before.some(({ is }) => is === 'plant')
      );
    },
    phrasings: [
      [
        'potted on six Salt Harrier and misted the propagator for a bit when will the Tallow Bell be ready?',
        'potted on six Salt Harrier and misted the propagator for a bit. when will the Tallow Bell be ready?',
      ],
    ],
    mustNot: ['potted on six Salt Harrier and asked Doreen how many are left?'],
  },
  {
    name: 'need to <deed> … did <plant>',
    mark: '.',
    begins: ['word'],
    when: (before, behind) =>
      /^(?:did|done)$/.test(wordAt(behind, 0)) &&
      /^(?:need|must|have|got|want|ought|should|going|gonna|supposed|meant|hoping|planning)$/.test(
        firstWord(before),
      ) &&
      before.some(({ is }) => is === 'plant') &&
      (behind[1]?.is === 'plant' ||
        behind[1]?.is === 'count' ||
        (/^(?:the|my|all)$/.test(wordAt(behind, 1)) && behind[2]?.is === 'plant')) &&
      (/^(?:next|soon|now|too|first)$/.test(wordBack(before)) ||
        /^(?:when|plant)$/.test(before.at(-1)?.is ?? '')),
    phrasings: [
      [
        'need to pot on the Tallow Bell next did the Salt Harrier this morning',
        'need to pot on the Tallow Bell next. did the Salt Harrier this morning',
      ],
    ],
    mustNot: ['the ones I did the Salt Harrier with'],
  },
  {
    name: 'meant to <deed> … only got <count>',
    mark: ',',
    begins: ['word'],
    when: (before, behind) =>
      /^(?:only|just|but)$/.test(wordAt(behind, 0)) &&
      /^(?:got|managed|took|did|had|found)$/.test(wordAt(behind, 1)) &&
      behind[2]?.is === 'count' &&
      /^(?:meant|wanted|hoped|planned|intended|going|hoping)$/.test(firstWord(before)) &&
      before.some(({ is }) => is === 'plant'),
    phrasings: [
      [
        'meant to take ten Salt Harrier only got six in before the light went',
        'meant to take ten Salt Harrier, only got six in before the light went',
      ],
    ],
  },
  {
    name: '<deed> <plant> last year I only took <count>',
    mark: ',',
    begins: ['when'],
    when: (before, behind) => {
      const [then] = behind;
      return (
        then?.is === 'when' &&
        /^last (?:year|season)$/i.test(then.when.words) &&
        before.some(({ is }) => is === 'plant') &&
        before.some((piece) => tellsDeed(piece)) &&
        /^(?:i|we)$/.test(wordAt(behind, 1)) &&
        !/^(?:from|since|of|than|like|as|the|and|but)$/.test(wordBack(before)) &&
        [2, 3].some((at) => tellsDeed(behind[at]))
      );
    },
    phrasings: [
      [
        'took six Salt Harrier last year I only took four',
        'took six Salt Harrier, last year I only took four',
      ],
    ],
    mustNot: ['took six Salt Harrier like last year I think', 'the Salt Harrier from last year I potted on'],
  },
  {
    // What is told of other plants is no part of the loss.
    name: '<count> <plant> died the <plant> are all fine',
    mark: '.',
    begins: ['word', 'plant'],
    when: (before, behind) =>
      !(lastOf(before)?.is === 'plant' && behind[0]?.is === 'plant') &&
      before.some(({ is }) => is === 'plant') &&
      before.some((piece) => tellsDeed(piece) || (piece.is === 'word' && piece.text === 'went')) &&
      !/^(?:the|my|our|of|all|and|but|so|because|as|since|to|in|on|for|with|off|from|like|than)$/.test(
        wordBack(before),
      ) &&
      isPlantDoingWell(behind),
    phrasings: [
      [
        'it was two of the Salt Harrier that died the Tallow Bell are all fine',
        'it was two of the Salt Harrier that died. the Tallow Bell are all fine',
      ],
      [
        'gave three Salt Harrier to Doreen my Tallow Bell look happy enough',
        'gave three Salt Harrier to Doreen. my Tallow Bell look happy enough',
      ],
    ],
    mustNot: [
      'took six of the Salt Harrier and the Tallow Bell all good ones',
      'two Salt Harrier died of the Tallow Bell blight',
      'took six of them and Salt Harrier as well',
    ],
  },
];

/** How plants do that nothing befell. */
const DO_WELL = whole`
  fine|ok|okay|grand|happy|thriving|well|good|lovely|great|alright|perfect|healthy|safe|perky|unscathed|untouched|alive
  flying|brilliant|super|smashing|strong
`;
const WELL_REACH = 6;

/** "The Tallow Bell are all doing fine", "my Tallow Bell look happy"; no "Tallow Bell as well". */
function isPlantDoingWell(behind: readonly Piece[]): boolean {
  const plant = /^(?:the|my|our|all|and)$/.test(wordAt(behind, 0)) ? 1 : 0;
  if (behind[plant]?.is !== 'plant') return false;
  let isTold = false;
  for (let at = plant + 1; at < plant + WELL_REACH; at++) {
    const isShort = at === plant + 1 && (behind[at + 1] === undefined || behind[at + 1]?.is === 'break');
    if ((isTold || isShort) && DO_WELL.test(wordAt(behind, at))) return true;
    if (behind[at]?.is === 'count' || DO.test(wordAt(behind, at))) isTold = true;
    else if (!HOW_MUCH.test(wordAt(behind, at))) return false;
  }
  return false;
}

const DO = whole`are|is|look|looks|looking|seem|seems|doing|both`;
const HOW_MUCH = whole`still|though|otherwise|quite|very|really|just|absolutely|perfectly`;

/** What it opens with, past whoever speaks. */
export const firstWord = (before: readonly Piece[]): string =>
  before
    .map((_, at) => wordAt(before, at))
    .find((word) => !/^(?:i|we|i'd|i'm|was|were|still|really|we'd)$/.test(word)) ?? '';
