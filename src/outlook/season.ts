/** What a young batch waits for: winter to pass, growth after potting on, the last frost. */
import { addDays, type Day, latest } from '../calendar/day.js';
import { northernMonth } from '../horticulture/cutting-season.js';
import type { Crop } from '../horticulture/crops.js';
import { lastPlantOutDay, onOrAfter, plantOutDay } from '../horticulture/plant-out.js';
import { type Batch, began } from '../ledger/batch.js';
import { knownWay } from './rooting-basis.js';
import { saferDays, type Site } from './site.js';

/** Young plants that stand over winter are let alone in these months (northern). Common practice, no source. */
const RESTING_MONTHS = [11, 12, 1, 2];
const REST_ENDS = { north: '03-01', south: '09-01' } as const;
/** Planting out begins, for what frost does not harm. Common practice, no source. */
const HARDY_PLANTING_FROM = { north: '04-01', south: '10-01' } as const;
/** A batch struck so shortly before spring has its winter still ahead. Judgement. */
const WINTER_AHEAD_DAYS = 60;
/** Where no frost date is known, tender plants are not thought of earlier. Common practice in cool gardens, no source. */
const GUESSED_LAST_FROST = { north: '05-20', south: '11-20' } as const;

export interface Growing {
  readonly crop: Crop;
  /** Cuttings that stand over their first winter. */
  readonly overwinters: boolean;
}

/** What is known of how the batch grows; null for an unknown crop. */
export function growingOf(batch: Batch, site: Site): Growing | null {
  const known = knownWay(batch, site.hemisphere);
  return known && { crop: known.crop, overwinters: batch.struck !== null && known.way.overwinters };
}

/** A house plant is never hardened off or planted out. */
export function staysIndoors(crop: Crop): boolean {
  return crop.hardiness.startsWith('H1') && crop.hardenOffDays === 0;
}

/** That day, or the end of the winter's rest where a batch that stands over winter would be disturbed in it. */
export function afterRest(day: Day, growing: Growing | null, site: Site): Day {
  if (!growing?.overwinters || !RESTING_MONTHS.includes(northernMonth(day, site.hemisphere))) return day;
  return springAfter(day, site);
}

/** Whether the batch rests on that day. */
export function isResting(day: Day, growing: Growing | null, site: Site): boolean {
  return afterRest(day, growing, site) !== day;
}

/** The end of its winter: that which follows `day`. */
export function springAfter(day: Day, site: Site): Day {
  return onOrAfter(REST_ENDS[site.hemisphere], day);
}

/** When a plant may go out, and until when that is worth saying (null: as long as it has not). */
export interface Planting {
  readonly on: Day;
  readonly tooLateAfter: Day | null;
}

/** When a batch may go out that will be hardened by `ready`. What missed its summer goes out in the next. */
export function plantingOf(
  ready: Day,
  batch: Batch,
  growing: Growing,
  { today, site }: { readonly today: Day; readonly site: Site },
): Planting {
  const { crop, overwinters } = growing;
  if (!crop.frostTender) {
    const spring = onOrAfter(HARDY_PLANTING_FROM[site.hemisphere], addDays(began(batch), WINTER_AHEAD_DAYS));
    return { on: overwinters ? latest(ready, spring) : ready, tooLateAfter: null };
  }
  const known = saferDays(site);
  const frost = {
    last: site.spring === null ? GUESSED_LAST_FROST[site.hemisphere] : known.last,
    first: known.first,
  };
  const on = plantOutDay(ready, frost);
  if (frost.last === null) return { on, tooLateAfter: null };
  const tooLateAfter = lastPlantOutDay(on, frost.first);
  if (today <= tooLateAfter) return { on, tooLateAfter };
  const next = plantOutDay(today, frost);
  return { on: next, tooLateAfter: lastPlantOutDay(next, frost.first) };
}
