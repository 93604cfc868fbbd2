/** A batch shared out into several, and several batches joined into one. */
import { alive, type Batch, isLive } from './batch.js';
import { move, share } from './counting.js';
import type { Draft } from './draft.js';
import type { Line, Merge, Split } from './posting.js';
import { acted } from './reach.js';
import type { Refusal } from './refusal.js';

export function split(draft: Draft, line: Line, entry: Split): readonly string[] | Refusal {
  const batch = draft.batches.get(entry.batch);
  if (!batch || !isLive(batch)) return { refused: 'noBatch', plant: { batch: entry.batch } };
  const wanted = entry.parts.reduce((sum, part) => sum + part.count, 0);
  if (wanted > alive(batch)) return { refused: 'tooMany', batch: batch.label, there: alive(batch), wanted };
  let left = batch;
  for (const { label, count, place } of entry.parts) {
    if (draft.batches.has(label)) return { refused: 'labelTaken', label };
    const [kept, part] = share(left, count, label, place);
    draft.batches.set(label, acted(part, line, entry, count));
    left = kept;
  }
  if (entry.place !== undefined) left = { ...left, standing: move(left, alive(left), entry.place) };
  draft.batches.set(batch.label, acted(left, line, entry, wanted));
  return [batch.label, ...entry.parts.map((part) => part.label)];
}

export function merge(draft: Draft, line: Line, entry: Merge): readonly string[] | Refusal {
  const batches = entry.batches.map((label) => draft.batches.get(label));
  const missing = entry.batches.find((_, index) => !batches[index]);
  if (missing !== undefined) return { refused: 'noBatch', plant: { batch: missing } };
  const present = batches.filter((batch) => batch !== undefined);
  const into = draft.batches.get(entry.into);
  if (!into) return { refused: 'noBatch', plant: { batch: entry.into } };
  if (present.some((batch) => batch.variety !== into.variety || batch.crop !== into.crop)) {
    return { refused: 'unlikeBatches', labels: entry.batches };
  }
  let whole = into;
  for (const batch of present.filter((each) => each.label !== entry.into)) {
    const joined = alive(batch);
    whole = {
      ...whole,
      ...sums(whole, batch),
      pots: whole.pots === null || batch.pots === null ? null : whole.pots + batch.pots,
      standing: Object.entries(batch.standing).reduce<Record<string, number>>(
        (sum, [place, count]) => ({ ...sum, [place]: (sum[place] ?? 0) + count }),
        { ...whole.standing },
      ),
    };
    const left: Batch = { ...batch, ...NONE, standing: {}, mergedInto: entry.into };
    draft.batches.set(batch.label, acted(left, line, entry, joined));
  }
  draft.batches.set(entry.into, acted(whole, line, entry, alive(whole)));
  return entry.batches;
}

/** What died or went of a batch goes along, so that the whole still adds up. */
const sums = (one: Batch, other: Batch) => ({
  count: one.count + other.count,
  rooted: one.rooted + other.rooted,
  pottedOn: one.pottedOn + other.pottedOn,
  pinched: one.pinched + other.pinched,
  plantedOut: one.plantedOut + other.plantedOut,
  lost: one.lost + other.lost,
  dispatched: one.dispatched + other.dispatched,
});

const NONE = { count: 0, rooted: 0, pottedOn: 0, pinched: 0, plantedOut: 0, lost: 0, dispatched: 0 };
