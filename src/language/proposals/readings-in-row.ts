/** Temperatures in a row, each with its place straight behind it: "68F on the heat mat and 41 in the garage". */
import { wordAt } from '../grammar/rule.js';
import type { Piece, PieceOf, When } from '../pieces/pieces.js';
import { firstOf, partsAtMarks } from '../sentences/sentences.js';

const LEADS = /^(?:in|on|inside|under|at|out|the|my|our)$/;

/** Where the place of a temperature stands, told straight behind it; else -1. */
function placeBehind(pieces: readonly Piece[], temperature: number): number {
  let at = temperature + 1;
  while (LEADS.test(wordAt(pieces, at))) at++;
  return at > temperature + 1 && pieces[at]?.is === 'place' ? at : -1;
}

/** The place of one of several temperatures, where it is told straight behind. */
export function ownPlace(pieces: readonly Piece[], of: Piece): string | undefined {
  const place = pieces[placeBehind(pieces, pieces.indexOf(of))];
  return place?.is === 'place' ? place.place : undefined;
}

/** Bare numbers behind degrees and their place, told like them, with nothing behind their own places that says what they count. */
export function temperaturesToo(pieces: readonly Piece[]): readonly PieceOf<'count'>[] {
  const alike: PieceOf<'count'>[] = [];
  // "Salt Harrier: 20C on the heat mat, 6 in the porch": plants.
  if (pieces.some(({ is }) => is === 'plant')) return alike;
  let place = -1;
  for (const [at, piece] of pieces.entries()) {
    if (piece.is === 'celsius') place = placeBehind(pieces, at);
    if (piece.is !== 'count') continue;
    const isNext = place > 0 && at > place + 1 && pieces.slice(place + 1, at).every(isJoint);
    place = isNext && isDegrees(piece) ? placeBehind(pieces, at) : -1;
    if (place > 0 && isToldOut(pieces, place + 1)) alike.push(piece);
  }
  return alike;
}

/** "… and", ", but only": what stands between two of a row. */
const isJoint = (piece: Piece): boolean =>
  piece.is === 'when' ||
  (piece.is === 'break' && /^[,;]$/.test(piece.mark)) ||
  (piece.is === 'word' && /^(?:and|but|only|just)$/.test(piece.text));

const isDegrees = ({ quantity }: PieceOf<'count'>): boolean =>
  quantity.value !== undefined && !quantity.vague && quantity.outOf === undefined;

/** Nothing but a time, a mark or the next of the row behind a place. */
function isToldOut(pieces: readonly Piece[], from: number): boolean {
  const next = pieces[pieces[from]?.is === 'when' ? from + 1 : from];
  return next === undefined || next.is === 'break' || (next.is === 'word' && next.text === 'and');
}

/** The scale in which a row is told, where its line says so. */
export const isInFahrenheit = (line: string): boolean | undefined =>
  /\d ?(?:f|fahrenheit)(?![a-z])/.test(line)
    ? true
    : /\d ?(?:c|celsius)(?![a-z])/.test(line)
      ? false
      : undefined;

/** "Greenhouse dipped to 3 last night, windowsill was 17 this morning": parts between marks, each with a place of its own; else none. */
export function partsOfPlaces(
  pieces: readonly Piece[],
): readonly { pieces: readonly Piece[]; place: string; when?: When }[] {
  const parts = partsAtMarks(pieces).map((part) => {
    const where = firstOf(part, 'place');
    const when = firstOf(part, 'when')?.when;
    return where ? { pieces: part, place: where.place, ...(when ? { when } : {}) } : undefined;
  });
  const told = parts.filter((part) => part !== undefined);
  return told.length > 1 && told.length === parts.length ? told : [];
}
