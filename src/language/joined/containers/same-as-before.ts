/** "Six flats of Salt Harrier at 72 a flat and three of Tallow Bell, same count": each holds what each of those before held. */
import { wordAt } from '../../grammar/rule.js';
import { whole } from '../../phrases.js';
import type { Piece, PieceOf } from '../../pieces/pieces.js';
import { counted, endsThere } from './words.js';

/** From the containers to the words that say so: "of", a plant of two words that nobody knows, a comma. */
const REACH = 5;

const SAME = whole`
  (the )?same( (count|number|amount|quantity))?( (again|each|apiece|per (pot|tray|flat|cell)))?
  ditto|likewise
`;
/** The longest of them in words. */
const LONGEST = 5;

/** The row with the number that such containers hold before them. */
export function countSame(row: readonly Piece[]): readonly Piece[] {
  let each: number | undefined;
  let pieces = row;
  for (let at = 0; at < pieces.length; at++) {
    const pots = pieces[at];
    if (pots?.is !== 'pots') continue;
    const told = heldByEach(pieces, at, pots);
    const said = told === undefined && each !== undefined ? saidBehind(pieces, at) : undefined;
    if (said && each !== undefined && pots.pots !== undefined) {
      pieces = [
        ...pieces.slice(0, at),
        counted(pots.pots * each, pots),
        ...pieces.slice(at, said.from),
        ...pieces.slice(said.to),
      ];
      at++;
    } else each = told ?? each;
  }
  return pieces;
}

function heldByEach(
  pieces: readonly Piece[],
  at: number,
  { pots, each }: PieceOf<'pots'>,
): number | undefined {
  if (each !== undefined) return each;
  const held = pieces[at - 1];
  if (held?.is !== 'count' || held.quantity.value === undefined || !pots) return undefined;
  const one = held.quantity.value / pots;
  return Number.isInteger(one) ? one : undefined;
}

/** Where the words stand that say so, up to the end, a break or a place. */
function saidBehind(
  pieces: readonly Piece[],
  at: number,
): { readonly from: number; readonly to: number } | undefined {
  for (let from = at + 1; from <= at + REACH; from++) {
    for (let to = Math.min(from + LONGEST, pieces.length); to > from; to--) {
      const words = pieces.slice(from, to).map((_, n) => wordAt(pieces, from + n) || '-');
      if (SAME.test(words.join(' ')) && endsThere(pieces, to)) return { from, to };
    }
    if (pieces[from]?.is === 'pots' || pieces[from]?.is === 'count') return undefined;
  }
  return undefined;
}
