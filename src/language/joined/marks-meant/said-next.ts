/** What is said next of what was told: where it all stands, what is still wanted, why it is told so late. */
import { wordAt } from '../../grammar/rule.js';
import { opening, whole } from '../../phrases.js';
import { tellsDeed } from './deeds.js';
import { lastOf, type MarkMeant, wordBack } from './record.js';
import { firstWord } from './sentences.js';

/** Words that lead to a sentence within another. */
const THEN = whole`
  and|but|so|because|cos|as|if|that|when|where|while|whilst|until|till|once|since|think|reckon|hope|says|say|said|now|though|before
  after|like|than|which|what|how|only|i'm|sure|know|guess
`;

const MIGHT = opening`
  should've|could've|would've|might've|shoulda
  (should|could|would|might) (have|be)
  ought to
  wish (i|i'd|we)
`;

export const saidNext: readonly MarkMeant[] = [
  {
    // What was not done, or might have been.
    name: "<deed> <day> should've <deed>",
    mark: '.',
    begins: ['word', 'count'],
    when: (before, behind) => {
      const words = [0, 1, 2].map((at) => wordAt(behind, at)).join(' ');
      const isNotAll =
        wordAt(behind, 0) === 'not' && behind[1]?.is === 'count' && behind[1].quantity.whole !== undefined;
      return (
        (isNotAll || MIGHT.test(words)) &&
        /^(?:when|place|plant|size|medium)$/.test(lastOf(before)?.is ?? '') &&
        before.some(({ is }) => is === 'plant') &&
        before.some((piece) => tellsDeed(piece))
      );
    },
    phrasings: [
      [
        "lost the Salt Harrier to frost last night should've brought them in",
        "lost the Salt Harrier to frost last night. should've brought them in",
      ],
    ],
    mustNot: [
      "the Salt Harrier should've been watered",
      "Doreen's Salt Harrier should have been moved to the porch",
    ],
  },
  {
    name: "<deed> <place> didn't get as far as <place>",
    mark: ',',
    begins: ['word'],
    when: (before, behind) =>
      /^(?:didn't|didnt|haven't|havent|never)$/.test(wordAt(behind, 0)) &&
      /^(?:get|got|bother|bothered|touch|touched|reach|reached|manage|managed)$/.test(wordAt(behind, 1)) &&
      /^(?:when|place)$/.test(lastOf(before)?.is ?? '') &&
      behind.slice(2, 8).some(({ is }) => is === 'place' || is === 'plant') &&
      before.some((piece) => tellsDeed(piece)),
    phrasings: [
      [
        "watered the greenhouse didn't get as far as the porch",
        "watered the greenhouse, didn't get as far as the porch",
      ],
    ],
  },
  {
    name: 'never <deed> let alone <deed>',
    mark: ',',
    begins: ['word'],
    when: (before, behind) =>
      wordAt(behind, 0) === 'let' && wordAt(behind, 1) === 'alone' && lastOf(before)?.is === 'word',
    phrasings: [
      [
        'never pinched let alone potted on the Salt Harrier',
        'never pinched, let alone potted on the Salt Harrier',
      ],
    ],
  },
  {
    // Where all that was told of stands, or what it is.
    name: "<deed> they're <there>",
    mark: ',',
    begins: ['word'],
    when: (before, behind) => {
      const isAll =
        behind[1]?.is === 'count' || /^(?:now|already|safely|sitting|standing)$/.test(wordAt(behind, 1));
      const next = behind[isAll ? 2 : 1];
      return (
        /^(?:they're|theyre|they've|it's)$/.test(wordAt(behind, 0)) &&
        next?.is === 'word' &&
        /^(?:in|on|under|by|at|going|gone|sitting|out|inside|outside|back)$/.test(next.text) &&
        before.some(({ is }) => is === 'plant') &&
        !THEN.test(wordBack(before))
      );
    },
    phrasings: [
      [
        "took 5 Salt Harrier and 4 Tallow Bell they're all in the propagator",
        "took 5 Salt Harrier and 4 Tallow Bell, they're all in the propagator",
      ],
    ],
    mustNot: [
      "took 5 Salt Harrier and they're all in the propagator",
      "moved the Salt Harrier so they're in the porch",
    ],
  },
  {
    name: 'going to <deed> … doing it <day>',
    mark: ',',
    begins: ['word'],
    when: (before, behind) =>
      wordAt(behind, 0) === 'doing' &&
      /^(?:it|them|those|that|both)$/.test(wordAt(behind, 1)) &&
      /^(?:need|want|ought|should|going|gonna|supposed|meant|hoping|planning)$/.test(firstWord(before)) &&
      before.some(({ is }) => is === 'plant') &&
      /^(?:when|plant)$/.test(lastOf(before)?.is ?? ''),
    phrasings: [
      [
        'was going to pot on the Salt Harrier today doing it Saturday instead',
        'was going to pot on the Salt Harrier today, doing it Saturday instead',
      ],
    ],
  },
  {
    name: '<deed> <plant> <day> I need <count>',
    mark: '.',
    begins: ['word'],
    when: (before, behind) =>
      /^(?:i|we)$/.test(wordAt(behind, 0)) &&
      /^(?:need|want)$/.test(wordAt(behind, 1)) &&
      behind[2]?.is === 'count' &&
      /^(?:when|place|size)$/.test(lastOf(before)?.is ?? '') &&
      before.some(({ is }) => is === 'plant') &&
      before.some((piece) => tellsDeed(piece)),
    phrasings: [
      [
        'took ten Salt Harrier this morning I need forty of them by the end of August',
        'took ten Salt Harrier this morning. I need forty of them by the end of August',
      ],
    ],
    mustNot: ['took the ten Salt Harrier I need'],
  },
  {
    name: '<deed> <day> found the label',
    mark: ',',
    begins: ['word'],
    when: (before, behind) => {
      const found = /^(?:only|just)$/.test(wordAt(behind, 0)) ? (wordAt(behind, 1) === 'just' ? 2 : 1) : 0;
      return (
        wordAt(behind, found) === 'found' &&
        [1, 2, 3].some((n) =>
          /^(?:label|labels|tag|note|list|diary|receipt|notebook)$/.test(wordAt(behind, found + n)),
        ) &&
        /^(?:when|place|plant|size)$/.test(lastOf(before)?.is ?? '') &&
        before.some((piece) => tellsDeed(piece))
      );
    },
    phrasings: [
      [
        'struck 5 Salt Harrier on 2 June found the label under the bench',
        'struck 5 Salt Harrier on 2 June, found the label under the bench',
      ],
    ],
  },
];
