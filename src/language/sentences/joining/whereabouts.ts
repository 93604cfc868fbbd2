/** Where plants went, told in the next breath: what came in, what was moved, what was moved to harden off. */
import type { Proposal } from '../../proposal.js';
import { isOnePlant, plantToldOf } from './plant-of.js';

/** "24 plugs arrived and went into the cold frame" stays two; a place told of a receipt in the next breath is one. */
export function joinReceipt(before: Proposal, next: Proposal): Proposal | undefined {
  if (before.kind === 'receive' && saysTheyAreRooted(next)) return placedBy(before, next.draft.place);
  // "I've potted it", "now in 3 litre pots".
  const potted =
    next.kind === 'potOn' &&
    before.kind === 'stock' &&
    (next.draft.pronoun === true || next.rule === '<plant> now in <size>' || isSilent(next));
  if ((before.kind !== 'receive' && before.kind !== 'stock') || (next.kind !== 'move' && !potted))
    return undefined;
  if (
    next.draft.plant !== undefined ||
    next.draft.fromPlace !== undefined ||
    before.slots['place'] !== undefined
  )
    return undefined;
  return {
    ...before,
    slots: {
      ...before.slots,
      ...(next.draft.place === undefined ? {} : { place: next.draft.place }),
      ...(next.draft.size === undefined || before.slots['potSize'] !== undefined
        ? {}
        : { potSize: next.draft.size }),
    },
  };
}

/** "Potted up in the lean-to", right behind what was come by. */
const isSilent = ({ rule, draft }: Proposal): boolean =>
  rule === 'potted <count> <plant> on' && draft.quantity === undefined && draft.when === undefined;

/** "Three hoya plants, rooted already": of what came in with roots on, no look. */
const saysTheyAreRooted = ({ kind, draft, slots }: Proposal): boolean =>
  kind === 'check' &&
  draft.plant === undefined &&
  (draft.quantity === undefined || draft.quantity.whole === 'all') &&
  slots['rooted'] !== 'none' &&
  slots['rooted'] !== 'some';

const placedBy = (before: Proposal, place: string | undefined): Proposal =>
  place === undefined || before.slots['place'] !== undefined
    ? before
    : { ...before, slots: { ...before.slots, place } };

/** "Came out of the propagator and is in the lean-to now": where from and where to, told apart. */
export function joinMove(before: Proposal, next: Proposal): Proposal | undefined {
  // "Fetched the tubers out of the garage and bedded them in compost": woken.
  if (
    before.kind === 'move' &&
    next.kind === 'stock' &&
    (before.slots['place'] === undefined || before.slots['place'] === 'indoors') &&
    (next.draft.plant === undefined || before.draft.plant === undefined)
  )
    return {
      ...next,
      draft: { ...before.draft, ...next.draft },
      ...(before.carried ? { carried: before.carried } : {}),
    };
  if (before.kind !== 'move' || next.kind !== 'move') return undefined;
  const again = toldAgain(before, next);
  if (again) return again;
  const isOneWay =
    before.slots['place'] === undefined &&
    before.slots['fromPlace'] !== undefined &&
    next.slots['fromPlace'] === undefined;
  if (!isOneWay || (next.draft.plant !== undefined && !isOnePlant(plantToldOf(before), next.draft.plant)))
    return undefined;
  return { ...before, slots: { ...next.slots, ...before.slots } };
}

/** "Now living in the cold frame, moved them just now", "brought in from the tunnel, they're on the sill now": one way told twice. */
function toldAgain(before: Proposal, next: Proposal): Proposal | undefined {
  const { place } = next.slots;
  const isOfThem = next.draft.plant === undefined && next.draft.quantity === undefined;
  const isTold = place === undefined ? next.draft.pronoun === true : before.slots['place'] === 'indoors';
  if (!isOfThem || !isTold || next.slots['fromPlace'] !== undefined) return undefined;
  if (before.slots['place'] === undefined) return undefined;
  const when = before.draft.when ?? next.draft.when;
  return {
    ...before,
    slots: { ...before.slots, ...(place === undefined ? {} : { place }) },
    draft: { ...before.draft, ...(when ? { when } : {}) },
  };
}

/** "Started hardening off the Salt Harrier, got them out on the porch": where they were put for it. */
function placedToHarden(before: Proposal, next: Proposal): Proposal | undefined {
  const { draft } = next;
  const isOfThem = draft.pronoun === true && draft.plant === undefined && draft.quantity === undefined;
  const { place } = next.slots;
  return before.kind === 'hardenOff' &&
    next.kind === 'move' &&
    isOfThem &&
    (draft.when === undefined || draft.when === before.draft.when) &&
    typeof place === 'string' &&
    next.slots['fromPlace'] === undefined &&
    before.slots['place'] === undefined
    ? { ...before, slots: { ...before.slots, place } }
    : undefined;
}

/** "Moved to the cold frame to harden off": one act, and its purpose. */
export function joinHardening(before: Proposal, next: Proposal): Proposal | undefined {
  const placed = placedToHarden(before, next);
  if (placed) return placed;
  const unplaced =
    before.kind === 'move' && before.slots['place'] === undefined && before.slots['fromPlace'] === undefined;
  // "Put the Salt Harrier out in the plot to acclimatise".
  const isOutToHarden = before.kind === 'plantOut' && next.kind === 'hardenOff' && next.purpose === true;
  if (
    !(before.kind === 'move' || isOutToHarden) ||
    !(next.kind === 'hardenOff'
      ? next.purpose || unplaced || (next.draft.plant === undefined && next.slots['place'] === undefined)
      : (next.kind === 'plantOut' || next.kind === 'potOn') && unplaced)
  )
    return undefined;
  const moved = plantToldOf(before);
  if (moved && next.draft.plant !== undefined && !isOnePlant(moved, next.draft.plant)) return undefined;
  const place = next.slots['place'] ?? before.slots['place'];
  const { quantity } = next.draft;
  return {
    ...next,
    slots: { ...(next.kind === 'potOn' ? next.slots : {}), ...(place === undefined ? {} : { place }) },
    draft: {
      ...before.draft,
      ...(before.draft.quantity === undefined && quantity ? { quantity } : {}),
      ...(before.draft.plant === undefined && next.draft.plant ? { plant: next.draft.plant } : {}),
      ...(before.draft.when === undefined && next.draft.when ? { when: next.draft.when } : {}),
    },
    ...(before.carried ? { carried: before.carried } : {}),
  };
}
