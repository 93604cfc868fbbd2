/** What a plain word tells: plants named before, or a single one of them. */
import type { Case, Seen } from './case.js';
import { wordBefore } from './words-before.js';

const PRONOUN = /^(?:them|em|those|they|these|it|they're|they've|that|that'd|thatd|both)$/;

export const wordCases: readonly Case<Seen<'word'>>[] = [
  {
    name: 'them',
    phrasings: ['Watered them'],
    when: ({ piece, draft }) => PRONOUN.test(piece.text) && draft.plant === undefined,
    does: ({ draft }) => {
      draft.pronoun = true;
    },
  },
  {
    name: 'a cutting',
    phrasings: ['Took a cutting of Salt Harrier', 'My aunt gave me a crown of Ember Fox'],
    when: ({ piece, pieces, at, draft }) =>
      /^(?:cutting|plug|tuber|crown)$/.test(piece.text) &&
      /^(?:a|an|another)$/.test(wordBefore(pieces, at)) &&
      draft.quantity === undefined,
    does: ({ draft }) => {
      draft.quantity = { value: 1 };
    },
  },
];
