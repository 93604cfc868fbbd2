/** Reminders that were asked for in words, and intentions told. */
import { addDays, type Day } from '../calendar/day.js';
import { firstDay, lastDay } from '../calendar/span.js';
import { isLive, isOf } from '../ledger/batch.js';
import { entriesOf, type Ledger, liveBatches, type StandingEntry } from '../ledger/ledger.js';
import type { Due } from './due.js';

const REMINDER_WORTH_DAYS = 7;

/** Those that have not grown old, and whose plant, where one was named, still lives. */
export function reminderDues(ledger: Ledger, today: Day): readonly Due[] {
  const live = liveBatches(ledger);
  return entriesOf(ledger, 'remind').flatMap(({ line, entry }) => {
    const tooLateAfter = addDays(lastDay(entry.date), REMINDER_WORTH_DAYS);
    const about = live.filter((batch) => namesPlant(entry) && isOf(batch, entry));
    if (tooLateAfter < today || (wasNamed(ledger, entry) && about.length === 0)) return [];
    return [
      {
        key: `reminder:${line}`,
        kind: 'reminder' as const,
        labels: about.map(({ label }) => label),
        variety: entry.variety ?? null,
        crop: entry.crop ?? null,
        place: null,
        count: null,
        from: firstDay(entry.date),
        bestBy: lastDay(entry.date),
        tooLateAfter,
        at: entry.time ?? null,
        asks: false,
        why: { because: 'asked' as const, text: entry.text ?? '' },
      },
    ];
  });
}

function namesPlant(entry: StandingEntry['entry'] & { kind: 'remind' }): boolean {
  return entry.variety !== undefined || entry.crop !== undefined || entry.batch !== undefined;
}

/** A plant that had batches once and has none alive makes its reminder moot; one that never had any does not. */
function wasNamed(ledger: Ledger, entry: StandingEntry['entry'] & { kind: 'remind' }): boolean {
  if (!namesPlant(entry)) return false;
  const ever = [...ledger.batches.values()].filter((batch) => isOf(batch, entry));
  return ever.length > 0 && ever.every((batch) => !isLive(batch));
}
