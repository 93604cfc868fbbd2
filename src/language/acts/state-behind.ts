/** What is told of another plant's looks behind the acts of a row. */
import { isDeniedState } from '../clauses/denied-state.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';
import { isSeenOn, isSeenOnThem } from '../clauses/seen-on.js';

/** "… and the fuchsias are starting to flower", "…, a first bud on these": what is told of another plant behind the acts, without the words that join it. */
export function stateBehind(
  pieces: readonly Piece[],
  from: number,
  to: number,
): readonly Piece[] | undefined {
  let start = from;
  while (
    start < to &&
    (pieces[start]?.is === 'break' || /^(?:and|but|by|way|oh|also|so)$/.test(wordAt(pieces, start)))
  )
    start++;
  if (/^(?:the|my)$/.test(wordAt(pieces, start)) && wordAt(pieces, start + 1) === 'way') start += 2;
  const plant = /^(?:the|my|our)$/.test(wordAt(pieces, start)) ? start + 1 : start;
  const isState =
    start > from &&
    ((pieces[plant]?.is === 'plant' &&
      (isDeniedState(pieces, plant + 1) ||
        /^(?:are|is|look|looks|looking|seem|seems|smell|have|has|starting|showing|getting|going)$/.test(
          wordAt(pieces, plant + 1),
        ))) ||
      isSeenOn(pieces, start) ||
      isSeenOnThem(pieces, start));
  return isState ? pieces.slice(start, to) : undefined;
}
