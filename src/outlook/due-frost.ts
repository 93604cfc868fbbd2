/** Shelter from frost: a warning after a low minimum, and bringing in before the first of autumn. */
import { addDays, type Day } from '../calendar/day.js';
import { lastDay } from '../calendar/span.js';
import { onOrAfter, TENDER_SCREEN_CELSIUS } from '../horticulture/plant-out.js';
import { type Batch, isLive, placeOf } from '../ledger/batch.js';
import { entriesOf, type Ledger } from '../ledger/ledger.js';
import { aboutPlace, byPlace } from './about-place.js';
import type { Due } from './due.js';
import { growingOf } from './season.js';
import { saferDays, type Site } from './site.js';
import { shelterOf } from './standing.js';

/** A warning outlives the night after the reading by nothing. */
const WARNING_DAYS = 1;
const BRING_IN_AHEAD_DAYS = 10;
const BRING_IN_WORTH_DAYS = 28;
/** An unheated frame keeps off so many degrees of frost. Common practice, no source. */
const FRAME_CELSIUS = 2;

/**
 * Warns of a low minimum that was reported, where plants that it harms stand outside or in a frame. Readings of a place
 * under cover warn of nothing.
 */
export function frostWarnings(ledger: Ledger, site: Site, today: Day): readonly Due[] {
  const readings = entriesOf(ledger, 'reading').filter(
    ({ entry }) =>
      lastDay(entry.date) >= addDays(today, -WARNING_DAYS) &&
      (entry.place === undefined || shelterOf(entry.place) !== 'inside'),
  );
  const coldest = readings.reduce<(typeof readings)[number] | null>(
    (low, each) => ((each.entry.celsius ?? Infinity) < (low?.entry.celsius ?? Infinity) ? each : low),
    null,
  );
  const celsius = coldest?.entry.celsius;
  if (!coldest || celsius === undefined) return [];
  const on = lastDay(coldest.entry.date);
  const exposed = [...ledger.batches.values()].filter(
    (batch) => isLive(batch) && isExposed(batch, celsius, site),
  );
  return [...byPlace(exposed)].map(([place, batches]) => ({
    ...aboutPlace('frostWarning', place, `${on}:${coldest.line}`, batches),
    from: on,
    bestBy: addDays(on, WARNING_DAYS),
    tooLateAfter: addDays(on, WARNING_DAYS),
    why: { because: 'minimum', celsius, on },
  }));
}

function isExposed(batch: Batch, celsius: number, site: Site): boolean {
  const shelter = shelterOf(placeOf(batch));
  if (shelter === 'inside' && batch.hardeningSince === null) return false;
  const growing = growingOf(batch, site);
  const tender = growing?.crop.frostTender ?? true;
  if (batch.plantedOut > 0 && !tender) return false;
  const bears = tender ? TENDER_SCREEN_CELSIUS : (growing?.crop.winterMinimumCelsius ?? -5);
  return celsius <= bears - (shelter === 'frame' ? FRAME_CELSIUS : 0);
}

/** Tender plants that stand outside are brought under cover before the first frost of autumn. */
export function bringInDues(ledger: Ledger, site: Site, today: Day): readonly Due[] {
  const { first } = saferDays(site);
  if (first === null) return [];
  const oneInTen = onOrAfter(first, addDays(today, -BRING_IN_WORTH_DAYS));
  const outside = [...ledger.batches.values()].filter(
    (batch) =>
      isLive(batch) &&
      batch.plantedOut === 0 &&
      shelterOf(placeOf(batch)) === 'outside' &&
      (growingOf(batch, site)?.crop.frostTender ?? false),
  );
  return [...byPlace(outside)].map(([place, batches]) => ({
    ...aboutPlace('bringIn', place, oneInTen.slice(0, 4), batches),
    from: addDays(oneInTen, -BRING_IN_AHEAD_DAYS),
    bestBy: oneInTen,
    tooLateAfter: addDays(oneInTen, BRING_IN_WORTH_DAYS),
    why: { because: 'firstFrostNears', oneInTen },
  }));
}
