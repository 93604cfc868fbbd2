/** When to speak unasked: at the grower's hour, once on each local day, never in quiet hours. */
import type { Instant } from '../calendar/clock.js';
import { addDays, type Day } from '../calendar/day.js';
import { instantAt, localDay, localTime, type TimeOfDay } from '../calendar/zone.js';

export interface CivilHours {
  /** IANA name. */
  readonly zone: string;
  readonly digestAt: TimeOfDay | 'off';
  /** From and to, across midnight as a rule; the two the same: no quiet hours. */
  readonly quiet: readonly [from: TimeOfDay, to: TimeOfDay];
}

/** Some zones skip a day; none skips two in a row. */
const MOST_DAYS_SKIPPED = 2;

/**
 * The next moment at which a digest may go out, `now` itself where one is overdue; null where digests are off. `lastDay` is the local
 * day of the last one: each local day has its own, whatever its zone was. A missed hour is made up for on the same day,
 * outside quiet hours.
 */
export function nextDigestAt(now: Instant, lastDay: Day | null, hours: CivilHours): Instant | null {
  if (hours.digestAt === 'off') return null;
  const today = localDay(now, hours.zone);
  if (lastDay === null || lastDay < today) {
    const moment = digestOn(today, hours.digestAt, hours);
    if (moment !== null && now <= moment) return moment;
    if (moment !== null && !isQuiet(localTime(now, hours.zone), hours.quiet)) return now;
  }
  let day = addDays(lastDay !== null && lastDay > today ? lastDay : today, 1);
  for (let tried = 0; tried <= MOST_DAYS_SKIPPED; tried++, day = addDays(day, 1)) {
    const moment = digestOn(day, hours.digestAt, hours);
    if (moment !== null) return moment;
  }
  return null;
}

/** Whether the hour of today's digest has come. */
export function digestHourCame(now: Instant, hours: CivilHours): boolean {
  if (hours.digestAt === 'off') return false;
  const moment = digestOn(localDay(now, hours.zone), hours.digestAt, hours);
  return moment !== null && moment <= now;
}

/** The moment of a day's digest: the hour asked for, or the end of the quiet that covers it; null on a day that the zone skips. */
function digestOn(day: Day, time: TimeOfDay, { zone, quiet }: CivilHours): Instant | null {
  const at = instantAt(day, isQuiet(time, quiet) ? quiet[1] : time, zone);
  return localDay(at, zone) === day ? at : null;
}

/** The next moment, `now` or later, outside quiet hours. */
export function civilMoment(now: Instant, { zone, quiet }: CivilHours): Instant {
  const time = localTime(now, zone);
  if (!isQuiet(time, quiet)) return now;
  const today = localDay(now, zone);
  return instantAt(time < quiet[1] ? today : addDays(today, 1), quiet[1], zone);
}

/** Whether the time lies in [from, to), across midnight where `to` comes first. */
export function isQuiet(time: TimeOfDay, [from, to]: readonly [TimeOfDay, TimeOfDay]): boolean {
  return from <= to ? from <= time && time < to : time >= from || time < to;
}
