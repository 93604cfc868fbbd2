/** Numbers that stand for containers without a word for them, or beside one that is no word for how many: "4x84", "84 tray". */
import { wordAt } from '../../grammar/rule.js';
import type { Piece, PieceOf } from '../../pieces/pieces.js';
import { isFull, type Opening } from './opening.js';
import { countAt, isContainer, type Joined } from './per-container.js';

type Reading = (pieces: readonly Piece[], opening: Opening) => Joined | undefined;

/** "6 x 84 trays": six trays of 84. */
const traysOf: Reading = (pieces, { first, number, isTimes, at }) => {
  const each = isTimes ? countAt(pieces, at)?.quantity.value : undefined;
  if (each === undefined || number === undefined) return undefined;
  if (!/^(?:trays|tray|modules|plugs)$/.test(wordAt(pieces, at + 1))) return undefined;
  const pots = { from: pieces[at]?.from ?? first.to, to: pieces[at + 1]?.to ?? first.to };
  return { pieces: [countOf(number * each, first), { is: 'pots', pots: number, ...pots }], to: at + 2 };
};

/** So many cells and more are the size of a tray. */
const FEWEST_CELLS = 24;

/** "84 tray": the size of the tray, not how many. */
const trayOfCells: Reading = (pieces, { first, count, at }) => {
  const cells = count?.quantity.value ?? 0;
  if (cells < FEWEST_CELLS || wordAt(pieces, at) !== 'tray') return undefined;
  const to = pieces[at]?.to ?? first.to;
  return {
    pieces: [{ is: 'size', size: `${cells}cell`, container: true, from: first.from, to }],
    to: at + 1,
  };
};

/** "Two 84 trays": how many of them there are, and their size. */
const traysOfCells: Reading = (pieces, opening) => {
  const { first, number, isTimes, at } = opening;
  const each = countAt(pieces, at);
  const cells = each?.quantity.value ?? 0;
  if (!each || isTimes || number === undefined || cells < FEWEST_CELLS) return undefined;
  if (!/^trays?$/.test(wordAt(pieces, at + 1))) return undefined;
  const to = pieces[at + 1]?.to ?? each.to;
  return {
    pieces: [
      ...(isFull(pieces, opening) ? [countOf(number * cells, first)] : []),
      { is: 'pots', pots: number, from: first.from, to: each.from },
      { is: 'size', size: `${cells}cell`, container: true, from: each.from, to },
    ],
    to: at + 2,
  };
};

/** Fewer are no tray's cells. */
const FEWEST_TIMES = 20;

/** "4x84": four trays of 84. */
const timesCells: Reading = (pieces, opening) => {
  const { first, start, number } = opening;
  const times = timesOf(pieces, opening);
  if (number === undefined || !times || times.value < FEWEST_TIMES) return undefined;
  if (times.piece.from !== first.to + 1 || isContainer(pieces, start + 3)) return undefined;
  const { to } = times.piece;
  return {
    pieces: [countOf(number * times.value, first), { is: 'pots', pots: number, from: first.to, to }],
    to: start + 3,
  };
};

/** "5x4" alone: five of four, or four of five, or pots of that size. */
const timesAlone: Reading = (pieces, opening) => {
  const { first, start, number } = opening;
  const times = timesOf(pieces, opening);
  const behind = pieces[start + 3];
  if (number === undefined || !times || (behind !== undefined && behind.is !== 'break')) return undefined;
  const { to } = times.piece;
  return { pieces: [{ is: 'count', quantity: { vague: true }, from: first.from, to }], to: start + 3 };
};

/** "2x5 tip cuttings": ten. */
const timesCuttings: Reading = (pieces, opening) => {
  const { first, start, number } = opening;
  const times = timesOf(pieces, opening);
  const behind = pieces[start + 3];
  if (number === undefined || !times) return undefined;
  const isOfCuttings =
    behind?.is === 'cutting' || behind?.is === 'plant' || /^cuttings?$/.test(wordAt(pieces, start + 3));
  if (!isOfCuttings) return undefined;
  return {
    pieces: [countOf(number * times.value, { from: first.from, to: times.piece.to })],
    to: start + 3,
  };
};

/** The second number of "4x84". */
function timesOf(
  pieces: readonly Piece[],
  { start, isTimes }: Opening,
): { readonly piece: PieceOf<'count'>; readonly value: number } | undefined {
  const piece = isTimes ? countAt(pieces, start + 2) : undefined;
  const value = piece?.quantity.value;
  return piece && value !== undefined ? { piece, value } : undefined;
}

const countOf = (value: number, { from, to }: Pick<Piece, 'from' | 'to'>): PieceOf<'count'> => ({
  is: 'count',
  quantity: { value },
  from,
  to,
});

/** In order: the first that fits decides. */
const readings: readonly Reading[] = [
  traysOf,
  traysOfCells,
  trayOfCells,
  timesCells,
  timesAlone,
  timesCuttings,
];

export function timesAt(pieces: readonly Piece[], opening: Opening): Joined | undefined {
  for (const reading of readings) {
    const found = reading(pieces, opening);
    if (found) return found;
  }
  return undefined;
}
