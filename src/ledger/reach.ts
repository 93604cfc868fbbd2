/** Which batches an entry reaches: the one that is meant, or each that fits; and what it leaves in their story. */
import type { Day } from '../calendar/day.js';
import { firstDay, lastDay } from '../calendar/span.js';
import { type Act, allReady, alive, type Batch, began } from './batch.js';
import type { Changed } from './changes.js';
import type { Draft } from './draft.js';
import type { Plant } from './entry.js';
import { matching } from './ledger.js';
import type { Line, Posting } from './posting.js';
import { isRefusal, type Refusal } from './refusal.js';

/** For what is done to one batch: asks which where several fit. */
export function onOne(
  draft: Draft,
  line: Line,
  entry: Posting & Plant,
  change: (batch: Batch) => Changed,
): readonly string[] | Refusal {
  const plant = plantOf(entry);
  const fitting = matching(draft, plant);
  const [batch, another] = fitting;
  if (!batch) return { refused: 'noBatch', plant };
  if (another) return { refused: 'severalBatches', plant, labels: fitting.map(({ label }) => label) };
  return onThese(draft, line, entry, [batch], change);
}

/** For what covers every batch that fits; `noneIsFine` where it is as well said of an empty place or a stock plant. */
export function onEach(
  draft: Draft,
  line: Line,
  entry: Posting & Plant,
  fromPlace: string | undefined,
  change: (batch: Batch) => Changed,
  noneIsFine = false,
): readonly string[] | Refusal {
  const plant = plantOf(entry);
  const fitting = matching(draft, plant, fromPlace).filter((batch) => began(batch) <= lastDay(dateOf(entry)));
  if (fitting.length === 0 && !noneIsFine) return { refused: 'noBatch', plant };
  return onThese(draft, line, entry, fitting, change);
}

function onThese(
  draft: Draft,
  line: Line,
  entry: Posting,
  batches: readonly Batch[],
  change: (batch: Batch) => Changed,
): readonly string[] | Refusal {
  const changed: Batch[] = [];
  for (const batch of batches) {
    const date = lastDay(dateOf(entry));
    if (date < began(batch))
      return { refused: 'beforeItBegan', batch: batch.label, began: began(batch), date };
    const after = change(batch);
    if (isRefusal(after)) return after;
    changed.push(acted(after, line, entry, countOf(batch, after, entry)));
  }
  for (const batch of changed) draft.batches.set(batch.label, batch);
  return changed.map(({ label }) => label);
}

function countOf(before: Batch, after: Batch, entry: Posting): number | null {
  switch (entry.kind) {
    case 'check':
      return entry.rooted === 'some' || entry.rooted === undefined ? null : after.rooted;
    case 'loss':
      return after.lost - before.lost;
    case 'dispatch':
      return after.dispatched - before.dispatched;
    case 'plantOut':
      return after.plantedOut - before.plantedOut;
    case 'move':
      if (entry.count === 'rest' && entry.place !== undefined)
        return (after.standing[entry.place] ?? 0) - (before.standing[entry.place] ?? 0) || null;
      return typeof entry.count === 'number' ? entry.count : alive(before);
    case 'potOn':
    case 'pinch':
    case 'hardenOff':
      if (entry.count === 'rest' && entry.kind === 'potOn') return after.pottedOn - before.pottedOn;
      if (entry.count === 'rest' && entry.kind === 'pinch') return after.pinched - before.pinched;
      return typeof entry.count === 'number'
        ? entry.count
        : entry.kind === 'potOn'
          ? allReady(before)
          : alive(before);
    default:
      return null;
  }
}

export function acted(batch: Batch, line: Line, entry: Posting, count: number | null): Batch {
  return { ...batch, acts: [...batch.acts, actOf(line, entry, count)] };
}

export function actOf(line: Line, entry: Posting, count: number | null): Act {
  const on: Day =
    entry.kind === 'strike' || entry.kind === 'receive' ? firstDay(entry.date) : lastDay(entry.date);
  return { line, kind: entry.kind, on, count, entry };
}

/** The plant that an entry names, without the rest of it. */
export function plantOf({ variety, crop, batch }: Plant): Plant {
  return {
    ...(variety === undefined ? {} : { variety }),
    ...(crop === undefined ? {} : { crop }),
    ...(batch === undefined ? {} : { batch }),
  };
}

/** Whether an entry names a plant at all. */
export function named(entry: Plant): boolean {
  return entry.variety !== undefined || entry.crop !== undefined || entry.batch !== undefined;
}

function dateOf(entry: Posting): Posting['date'] {
  return entry.date;
}
