/** Whether what was lost stands by the words that tell of it, and what it was lost to. */
import type { Cause } from '../../../ledger/entry.js';
import { causes, phraseAt } from '../../lexicon.js';
import type { Piece } from '../../pieces.js';
import { closeBehind, follows, precedes, wordAt } from '../rule.js';

/** Whether the words are followed by what they were done to. */
export const needsPlantOrCount = (pieces: readonly Piece[], _from: number, to: number): boolean =>
  follows(pieces, to, 'plant', 'count');

/** Whether a number stands close before or behind the words. */
export const counted = (pieces: readonly Piece[], from: number, to: number): boolean =>
  precedes(pieces, from, 7, 'count') || closeBehind(pieces, to, 'count');

/** What the words from `at` say that plants were lost to: "the slugs", "botrytis". */
export function causeAt(pieces: readonly Piece[], at: number): Cause | undefined {
  const from = /^(?:the|some|a|an)$/.test(wordAt(pieces, at)) ? at + 1 : at;
  const words = pieces.slice(from, from + 4).map((_, n) => wordAt(pieces, from + n));
  return phraseAt(causes, words, 0)?.value;
}
