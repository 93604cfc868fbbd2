/** Cuttings taken, and what they were put into or where, told in the next breath. */
import type { Proposal } from '../../proposal.js';
import { isOnePlant, plantToldOf } from './plant-of.js';

/** "Took four … and put them all in one pot in the propagator". */
export function joinStrike(before: Proposal, next: Proposal): Proposal | undefined {
  if (before.kind !== 'strike') return undefined;
  // "Took dahlia cuttings this morning, 3 Brass Sixpence and 2 Duchess Mott": the crop of what is told after it.
  const heading = before.draft.plant;
  if (
    next.kind === 'strike' &&
    heading?.crop !== undefined &&
    heading.variety === undefined &&
    before.draft.quantity === undefined &&
    next.draft.known === false &&
    next.draft.plant?.crop === undefined &&
    next.draft.quantity !== undefined
  )
    return { ...next, draft: { ...before.draft, ...next.draft, plant: { ...heading, ...next.draft.plant } } };
  // "Jean let me have some bits off her geranium so I've done 6 cuttings of it": how many they made.
  if (
    next.kind === 'strike' &&
    before.draft.quantity?.vague === true &&
    (next.draft.pronoun === true || before.rule === 'let me snip <count> off <plant>') &&
    next.draft.quantity?.value !== undefined &&
    (next.draft.plant === undefined || isOnePlant(plantToldOf(before), next.draft.plant))
  )
    return { ...next, draft: { ...before.draft, ...next.draft } };
  // "4 Salt Harrier in one pot, penstemon cuttings": the crop of what is told before it.
  const { plant } = next.draft;
  if (
    next.kind === 'strike' &&
    plant?.crop !== undefined &&
    plant.variety === undefined &&
    next.draft.quantity === undefined &&
    before.draft.known === false &&
    before.draft.plant?.variety !== undefined &&
    (before.draft.plant.crop ?? plant.crop) === plant.crop
  )
    return merge({ ...before, draft: { ...before.draft, plant: { ...before.draft.plant, ...plant } } }, next);
  if (
    next.kind === 'strike' &&
    next.draft.plant === undefined &&
    (next.draft.quantity === undefined ||
      next.draft.quantity.whole !== undefined ||
      before.draft.quantity === undefined ||
      // "Took eight and stuck them in four pots, two to a pot": worked out, and the same eight.
      (next.draft.pronoun === true &&
        next.draft.quantity.value !== undefined &&
        next.draft.quantity.value === before.draft.quantity.value))
  )
    return merge(before, next);
  if (
    next.kind !== 'move' &&
    !isPutThere(next) &&
    !isPottedUp(next) &&
    !(
      next.kind === 'potOn' &&
      next.draft.plant === undefined &&
      /^moved|^potted <count> <plant>$/.test(next.rule)
    )
  )
    return undefined;
  if (next.draft.plant !== undefined && !isOnePlant(plantToldOf(before), next.draft.plant)) return undefined;
  // "Took Salt Harrier and put them in two pots, two in each": so many were taken.
  const isWorkedOut =
    before.draft.quantity === undefined && next.draft.pronoun === true && next.draft.pots !== undefined;
  if (
    next.draft.quantity?.value !== undefined &&
    next.draft.quantity.value !== before.draft.quantity?.value &&
    !isWorkedOut
  )
    return undefined;
  if (next.draft.fromPlace !== undefined) return undefined;
  return merge(before, next);
}

/** "… and put them in two pots in the laundry trough", "… and stuck them in the nursery bed": cuttings just taken root there. */
const isPutThere = ({ kind, rule, draft }: Proposal): boolean =>
  kind === 'plantOut' &&
  draft.plant === undefined &&
  (draft.pots !== undefined || (draft.pronoun === true && rule === 'put <plant> in the bed'));

/** "Took three off the big one and potted them up": put in to root. */
const isPottedUp = ({ kind, rule, draft }: Proposal): boolean =>
  kind === 'potOn' &&
  rule === 'potted <count> <plant> on' &&
  draft.pronoun === true &&
  draft.plant === undefined &&
  draft.which === undefined &&
  draft.when === undefined;

/** "Took 15 Pink Ute and 20 Creek Bandit, Utes in 50mm tubes, Bandits in a 40 cell tray": which of the strikes went into that. */
export function strikeInto(told: readonly Proposal[], next: Proposal): number {
  if (next.kind !== 'potOn' || next.rule !== '<plant> to <size>') return -1;
  return told.findLastIndex(
    (each) =>
      each.kind === 'strike' &&
      each.slots['potSize'] === undefined &&
      isOnePlant(plantToldOf(each), next.draft.plant),
  );
}

/** What a strike leaves open is filled from what was told after it. */
export function merge(before: Proposal, next: Proposal): Proposal {
  const { place, size, medium, pots } = next.draft;
  const slots: Record<string, unknown> = { ...before.slots };
  const put = (slot: string, value: unknown): void => {
    if (value !== undefined) slots[slot] ??= value;
  };
  put('place', place);
  put('potSize', size);
  put('medium', medium);
  const struck = before.draft.quantity?.value;
  const { each } = next.draft;
  put(
    'pots',
    pots ?? (each !== undefined && struck !== undefined && struck % each === 0 ? struck / each : undefined),
  );
  put('hormone', next.draft.hormone);
  put('cutting', next.draft.cutting);
  const quantity =
    before.draft.quantity ?? (next.draft.quantity?.value === undefined ? undefined : next.draft.quantity);
  return {
    ...before,
    slots,
    draft: {
      ...before.draft,
      ...(quantity ? { quantity } : {}),
      ...(before.draft.when === undefined && next.draft.when ? { when: next.draft.when } : {}),
    },
  };
}
