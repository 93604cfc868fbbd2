/** Mist, air, water: one line a place while cuttings root there. */
import { addDays, type Day } from '../calendar/day.js';
import { lastDay } from '../calendar/span.js';
import { cropNamed } from '../horticulture/crops.js';
import type { Batch } from '../ledger/batch.js';
import { entriesOf, type Ledger } from '../ledger/ledger.js';
import { aboutPlace, byPlace } from './about-place.js';
import type { Due } from './due.js';

/** Tending is mentioned so many days after the last that was told. Judgement. */
const TEND_EVERY_DAYS = 3;

/** Never a question, and silent for a while after it was told. */
export function tendingDues(ledger: Ledger, rooting: readonly Batch[], today: Day): readonly Due[] {
  const told = entriesOf(ledger, 'tend');
  return [...byPlace(rooting)].flatMap(([place, batches]) => {
    const tended = told.filter(
      ({ entry, touched }) =>
        entry.place?.toLowerCase() === place.toLowerCase() ||
        batches.some(({ label }) => touched.includes(label)),
    );
    const last = tended.map(({ entry }) => lastDay(entry.date)).reduce<Day | null>(later, null);
    if (last !== null && addDays(last, TEND_EVERY_DAYS) > today) return [];
    const covered = batches.some(({ crop }) => (crop === null ? null : cropNamed(crop))?.cover !== 'open');
    return [
      {
        ...aboutPlace('tend', place, today, batches),
        from: today,
        bestBy: today,
        tooLateAfter: today,
        why: { because: 'rooting', batches: batches.length, covered },
      },
    ];
  });
}

function later(a: Day | null, b: Day): Day {
  return a === null || b > a ? b : a;
}
