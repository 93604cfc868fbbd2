/** How many an entry is about: the number that was said, or what it comes to of those that are alive. */
import type { EntryKind } from '../../ledger/entry.js';
import type { KnownBatch } from '../note.js';
import type { Proposal } from '../proposal.js';
import type { Quantity } from '../pieces/quantities/quantity.js';
import { shareOf } from '../pieces/quantities/shares.js';
import { ask, type OpenEntry, say } from './open-entry.js';

const NEEDS_COUNT: ReadonlySet<EntryKind> = new Set(['receive', 'strike', 'loss', 'dispatch', 'target']);
/** Whatever numbers stand in them, they count no plants. */
const UNCOUNTED: ReadonlySet<EntryKind> = new Set([
  'tend',
  'remark',
  'remind',
  'question',
  'reading',
  'undo',
  'answer',
  'amend',
]);
/** Of plants that are not there yet nobody can take all, or the rest. */
const OF_NEW_PLANTS: ReadonlySet<EntryKind> = new Set(['strike', 'receive', 'target']);
const MOST = 100_000;

/** Fills in how many, or asks; false where it was none, and there is nothing to log. */
export function tellCount(
  { kind, draft, carried, slots }: Proposal,
  batch: KnownBatch | undefined,
  entry: OpenEntry,
): boolean {
  const isCheck = kind === 'check';
  if (UNCOUNTED.has(kind) || (isCheck && slots['rooted'] !== undefined)) return true;
  const { quantity } = draft;
  const slot = isCheck ? 'rooted' : 'count';
  if (quantity === undefined) {
    if (isCheck) ask(entry, 'rooted', ['all', 'some', 'none']);
    else if (NEEDS_COUNT.has(kind)) ask(entry, 'count');
    return true;
  }
  // "Pinched both": each of two lots, whatever their numbers.
  if (quantity.both && !draft.plant && !carried && !batch && !isCheck) return true;
  const { value, whole } = quantity;
  if (quantity.some && isCheck) say(entry, 'rooted', 'some');
  else if (quantity.vague) ask(entry, slot);
  else if (quantity.allBut !== undefined || quantity.share) {
    const part = partOf(quantity, batch?.count);
    if (part === undefined) ask(entry, slot);
    else if (part === 0 && kind === 'loss') return false;
    else say(entry, slot, part);
  } else if (whole !== undefined) {
    if (OF_NEW_PLANTS.has(kind)) ask(entry, slot);
    else say(entry, slot, isCheck ? 'all' : whole);
  } else if (value === undefined || quantity.negative || value > MOST || !Number.isInteger(value))
    ask(entry, slot);
  else if (isCheck) tellRooted(value, quantity, batch, entry);
  else if (value === 0) return false;
  else say(entry, 'count', value);
  return true;
}

/** "All but two", "half" of those alive; undefined where that is no whole number of plants. */
function partOf({ allBut, share }: Quantity, alive: number | undefined): number | undefined {
  if (allBut === undefined) return share && shareOf(alive, share);
  return alive === undefined || alive < allBut ? undefined : alive - allBut;
}

/** How many have roots, "two more" than last time or "the other two" besides, and of how many, where that is not all of the batch. */
function tellRooted(
  value: number,
  { more: told, besides, last, outOf }: Quantity,
  batch: KnownBatch | undefined,
  entry: OpenEntry,
): void {
  const { rooted: before = 0, count: alive = 0 } = batch ?? {};
  const more = told ?? ((besides ?? last) && before > 0 && before + value <= alive);
  if (more && batch?.rooted === undefined) {
    ask(entry, 'rooted');
    return;
  }
  say(entry, 'rooted', more ? before + value : value === 0 ? 'none' : value);
  if (outOf !== batch?.count) say(entry, 'count', outOf);
}
