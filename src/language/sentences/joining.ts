/** Proposals of one note that tell of one act: a look and what it found, cuttings taken and where they were put. */
import { takenOn } from '../grammar/move/taken-on.js';
import { placedBoth } from '../acts/both-meant.js';
import { joinCheck, joinLoss, withoutWhatIsLeft } from './joining/looks-and-losses.js';
import { isOnePlant, plantToldOf } from './joining/plant-of.js';
import { putInShares } from './joining/put-in-shares.js';
import { joinStrike, merge, strikeInto } from './joining/strikes.js';
import { joinCare, joinSending, joinTwiceTold } from './joining/twice-told.js';
import { joinHardening, joinMove, joinReceipt } from './joining/whereabouts.js';
import type { Proposal } from '../proposal.js';
import { withoutSums } from './sums-told.js';
import type { Quantity } from '../pieces/quantities/quantity.js';

/** Joined and with what a pronoun carries over; in the order told. */
export function joinProposals(proposals: readonly Proposal[]): readonly Proposal[] {
  const joined: Proposal[] = [];
  for (const proposal of putInShares(withoutSums(withoutWhatIsLeft(placedBoth(proposals, []))))) {
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
    if (one) {
      joined[joined.length - 1] = one;
      if (last.kind === 'strike' && one.kind === 'strike') {
        shareWithList(joined, last, proposal);
        shareCrop(joined, proposal);
      }
    } else if (strike) joined[struck] = merge(strike, proposal);
    else joined.push(last ? carryCount(last, proposal) : proposal);
  }
  return joined;
}

/** "Took ten of these and ten of those and stuck them in the cold frame": what they were put into is told of the whole list. */
function shareWithList(joined: Proposal[], last: Proposal, { draft }: Proposal): void {
  if (draft.plant !== undefined || draft.quantity?.value !== undefined || draft.pots !== undefined) return;
  const { place, medium, size } = draft;
  for (let at = joined.length - 2; at >= 0; at--) {
    const each = joined[at];
    if (each?.kind !== 'strike' || each.rule !== last.rule) return;
    joined[at] = {
      ...each,
      slots: {
        ...(place === undefined ? {} : { place }),
        ...(medium === undefined ? {} : { medium }),
        ...(size === undefined ? {} : { potSize: size }),
        ...each.slots,
      },
    };
  }
}

/** "4 Salt Harrier and 3 Tallow Bell in one pot, penstemon cuttings": the crop told behind is that of the whole list. */
function shareCrop(joined: Proposal[], { draft }: Proposal): void {
  const crop = draft.plant?.variety === undefined ? draft.plant?.crop : undefined;
  if (crop === undefined || draft.quantity !== undefined) return;
  for (let at = joined.length - 2; at >= 0; at--) {
    const each = joined[at];
    const { plant, known } = each?.draft ?? {};
    if (
      each?.kind !== 'strike' ||
      known !== false ||
      plant?.variety === undefined ||
      plant.crop !== undefined
    )
      return;
    joined[at] = { ...each, draft: { ...each.draft, plant: { ...plant, crop } } };
  }
}

const TAKEN_ON: ReadonlySet<string> = new Set(takenOn.map(({ name }) => name));
const FOLLOWS_ON = new Set(['potOn', 'move', 'plantOut', 'hardenOff', 'pinch', 'dispatch']);

/** "4 rooted, potted them on": them are the four; "potted 4 on and out to the greenhouse". */
function carryCount(before: Proposal, next: Proposal): Proposal {
  const isSilent =
    (before.kind === 'check' && next.kind === 'potOn') ||
    (before.kind === 'potOn' && TAKEN_ON.has(next.rule));
  if (!FOLLOWS_ON.has(next.kind) || next.draft.plant !== undefined || next.draft.quantity !== undefined)
    return next;
  if (!next.draft.pronoun && !isSilent) return next;
  const { quantity } = before.draft;
  const carried = before.kind === 'check' ? theSame(quantity) : valueOf(quantity);
  if (
    carried === undefined ||
    quantity?.more ||
    before.kind === 'loss' ||
    // What was given away is no longer there to be planted.
    (before.kind === 'dispatch' && next.kind !== 'dispatch') ||
    !(
      isOnePlant(plantToldOf(before), plantToldOf(next)) ||
      (plantToldOf(before) ?? plantToldOf(next)) === undefined
    )
  )
    return next;
  return { ...next, draft: { ...next.draft, quantity: carried } };
}

const valueOf = (quantity: Quantity | undefined): Quantity | undefined =>
  quantity?.value === undefined ? undefined : { value: quantity.value };

/** "All but two have roots, bumped those up": so many of the same. */
function theSame(quantity: Quantity | undefined): Quantity | undefined {
  if (quantity?.value === undefined && quantity?.allBut !== undefined) return { allBut: quantity.allBut };
  if (quantity?.value === undefined && quantity?.share) return { share: quantity.share };
  return valueOf(quantity);
}
