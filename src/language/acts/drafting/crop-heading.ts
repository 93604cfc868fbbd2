/** A crop that heads the list of its varieties: "potted up the dahlia tubers, 3 Ember Fox and 2 Rust Duchess". */
import type { Clause } from '../../clauses/clauses.js';
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';
import type { Draft } from './draft.js';
import { isCropAlone } from './one-plant.js';

/** The drafts without one of the heading alone: what it says is that of each variety which does not say otherwise. */
export function underCrop(
  drafts: readonly Draft[],
  pieces: readonly Piece[],
  clause: Clause,
): readonly Draft[] {
  const [heading, ...listed] = drafts;
  const { crop: told, variety } = heading?.plant ?? {};
  if (heading && told !== undefined && variety !== undefined && isCropFirst(pieces, clause))
    return [heading, ...listed.map((draft) => ofCrop(draft, told))];
  if (!heading?.plant || !isCropAlone(heading.plant) || listed.length === 0) return drafts;
  const { quantity, plant, ...shared } = heading;
  const { crop } = plant;
  const isOfCrop = ({ plant: of, ofCrop }: Draft): boolean =>
    of?.variety !== undefined && (of.crop ?? ofCrop ?? crop) === crop;
  const numbers = listed.map((draft) => draft.quantity?.value);
  const sum = numbers.reduce<number>((total, number) => total + (number ?? 0), 0);
  // "Some penstemon cuttings, 4 of these and 3 of those": how many is told behind.
  const isVague = quantity?.vague === true && quantity.value === undefined && !numbers.includes(undefined);
  const isWhole = quantity === undefined || isVague || quantity.whole === 'all' || quantity.value === sum;
  if (!listed.every(isOfCrop) || !isWhole || !isSetOff(pieces, clause, numbers)) return drafts;
  return listed.map((draft) => ({ ...shared, ...draft, plant: { ...draft.plant, ...plant } }));
}

/** A variety nobody knows yet, with the crop that heads its list. */
const ofCrop = (draft: Draft, crop: string): Draft =>
  draft.plant?.variety !== undefined && draft.plant.crop === undefined && draft.known === false
    ? { ...draft, plant: { ...draft.plant, crop } }
    : draft;

/** "Took dahlia cuttings: Ember Fox 5, Rust Duchess 6", "6 dahlia cuttings of Ember Fox and 5 of Rust Duchess": the crop stands before a colon, a dash or "of", and then the first variety. */
function isCropFirst(pieces: readonly Piece[], { from, to }: Clause): boolean {
  const [crop, first] = pieces.slice(from, to).filter(({ is }) => is === 'plant');
  if (crop?.is !== 'plant' || first?.is !== 'plant' || !isCropAlone(crop.plant)) return false;
  const between = pieces.slice(pieces.indexOf(crop) + 1, pieces.indexOf(first));
  return (
    between.some((piece) => piece.is === 'break' && /^[:-]$/.test(piece.mark)) ||
    (between.length === 2 &&
      /^(?:cuttings|tips|slips)$/.test(wordAt(between, 0)) &&
      wordAt(between, 1) === 'of')
  );
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
