/** A look and what it found, a loss and how it came about, told in two breaths. */
import { left } from '../../grammar/loss/left.js';
import { thrownAway } from '../../grammar/loss/thrown-away.js';
import type { Draft } from '../../acts/drafting/draft.js';
import type { Proposal } from '../../proposal.js';
import { isOnePlant, plantToldOf } from './plant-of.js';

/** "Checked the Violet Ledger (three out of eight rooted)". */
export function joinCheck(before: Proposal, next: Proposal): Proposal | undefined {
  if (before.kind !== 'check' || next.kind !== 'check') return undefined;
  const told = (proposal: Proposal): boolean =>
    proposal.draft.quantity !== undefined || proposal.slots['rooted'] !== undefined;
  if (
    next.draft.plant !== undefined &&
    before.draft.plant !== undefined &&
    !isOnePlant(before.draft.plant, next.draft.plant)
  )
    return undefined;
  const sameNone =
    before.slots['rooted'] === 'none' && next.slots['rooted'] === 'none' && next.draft.plant === undefined;
  // "4 rooted, the rest no roots": which have none is told by those that have.
  const isOfTheRest =
    next.slots['rooted'] === 'none' &&
    next.draft.plant === undefined &&
    next.draft.place === undefined &&
    next.draft.which === undefined &&
    before.draft.quantity?.value !== undefined;
  if (isOfTheRest) return before;
  // "All taken, roots on the lot": told once more.
  const sameAll = [before, next].every(isOfAll) && next.draft.plant === undefined;
  if (told(before) && told(next) && !sameNone && !sameAll) return undefined;
  const draft: Draft = {
    ...next.draft,
    ...before.draft,
    ...(told(next) && next.draft.quantity ? { quantity: next.draft.quantity } : {}),
  };
  const plant = before.draft.plant ?? next.draft.plant;
  return {
    ...before,
    draft: { ...draft, ...(plant ? { plant } : {}) },
    slots: { ...before.slots, ...next.slots },
  };
}

const isOfAll = ({ draft, slots }: Proposal): boolean =>
  slots['rooted'] === 'all' ||
  (draft.quantity?.whole === 'all' && draft.quantity.allBut === undefined && slots['rooted'] === undefined);

/** "3 rotten, binned", "gone mouldy, all of it in the bin": one loss told twice. */
export function joinLoss(before: Proposal, next: Proposal): Proposal | undefined {
  // "Took the tips off the Salt Harrier and threw them on the heap": the tips, not the plants.
  const isOfTips =
    next.draft.plant === undefined && next.draft.quantity === undefined && THROWN_AWAY.has(next.rule);
  if (before.kind === 'pinch' && next.kind === 'loss' && isOfTips) return before;
  if (before.kind !== 'loss' || next.kind !== 'loss') return undefined;
  // "Lost three, sorry I mean …, lost three to rot", "knocked two off and snapped both": said again in full.
  const told = [before, next].map(({ draft }) => draft.quantity);
  const sameCause = (next.slots['cause'] ?? before.slots['cause']) === before.slots['cause'];
  const again =
    (told[0]?.value ?? told[0]?.whole) !== undefined &&
    told[0]?.value === told[1]?.value &&
    told[0]?.whole === told[1]?.whole &&
    told[1]?.more !== true &&
    (before.slots['cause'] === undefined ||
      told[1]?.both === true ||
      // "The cat got one, 1 dead": what it came to; "all rotted, binned the lot": where they went.
      ((next.rule === '<count> <plant> dead' || THROWN_AWAY.has(next.rule)) &&
        next.draft.plant === undefined &&
        sameCause)) &&
    isOnePlant(plantToldOf(before), plantToldOf(next));
  if (again) return { ...before, slots: { ...before.slots, ...next.slots } };
  // "The cat knocked the pot off the sill and snapped two Copper Lantern": how it came about, and what it came to.
  // "Dead ones binned: three Copper Lantern": a loss of nobody knows what, and then of what.
  const unspoken =
    before.slots['cause'] === undefined
      ? next.draft.plant !== undefined &&
        (before.carried === undefined || isOnePlant(before.carried, next.draft.plant))
      : before.slots['cause'] === next.slots['cause'];
  if (before.draft.plant === undefined && before.draft.quantity === undefined && unspoken) return next;
  if (next.draft.plant !== undefined) return undefined;
  const { quantity } = next.draft;
  if (before.draft.quantity !== undefined && quantity !== undefined && !next.draft.pronoun) return undefined;
  const counted = before.draft.quantity ?? quantity;
  return {
    ...before,
    slots: { ...before.slots, ...(next.slots['cause'] === undefined ? {} : { cause: next.slots['cause'] }) },
    draft: {
      ...before.draft,
      ...(counted ? { quantity: counted } : {}),
      ...(before.draft.when === undefined && next.draft.when ? { when: next.draft.when } : {}),
    },
  };
}

const THROWN_AWAY: ReadonlySet<string> = new Set(thrownAway.map(({ name }) => name));
const LEFT: ReadonlySet<string> = new Set(left.map(({ name }) => name));
const TAKES_AWAY: ReadonlySet<string> = new Set(['loss', 'dispatch', 'plantOut', 'potOn', 'move', 'strike']);

/** "Sold four. Only two left": beside a deed, what is left is what it came to. */
export function withoutWhatIsLeft(proposals: readonly Proposal[]): readonly Proposal[] {
  const isLeft = ({ kind, rule }: Proposal): boolean => kind === 'loss' && LEFT.has(rule);
  if (!proposals.some(isLeft)) return proposals;
  // "Only nine alive, the others are rotten": what is left tells how many those are.
  const isUncounted = ({ kind, draft }: Proposal): boolean =>
    kind === 'loss' && (draft.quantity === undefined || draft.quantity.whole === 'rest');
  const deeds = proposals
    .filter((told) => !isLeft(told) && TAKES_AWAY.has(told.kind) && !isUncounted(told))
    .map(plantToldOf);
  return proposals.filter((told) => {
    const plant = plantToldOf(told);
    return !isLeft(told) || !deeds.some((of) => !plant || !of || isOnePlant(of, plant));
  });
}
