/** "5, 4 and 6 of A, B and C respectively": so many numbers, or places, for as many plants, each of them its own. */
import { wordAt } from '../grammar/rule.js';
import type { Piece, PieceOf } from '../pieces/pieces.js';

/** The row with each number or place beside its plant; where there are not as many of them, with a number that must be asked for. */
export function withTheirOwn(pieces: readonly Piece[]): readonly Piece[] {
  const at = pieces.findIndex((_, n) => wordAt(pieces, n) === 'respectively');
  if (at < 0) return pieces;
  const end = pieces[at - 1]?.is === 'break' ? at - 1 : at;
  return placedApart(pieces, end, at + 1) ?? countedApart(pieces, end, at + 1) ?? pieces;
}

/** "Lost 2 and 3 of A and B respectively". */
function countedApart(pieces: readonly Piece[], end: number, to: number): readonly Piece[] | undefined {
  const plants = listEndingAt(pieces, end, 'plant');
  const numbers = plants && listEndingAt(pieces, beforeOf(pieces, plants.from), 'count');
  if (!plants || !numbers || plants.items.length < 2) return undefined;
  const isPaired = numbers.items.length === plants.items.length;
  const told = plants.items.flatMap((plant, n): readonly Piece[] => {
    const count = numbers.items[isPaired ? n : 0];
    const number = count && (isPaired ? count : { ...count, quantity: { vague: true as const } });
    return [...markBefore(plant, n), ...(number ? [number] : []), plant];
  });
  return [...pieces.slice(0, numbers.from), ...told, ...pieces.slice(to)];
}

/** "Moved A and B to the porch and the shed respectively". */
function placedApart(pieces: readonly Piece[], end: number, to: number): readonly Piece[] | undefined {
  const places = listEndingAt(pieces, end, 'place');
  let before = places?.from ?? 0;
  while (/^(?:to|into|onto|in|on|the|my)$/.test(wordAt(pieces, before - 1))) before--;
  const plants = places && listEndingAt(pieces, before, 'plant');
  if (!plants || plants.items.length < 2 || plants.items.length !== places.items.length) return undefined;
  const way = pieces.slice(before, places.from);
  const prep = places.items[0]?.prep;
  const told = plants.items.flatMap((plant, n): readonly Piece[] => {
    const place = places.items[n];
    return [...markBefore(plant, n), plant, ...way, ...(place ? [{ ...place, prep }] : [])];
  });
  return [...pieces.slice(0, plants.from), ...told, ...pieces.slice(to)];
}

/** A comma before all but the first. */
const markBefore = ({ from }: Piece, n: number): readonly Piece[] =>
  n === 0 ? [] : [{ is: 'break', hard: false, mark: ',', from, to: from }];

interface List<Is extends Piece['is']> {
  readonly from: number;
  readonly items: readonly PieceOf<Is>[];
}

/** "A, B and C" that ends before `to`. */
function listEndingAt<Is extends 'plant' | 'count' | 'place'>(
  pieces: readonly Piece[],
  to: number,
  is: Is,
): List<Is> | undefined {
  const items: PieceOf<Is>[] = [];
  let from = to;
  for (let at = to - 1; at >= 0; at--) {
    const piece = pieces[at];
    if (piece?.is === is) {
      items.unshift(piece as PieceOf<Is>);
      from = at;
    } else if (!isLink(pieces, at)) break;
  }
  return items.length === 0 ? undefined : { from, items };
}

const isLink = (pieces: readonly Piece[], at: number): boolean => {
  const piece = pieces[at];
  return piece?.is === 'break' ? !piece.hard : /^(?:and|the|my|to|into|cuttings)$/.test(wordAt(pieces, at));
};

/** Before the "of" between the numbers and the plants. */
const beforeOf = (pieces: readonly Piece[], from: number): number => {
  let at = from;
  while (/^(?:of|from|off|the|my|cuttings|each)$/.test(wordAt(pieces, at - 1))) at--;
  return at;
};
