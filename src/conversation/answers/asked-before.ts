/** The batch that a grower has just asked about: what is told next, without a name, is of that one. */
import { type Batch } from '../../ledger/batch.js';
import { matching } from '../../ledger/ledger.js';
import { named } from '../../ledger/reach.js';
import { readIn } from '../reading/reading.js';
import type { Sitting } from '../sitting.js';

/** So long one stands before the pot that was asked about. */
const JUST_MS = 10 * 60_000;

/** "How's the gander?" – "knocked a couple out, looks like 7 with roots". Null where that was no question, or of several. */
export function askedJustBefore(sitting: Sitting): Batch | null {
  const { message, from, at } = sitting.origin;
  const before = sitting.talk.heard.findLast((each) => each.message !== message);
  if (!before || before.from !== from || before.counted || at - before.at > JUST_MS) return null;
  const [only, another] = readIn(sitting, before.text).entries;
  if (only?.entry.kind !== 'question' || another || !named(only.entry)) return null;
  const [batch, other] = matching(sitting.ledger, only.entry);
  return batch && !other ? batch : null;
}
