/** "Make that five", "no, 6 to the porch" behind a split: what was parted, by another number or elsewhere. */
import { alive } from '../../ledger/batch.js';
import type { Amendment } from '../../ledger/posting.js';
import type { Slots } from './entry-meant.js';
import type { Sitting } from '../sitting.js';

/** So long after a split is a number alone of it. */
const LATELY_MS = 3_600_000;

/** What makes the last split read so; null where the last note was none, or the words tell of something else. */
export function splitAnew({ ledger, origin }: Sitting, set: Slots): Amendment | null {
  const last = ledger.standing.at(-1);
  if (last?.entry.kind !== 'split' || origin.at - last.journal.at > LATELY_MS) return null;
  const [part, another] = last.entry.parts;
  const { count = part?.count, place = part?.place, ...rest } = set;
  if (!part || another || Object.keys(rest).length > 0 || typeof count !== 'number') return null;
  const there = last.touched.reduce((sum, label) => {
    const batch = ledger.batches.get(label);
    return sum + (batch ? alive(batch) : 0);
  }, 0);
  if (count < 1 || count >= there) return null;
  const parts = [{ ...part, count, ...(typeof place === 'string' ? { place } : {}) }];
  return { amends: last.line, entries: [{ ...last.entry, parts }] };
}
