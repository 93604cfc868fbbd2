/** "Both" that means each of two plants named before it: "… pinched, both now on the top shelf", "…, both to glasshouse 2". */
import type { EntryKind } from '../../ledger/entry.js';
import type { Clause } from '../clauses/clauses.js';
import type { Draft } from './drafting/draft.js';
import { isSamePlant } from './drafting/one-plant.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece, PlantWords } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';

/** What is done to plants as they are, where two of one plant would be told by name. */
const DONE_TO_BOTH: ReadonlySet<EntryKind | 'aside'> = new Set([
  'move',
  'potOn',
  'pinch',
  'hardenOff',
  'plantOut',
]);

/** One draft for each of the two plants told of last, where "both" is all that says of what. */
export function eachOfBoth(
  drafts: readonly Draft[],
  kind: EntryKind | 'aside',
  told: readonly Proposal[],
): readonly Draft[] {
  const [draft, another] = drafts;
  if (!draft?.quantity?.both || another || draft.plant !== undefined || !DONE_TO_BOTH.has(kind))
    return drafts;
  const two = twoPlants(told);
  if (!two || areNew(told)) return drafts;
  const { quantity, ...rest } = draft;
  return quantity.value === 2 ? two.map((plant) => ({ ...rest, plant, known: true })) : drafts;
}

/** "Salt Harrier and Tallow Bell fed and watered": one draft for each plant of the list that both deeds are told of. */
export function eachOfList(
  drafts: readonly Draft[],
  { hit, subjectFirst }: Clause,
  before: Clause | undefined,
  told: readonly Proposal[],
): readonly Draft[] {
  const [draft, another] = drafts;
  if (!draft || another || draft.plant !== undefined || draft.quantity !== undefined || draft.pronoun)
    return drafts;
  if (!subjectFirst || !before?.hit || !hit || before.hit.to !== hit.from - 1) return drafts;
  const { name } = before.hit.rule;
  const from = told.findLastIndex(({ rule }) => rule !== name) + 1;
  const listed = told.slice(from).filter((each) => each.draft.plant !== undefined);
  if (listed.length < 2 || !before.subjectFirst) return drafts;
  return listed.map((each) => ({
    ...draft,
    plant: each.draft.plant,
    known: each.draft.known,
    ...(hit.rule.kind !== 'tend' && each.draft.quantity ? { quantity: each.draft.quantity } : {}),
  })) as readonly Draft[];
}

/** The plants of what was told in the sentence, where they are two. */
function twoPlants(told: readonly Proposal[]): readonly PlantWords[] | undefined {
  const plants: PlantWords[] = [];
  for (const { draft } of told) {
    const { plant } = draft;
    if (plant && !plants.some((one) => isSamePlant(one, plant))) plants.push(plant);
  }
  return plants.length === 2 ? plants : undefined;
}

/** Whether the two told of last came new to the bench. */
const areNew = (told: readonly Proposal[]): boolean =>
  told.length === 2 && told.every(({ kind }) => KEPT.has(kind));

const KEPT: ReadonlySet<EntryKind> = new Set(['strike', 'stock', 'receive']);

/** "40 plugs of these and a stock plant of that, both to glasshouse 2": the place of both that came. */
export function placedBoth(proposals: readonly Proposal[], row: readonly Piece[]): readonly Proposal[] {
  const [one, two, moved, more] = proposals;
  if (!one || !two || more || !areNew([one, two])) return proposals;
  // "Took five of these and six of those, both now in the porch": told as a move, and none of older ones.
  if (moved) {
    const { quantity, plant } = moved.draft;
    const isOfBoth = moved.kind === 'move' && quantity?.both === true && plant === undefined;
    return isOfBoth ? placedIn([one, two], moved.slots['place'], true) : proposals;
  }
  const both = row.findIndex(
    (piece, at) => piece.is === 'count' && piece.quantity.both === true && row[at - 1]?.is === 'break',
  );
  let at = both + 1;
  while (/^(?:now|to|in|into|on|onto|at|the|my|went|gone|are|put)$/.test(wordAt(row, at))) at++;
  const place = row[at];
  if (both < 0 || place?.is !== 'place') return proposals;
  return placedIn(proposals, place.place);
}

const placedIn = (
  proposals: readonly Proposal[],
  place: Proposal['slots'][string],
  isLater = false,
): readonly Proposal[] =>
  proposals.map((proposal) =>
    place !== undefined && (isLater || proposal.slots['place'] === undefined)
      ? { ...proposal, slots: { ...proposal.slots, place } }
      : proposal,
  );
