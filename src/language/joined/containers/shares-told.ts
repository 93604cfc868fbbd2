/** "Half of my twelve Salt Harrier", "of the twelve, a third went out": a share beside what it is a share of is a number. */
import { wordAt } from '../../grammar/rule.js';
import type { Piece, PieceOf } from '../../pieces/pieces.js';
import { valueAt } from './words.js';

const POINTS = /^(?:of|the|my|our|those|these)$/;

/** The row with such shares as numbers; how many a share is that is no whole number, is asked. */
export function withSharesTold(row: readonly Piece[]): readonly Piece[] {
  if (!row.some(isShare)) return row;
  const pieces: Piece[] = [];
  let total: number | undefined;
  for (let at = 0; at < row.length; at++) {
    const piece = row[at];
    if (!piece) continue;
    if (piece.is === 'break' && piece.hard) total = undefined;
    if (wordAt(row, at) === 'of' && opens(row, at)) total = valueAt(row, pastPointing(row, at)) ?? total;
    const of = isShare(piece) ? pastPointing(row, at + 1) : at;
    const whole = of > at + 1 ? valueAt(row, of) : undefined;
    const told = isShare(piece) ? numberOf(piece, whole ?? total) : undefined;
    pieces.push(told ?? piece);
    // "Half of my twelve Salt Harrier": six of them.
    if (told && whole !== undefined) at = of;
  }
  return pieces;
}

const isShare = (piece: Piece): piece is PieceOf<'count'> =>
  piece.is === 'count' && piece.quantity.share !== undefined;

/** At the beginning of what is told. */
const opens = (row: readonly Piece[], at: number): boolean => at === 0 || row[at - 1]?.is === 'break';

function pastPointing(row: readonly Piece[], from: number): number {
  let at = from;
  while (POINTS.test(wordAt(row, at))) at++;
  return at;
}

function numberOf(piece: PieceOf<'count'>, total: number | undefined): Piece | undefined {
  const [part, of] = piece.quantity.share ?? [];
  if (part === undefined || of === undefined || total === undefined) return undefined;
  const value = (total * part) / of;
  return { ...piece, quantity: Number.isInteger(value) ? { value } : { vague: true } };
}
