/** "…, and from the Tallow Bell the frost took two": what an act was done to opens its clause, told as that of which some were taken. */
import { isBoundary } from './boundaries.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';

const SOURCE = /^(?:from|of|off)$/;

/** Where the preposition stands that leads to the plant at `at`, at the beginning or straight behind a boundary; undefined where none does. */
export function sourceBefore(pieces: readonly Piece[], at: number): number | undefined {
  if (pieces[at]?.is !== 'plant') return undefined;
  let from = at - 1;
  while (/^(?:the|my|our|those|these|all)$/.test(wordAt(pieces, from))) from--;
  if (wordAt(pieces, from) === 'out') from--;
  if (!SOURCE.test(wordAt(pieces, from))) return undefined;
  return from === 0 || isBoundary(pieces[from - 1]) ? from : undefined;
}

/** The same of the plant before the words that lead up to a head: "the slugs", "I have". */
export function sourceLedFrom(pieces: readonly Piece[], low: number, head: number): number | undefined {
  let at = head - 1;
  while (at > low && pieces[at]?.is === 'word' && !isBoundary(pieces[at]) && head - at < 5) at--;
  const from = sourceBefore(pieces, at);
  return from !== undefined && from > low ? from : undefined;
}
