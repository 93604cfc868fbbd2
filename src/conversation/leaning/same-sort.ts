/** “Took 5 more off my aunt’s plant, same variety”: of what was taken last. */
import type { LoggedEntry } from '../../ledger/entry.js';
import { named } from '../../ledger/reach.js';
import { noteOfLine } from '../correcting/entry-meant.js';
import type { Sitting } from '../sitting.js';

const SAME_SORT = /\bsame (?:variety|sort|kind|type|cultivar|plants?|ones?|again)\b/i;

/** The entry, of the variety that was taken last where it says so and names none. */
export function ofSameSort({ ledger, text }: Sitting, entry: LoggedEntry): LoggedEntry {
  if ((entry.kind !== 'strike' && entry.kind !== 'receive') || named(entry)) return entry;
  const last = SAME_SORT.test(text) ? ledger.standing.findLast((each) => each.entry.kind === 'strike') : null;
  const [batch] = last?.touched.flatMap((label) => ledger.batches.get(label) ?? []) ?? [];
  // A note of several sorts leaves it open.
  if (!last || !batch || noteOfLine(ledger, last).length > 1) return entry;
  const { variety, crop } = batch;
  return { ...entry, ...(variety === null ? {} : { variety }), ...(crop === null ? {} : { crop }) };
}
