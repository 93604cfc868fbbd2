/** "On the heat mat next to the others", "in the porch beside the Salt Harrier": where exactly, which tells of no other plants. */
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';

/** Notes that tell of one plant, and of its place. */
export const phrasings: readonly string[] = [
  'took six Salt Harrier, on the heat mat next to the others',
  'took six Salt Harrier in the greenhouse beside the Tallow Bell',
  'moved 4 Salt Harrier to the porch, alongside the rest',
];

/** Notes that tell of both. */
export const mustNot: readonly string[] = [
  'watered the Salt Harrier in the porch and the Tallow Bell',
  'moved the Salt Harrier to the porch near the door, potted on the Tallow Bell',
  'took six Salt Harrier in the porch by the door, and six Tallow Bell',
];

/** The row without what only stands by a place that was told. */
export function withoutNeighbours(pieces: readonly Piece[]): readonly Piece[] {
  const place = pieces.findIndex(
    (piece, at) => piece.is === 'place' && neighboursEnd(pieces, at + 1) > at + 1,
  );
  if (place < 0) return pieces;
  const behind = pieces.slice(neighboursEnd(pieces, place + 1));
  return [...pieces.slice(0, place + 1), ...withoutNeighbours(behind)];
}

/** Past "next to the others" that begins there; the same place where nothing of it does. */
function neighboursEnd(pieces: readonly Piece[], from: number): number {
  const mark = pieces[from];
  let at = mark?.is === 'break' && mark.mark === ',' ? from + 1 : from;
  if (/^(?:right|just|close)$/.test(wordAt(pieces, at))) at++;
  if (wordAt(pieces, at) === 'next' && wordAt(pieces, at + 1) === 'to') at += 2;
  else if (/^(?:beside|alongside|near)$/.test(wordAt(pieces, at))) at++;
  else return from;
  if (/^(?:the|my|our|all)$/.test(wordAt(pieces, at))) at++;
  const other = pieces[at];
  const isOthers =
    other?.is === 'plant' || (other?.is === 'count' && /^(?:rest|all)$/.test(other.quantity.whole ?? ''));
  if (!isOthers) return from;
  const end = pieces[at + 1];
  const isOver = end === undefined || end.is === 'break' || /^(?:and|but|for)$/.test(wordAt(pieces, at + 1));
  return isOver ? at + 1 : from;
}
