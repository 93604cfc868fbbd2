/** Proposals of one note that tell of one act: a look and what it found, cuttings taken and where they were put. */
import type { Draft } from './drafting/draft.js';
import type { Proposal } from './proposal.js';
import type { PlantWords } from './pieces.js';

const same = (a: PlantWords | undefined, b: PlantWords | undefined): boolean =>
  a !== undefined && b !== undefined && a.variety === b.variety && a.batch === b.batch && a.crop === b.crop;

/** Joined and with what a pronoun carries over; in the order told. */
export function joinProposals(proposals: readonly Proposal[]): readonly Proposal[] {
  const joined: Proposal[] = [];
  for (const proposal of proposals) {
    const last = joined.at(-1);
    const one =
      last &&
      (joinCheck(last, proposal) ??
        joinLoss(last, proposal) ??
        joinStrike(last, proposal) ??
        joinReceipt(last, proposal) ??
        joinMove(last, proposal) ??
        joinCare(last, proposal) ??
        joinTwiceTold(last, proposal) ??
        joinSending(last, proposal) ??
        joinHardening(last, proposal));
    const struck = one ? -1 : strikeInto(joined, proposal);
    const strike = joined[struck];
    if (one) joined[joined.length - 1] = one;
    else if (strike) joined[struck] = merge(strike, proposal);
    else joined.push(last ? carryCount(last, proposal) : proposal);
  }
  return joined;
}

const plantOf = (proposal: Proposal): PlantWords | undefined => proposal.draft.plant ?? proposal.carried;

/** "Checked the Violet Ledger (three out of eight rooted)". */
function joinCheck(before: Proposal, next: Proposal): Proposal | undefined {
  if (before.kind !== 'check' || next.kind !== 'check') return undefined;
  const told = (proposal: Proposal): boolean =>
    proposal.draft.quantity !== undefined || proposal.slots['rooted'] !== undefined;
  if (
    next.draft.plant !== undefined &&
    before.draft.plant !== undefined &&
    !same(before.draft.plant, next.draft.plant)
  )
    return undefined;
  const sameNone =
    before.slots['rooted'] === 'none' && next.slots['rooted'] === 'none' && next.draft.plant === undefined;
  if (told(before) && told(next) && !sameNone) return undefined;
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

/** "3 rotten, binned", "gone mouldy, all of it in the bin": one loss told twice. */
function joinLoss(before: Proposal, next: Proposal): Proposal | undefined {
  if (before.kind !== 'loss' || next.kind !== 'loss') return undefined;
  // "Lost three, sorry I mean …, lost three to rot", "knocked two off and snapped both": said again in full.
  const told = [before, next].map(({ draft }) => draft.quantity);
  const again =
    (told[0]?.value ?? told[0]?.whole) !== undefined &&
    told[0]?.value === told[1]?.value &&
    told[0]?.whole === told[1]?.whole &&
    (before.slots['cause'] === undefined || told[1]?.both === true) &&
    same(plantOf(before), plantOf(next));
  if (again) return { ...before, slots: { ...before.slots, ...next.slots } };
  // "The cat knocked the pot off the sill and snapped two Copper Lantern": how it came about, and what it came to.
  // "Dead ones binned: three Copper Lantern": a loss of nobody knows what, and then of what.
  const unspoken =
    before.slots['cause'] === undefined
      ? next.draft.plant !== undefined &&
        (before.carried === undefined || same(before.carried, next.draft.plant))
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

/** "Took four … and put them all in one pot in the propagator". */
function joinStrike(before: Proposal, next: Proposal): Proposal | undefined {
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
  if (
    next.kind === 'strike' &&
    next.draft.plant === undefined &&
    (next.draft.quantity === undefined ||
      next.draft.quantity.whole !== undefined ||
      before.draft.quantity === undefined)
  )
    return merge(before, next);
  if (
    next.kind !== 'move' &&
    !(
      next.kind === 'potOn' &&
      next.draft.plant === undefined &&
      /^moved|^potted <count> <plant>$/.test(next.rule)
    )
  )
    return undefined;
  if (next.draft.plant !== undefined && !same(plantOf(before), next.draft.plant)) return undefined;
  if (next.draft.quantity?.value !== undefined && next.draft.quantity.value !== before.draft.quantity?.value)
    return undefined;
  if (next.draft.fromPlace !== undefined) return undefined;
  return merge(before, next);
}

/** "Took 15 Pink Ute and 20 Creek Bandit, Utes in 50mm tubes, Bandits in a 40 cell tray": which of the strikes went into that. */
function strikeInto(told: readonly Proposal[], next: Proposal): number {
  if (next.kind !== 'potOn' || next.rule !== '<plant> to <size>') return -1;
  return told.findLastIndex(
    (each) =>
      each.kind === 'strike' && each.slots['potSize'] === undefined && same(plantOf(each), next.draft.plant),
  );
}

function merge(before: Proposal, next: Proposal): Proposal {
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

/** "24 plugs arrived and went into the cold frame" stays two; a place told of a receipt in the next breath is one. */
function joinReceipt(before: Proposal, next: Proposal): Proposal | undefined {
  const potted = next.kind === 'potOn' && next.draft.pronoun === true && before.kind === 'stock';
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

/** "Opened the lid of the propagator to let some air in": one care told twice. */
function joinCare(before: Proposal, next: Proposal): Proposal | undefined {
  if (before.kind !== 'tend' || next.kind !== 'tend' || before.slots['care'] !== next.slots['care'])
    return undefined;
  return next.draft.plant === undefined && next.slots['place'] === undefined && next.carried !== undefined
    ? before
    : undefined;
}

/** "Came out of the propagator and is in the lean-to now": where from and where to, told apart. */
function joinMove(before: Proposal, next: Proposal): Proposal | undefined {
  if (before.kind !== 'move' || next.kind !== 'move') return undefined;
  const isOneWay =
    before.slots['place'] === undefined &&
    before.slots['fromPlace'] !== undefined &&
    next.slots['fromPlace'] === undefined;
  if (!isOneWay || (next.draft.plant !== undefined && !same(plantOf(before), next.draft.plant)))
    return undefined;
  return { ...before, slots: { ...next.slots, ...before.slots } };
}

/** "Moved to the cold frame to harden off": one act, and its purpose. */
function joinHardening(before: Proposal, next: Proposal): Proposal | undefined {
  const unplaced =
    before.kind === 'move' && before.slots['place'] === undefined && before.slots['fromPlace'] === undefined;
  if (
    before.kind !== 'move' ||
    !(next.kind === 'hardenOff'
      ? next.purpose || unplaced || (next.draft.plant === undefined && next.slots['place'] === undefined)
      : next.kind === 'plantOut' && unplaced)
  )
    return undefined;
  const moved = plantOf(before);
  if (moved && next.draft.plant !== undefined && !same(moved, next.draft.plant)) return undefined;
  const place = next.slots['place'] ?? before.slots['place'];
  const { quantity } = next.draft;
  return {
    ...next,
    slots: place === undefined ? {} : { place },
    draft: {
      ...before.draft,
      ...(before.draft.quantity === undefined && quantity ? { quantity } : {}),
      ...(before.draft.plant === undefined && next.draft.plant ? { plant: next.draft.plant } : {}),
      ...(before.draft.when === undefined && next.draft.when ? { when: next.draft.when } : {}),
    },
    ...(before.carried ? { carried: before.carried } : {}),
  };
}

/** "Nine went off with her, gave her the lot", "and every last one was sold": how, said behind. */
function joinSending(before: Proposal, next: Proposal): Proposal | undefined {
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
function joinTwiceTold(before: Proposal, next: Proposal): Proposal | undefined {
  if (before.kind !== next.kind || !TOLD_TWICE.has(before.kind)) return undefined;
  if (
    next.draft.plant !== undefined &&
    before.draft.plant !== undefined &&
    !same(plantOf(before), next.draft.plant)
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

const FOLLOWS_ON = new Set(['potOn', 'move', 'plantOut', 'hardenOff', 'pinch', 'dispatch']);

/** "4 rooted, potted them on": them are the four. */
function carryCount(before: Proposal, next: Proposal): Proposal {
  const silentCheck = before.kind === 'check' && next.kind === 'potOn';
  if (!FOLLOWS_ON.has(next.kind) || next.draft.plant !== undefined || next.draft.quantity !== undefined)
    return next;
  if (!next.draft.pronoun && !silentCheck) return next;
  const { quantity } = before.draft;
  if (
    quantity?.value === undefined ||
    quantity.more ||
    before.kind === 'loss' ||
    !(same(plantOf(before), plantOf(next)) || (plantOf(before) ?? plantOf(next)) === undefined)
  )
    return next;
  return { ...next, draft: { ...next.draft, quantity: { value: quantity.value } } };
}
