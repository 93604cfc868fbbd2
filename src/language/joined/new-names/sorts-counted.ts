/** "Cuttings of two dahlias: 8 of Molen Lantern and 6 of Koperen Haan": how many sorts, and of what crop, said before they are told. */
import type { Piece } from '../../pieces/pieces.js';
import { isCrop } from './position.js';

/** Between the crop and the colon there may stand a day, and no more than that. */
const FURTHEST = 3;

/** The row without the number of sorts; each of them that nobody knew has the crop. */
export function withoutSortsCounted(pieces: readonly Piece[]): readonly Piece[] {
  const at = pieces.findIndex((piece, n) => piece.is === 'count' && isCrop(pieces[n + 1]));
  const [sorts, crop] = [pieces[at], pieces[at + 1]];
  if (sorts?.is !== 'count' || !crop) return pieces;
  const colon = pieces.findIndex((piece, n) => n > at + 1 && piece.is === 'break' && piece.mark === ':');
  if (colon < 0 || colon > at + 1 + FURTHEST) return pieces;
  const between = pieces.slice(at + 2, colon);
  const end = pieces.findIndex((piece, n) => n > colon && piece.is === 'break' && piece.hard);
  const told = pieces.slice(colon + 1, end < 0 ? undefined : end);
  const named = told.filter((piece) => piece.is === 'plant' && piece.plant.variety !== undefined);
  const counted = told.filter(({ is }) => is === 'count');
  if (
    between.some(({ is }) => is !== 'when') ||
    named.length < 2 ||
    named.length !== sorts.quantity.value ||
    counted.length < named.length
  )
    return pieces;
  const withCrop = told.flatMap((piece) =>
    piece.is === 'plant' && !piece.known && piece.plant.crop === undefined ? [piece, crop] : [piece],
  );
  // What leads to the crop ("cuttings of") leads to the list.
  return [...pieces.slice(0, at), ...between, ...withCrop, ...(end < 0 ? [] : pieces.slice(end))];
}
