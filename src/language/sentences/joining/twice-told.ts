/** One act told twice, the second time with another slot or none. */
import { isAnotherLot } from '../../acts/drafting/another-lot.js';
import type { Proposal } from '../../proposal.js';
import { isOnePlant, plantToldOf } from './plant-of.js';

/** "Opened the lid of the propagator to let some air in": one care told twice. */
export function joinCare(before: Proposal, next: Proposal): Proposal | undefined {
  if (before.kind !== 'tend' || next.kind !== 'tend' || before.slots['care'] !== next.slots['care'])
    return undefined;
  // "Watered them on Sunday and again today".
  const [day, another] = [before.draft.when, next.draft.when];
  if (day !== undefined && another !== undefined && day !== another) return undefined;
  return next.draft.plant === undefined && next.slots['place'] === undefined && next.carried !== undefined
    ? before
    : undefined;
}

/** "Nine went off with her, gave her the lot", "and every last one was sold": how, said behind. */
export function joinSending(before: Proposal, next: Proposal): Proposal | undefined {
  if (before.kind !== 'dispatch' || next.kind !== 'dispatch' || next.draft.plant) return undefined;
  const { quantity } = next.draft;
  // "Gave three to the kid, I mean two, gave him two": said again.
  const again =
    quantity?.value !== undefined &&
    quantity.value === before.draft.quantity?.value &&
    next.slots['to'] === undefined &&
    next.slots['how'] === before.slots['how'];
  if (quantity !== undefined && quantity.whole !== 'all' && !again) return undefined;
  const { how = before.slots['how'] } = next.slots;
  return { ...before, slots: { ...next.slots, ...before.slots, ...(how === undefined ? {} : { how }) } };
}

const TOLD_TWICE = new Set(['stock', 'receive', 'hardenOff', 'plantOut', 'potOn']);

/** "Stools brought into glasshouse 1, growth started": the second words add slots to the first act. */
export function joinTwiceTold(before: Proposal, next: Proposal): Proposal | undefined {
  if (before.kind !== next.kind || !TOLD_TWICE.has(before.kind)) return undefined;
  if (next.draft.which && isAnotherLot(before.draft.which, next.draft.which)) return undefined;
  if (
    next.draft.plant !== undefined &&
    before.draft.plant !== undefined &&
    !isOnePlant(plantToldOf(before), next.draft.plant)
  )
    return undefined;
  if (
    before.draft.quantity !== undefined &&
    next.draft.quantity !== undefined &&
    (before.draft.quantity.value === undefined ||
      before.draft.quantity.value !== next.draft.quantity.value ||
      next.draft.plant !== undefined)
  )
    return undefined;
  const quantity = before.draft.quantity ?? next.draft.quantity;
  const plant = before.draft.plant ?? next.draft.plant;
  const when = before.draft.when ?? next.draft.when;
  return {
    ...before,
    slots: { ...next.slots, ...before.slots },
    draft: {
      ...before.draft,
      ...(quantity ? { quantity } : {}),
      ...(plant ? { plant } : {}),
      ...(when ? { when } : {}),
    },
  };
}
