/** A crop that heads the list of its varieties: "potted up the dahlia tubers, 3 Ember Fox and 2 Rust Duchess". */
import type { Clause } from '../clauses.js';
import type { Piece } from '../pieces.js';
import type { Draft } from './draft.js';
import { isCropAlone } from './one-plant.js';

/** The drafts without one of the heading alone: what it says is that of each variety which does not say otherwise. */
export function underCrop(
  drafts: readonly Draft[],
  pieces: readonly Piece[],
  clause: Clause,
): readonly Draft[] {
  const [heading, ...listed] = drafts;
  if (!heading?.plant || !isCropAlone(heading.plant) || listed.length === 0) return drafts;
  const { quantity, plant, ...shared } = heading;
  const { crop } = plant;
  const isOfCrop = ({ plant: of, ofCrop }: Draft): boolean =>
    of?.variety !== undefined && (of.crop ?? ofCrop ?? crop) === crop;
  const numbers = listed.map((draft) => draft.quantity?.value);
  const sum = numbers.reduce<number>((total, number) => total + (number ?? 0), 0);
  const isWhole = quantity === undefined || quantity.whole === 'all' || quantity.value === sum;
  if (!listed.every(isOfCrop) || !isWhole || !isSetOff(pieces, clause, numbers)) return drafts;
  return listed.map((draft) => ({ ...shared, ...draft, plant: { ...draft.plant, ...plant } }));
}

/** A mark stands between the heading and the list; behind a mere comma each of the list is counted, first the number. */
function isSetOff(
  pieces: readonly Piece[],
  { from, to }: Clause,
  numbers: readonly (number | undefined)[],
): boolean {
  const [crop, first] = pieces.slice(from, to).filter(({ is }) => is === 'plant');
  if (!crop || !first) return false;
  const between = pieces.slice(pieces.indexOf(crop) + 1, pieces.indexOf(first));
  const isCounted = !numbers.includes(undefined) && between.some(({ is }) => is === 'count');
  return between.some((piece) => piece.is === 'break' && (isCounted || /^[:(-]$/.test(piece.mark)));
}
