/** What a plain word tells: plants named before, or a single one of them. */
import { DUD } from '../../pieces/duds.js';
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';
import type { Case, Seen } from './case.js';
import { wordBefore } from './words-before.js';

const PRONOUN = /^(?:them|em|those|they|these|it|they're|they've|that|that'd|thatd|both)$/;

/** "Every cell full", "all the cells are filled", "no gaps"; none "bar four", "not every". */
function saysNoneEmpty(pieces: readonly Piece[], at: number): boolean {
  if (/^(?:but|bar|except|save|apart|almost|nearly)$/.test(wordAt(pieces, at + 1))) return false;
  if (/^(?:gaps?|empties|blanks)$/.test(wordAt(pieces, at)))
    return /^(?:no|without|not a)$/.test(
      wordAt(pieces, at - 1) === 'a' ? `${wordAt(pieces, at - 2)} a` : wordAt(pieces, at - 1),
    );
  if (!/^(?:full|filled|used|planted|taken|stuck)$/.test(wordAt(pieces, at))) return false;
  let cells = at - 1;
  while (/^(?:is|are|was|were|now|got)$/.test(wordAt(pieces, cells))) cells--;
  if (!/^(?:cells?|modules?|holes?)$/.test(wordAt(pieces, cells))) return false;
  let lead = cells - 1;
  while (/^(?:of|the|single|one|last)$/.test(wordAt(pieces, lead))) lead--;
  const all = pieces[lead];
  return (
    (/^(?:every|each)$/.test(wordAt(pieces, lead)) ||
      (all?.is === 'count' && all.quantity.whole === 'all')) &&
    !/^(?:not|nearly|almost)$/.test(wordAt(pieces, lead - 1))
  );
}

export const wordCases: readonly Case<Seen<'word'>>[] = [
  {
    name: '<plant> stock plant',
    phrasings: ['The Salt Harrier stock plant died'],
    when: ({ piece, pieces, at, draft, clause }) =>
      piece.text === 'plant' &&
      /^(?:stock|mother|parent)$/.test(wordBefore(pieces, at)) &&
      pieces[at - 2]?.is === 'plant' &&
      clause.hit?.rule.kind === 'loss' &&
      draft.quantity === undefined,
    does: ({ draft }) => {
      draft.quantity = { value: 1 };
    },
  },
  {
    name: '<count> <plant>, each in its own pot',
    phrasings: [
      'Stuck five Salt Harrier, each in its own 3 inch pot',
      'Took five Salt Harrier cuttings, each one in their own pot',
    ],
    when: ({ piece, pieces, at, clause }) =>
      piece.text === 'own' &&
      clause.hit?.rule.kind === 'strike' &&
      /^(?:its|their|a|an)$/.test(wordBefore(pieces, at)) &&
      pieces.slice(Math.max(0, at - 4), at).some((each) => each.is === 'word' && each.text === 'each'),
    does: ({ draft }) => {
      draft.each ??= 1;
    },
  },
  {
    name: '<pots> of <plant>, every cell full',
    phrasings: [
      'Took two 36-cell trays of Salt Harrier, every cell full',
      'Struck two 36-cell trays of Salt Harrier cuttings, all cells filled',
      'Took a 24-cell tray of Salt Harrier, no gaps',
    ],
    when: ({ pieces, at, draft, clause }) =>
      clause.hit?.rule.kind === 'strike' &&
      draft.size?.endsWith('cell') === true &&
      draft.pots !== undefined &&
      draft.each === undefined &&
      saysNoneEmpty(pieces, at),
    does: ({ draft }) => {
      draft.each = 1;
    },
  },
  {
    name: 'the dud',
    phrasings: ['Tossed the dud', 'Binned the straggler', 'Potted on the sulker'],
    when: ({ piece, pieces, at, draft, clause }) =>
      /^(?:loss|potOn|check|pinch|plantOut|dispatch|move)$/.test(clause.hit?.rule.kind ?? '') &&
      clause.hit?.rule.sense !== 'look' &&
      DUD.test(piece.text) &&
      (at === 0 ||
        /^(?:the|a|that|this|last|only|single|odd|sad|sorry|poor|weedy|little|wee)$/.test(
          wordBefore(pieces, at),
        )) &&
      draft.quantity === undefined,
    does: ({ draft, clause }) => {
      // "The sulker has rooted at last": beside those that had.
      draft.quantity = { value: 1, ...(clause.hit?.rule.kind === 'check' ? { more: true } : {}) };
    },
  },
  {
    name: 'them',
    phrasings: ['Watered them'],
    when: ({ piece, draft }) => PRONOUN.test(piece.text) && draft.plant === undefined,
    does: ({ draft }) => {
      draft.pronoun = true;
    },
  },
  {
    // A leaf that is only picked off is none.
    name: 'a leaf off <plant>, put in water',
    phrasings: [
      'Took a leaf off the streptocarpus and put it in water',
      'Took a leaf off the coleus to root',
    ],
    when: ({ piece, pieces, at, draft, clause }) =>
      clause.hit?.rule.kind === 'strike' &&
      piece.text === 'leaf' &&
      /^(?:a|one|another)$/.test(wordBefore(pieces, at)) &&
      /^(?:of|off|from)$/.test(wordAt(pieces, at + 1)) &&
      pieces
        .slice(at)
        .some(
          (behind) =>
            /^(?:medium|pots)$/.test(behind.is) ||
            (behind.is === 'word' && /^(?:root|roots|strike)$/.test(behind.text)),
        ) &&
      draft.quantity === undefined,
    does: ({ draft }) => {
      draft.quantity = { value: 1 };
      draft.cutting ??= 'leaf';
    },
  },
  {
    name: 'a cutting',
    phrasings: ['Took a cutting of Salt Harrier', 'My aunt gave me a crown of Ember Fox'],
    when: ({ piece, pieces, at, draft }) =>
      ((/^(?:cutting|plug|tuber|crown)$/.test(piece.text) &&
        /^(?:a|an|another)$/.test(wordBefore(pieces, at))) ||
        // "A mother plant of Salt Harrier".
        (piece.text === 'plant' &&
          /^(?:stock|mother|parent)$/.test(wordBefore(pieces, at)) &&
          /^(?:a|an|another)$/.test(wordBefore(pieces, at - 1)))) &&
      draft.quantity === undefined,
    does: ({ draft }) => {
      draft.quantity = { value: 1 };
    },
  },
];
