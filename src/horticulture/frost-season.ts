/** The two halves of the frost year, and days counted within them on a common calendar. */
import { asDay, type Day, dayOfMonth, daysBetween, month, year } from '../calendar/day.js';
import type { Hemisphere } from '../calendar/hemisphere.js';
import type { Span } from '../calendar/span.js';

/** `spring` runs from midwinter to midsummer and asks for the last frost; `autumn` follows and asks for the first. */
export type FrostHalf = 'spring' | 'autumn';

export interface FrostSeason {
  readonly half: FrostHalf;
  readonly hemisphere: Hemisphere;
}

/** A day of any year, `MM-DD`. */
export type MonthDay = string;

const COMMON_YEAR = 2001;
const DAYS_PER_YEAR = 365;

/** First month of the season (spring January to July, autumn August to December; six months later in the south). */
function firstMonth({ half, hemisphere }: FrostSeason): number {
  if (hemisphere === 'north') return half === 'spring' ? 1 : 8;
  return half === 'spring' ? 7 : 2;
}

/** The season that began in `seasonYear`; a southern spring ends on 31 January of the next year. */
export function seasonSpan(season: FrostSeason, seasonYear: number): Span {
  const first = String(firstMonth(season)).padStart(2, '0');
  const from = asDay(`${seasonYear}-${first}-01`);
  if (season.half === 'autumn')
    return { from, to: asDay(`${seasonYear}-${season.hemisphere === 'north' ? '12-31' : '06-30'}`) };
  return season.hemisphere === 'north'
    ? { from, to: asDay(`${seasonYear}-07-31`) }
    : { from, to: asDay(`${seasonYear + 1}-01-31`) };
}

/** The year whose season holds `day`, or null where the day lies in the other half. */
export function seasonYearOf(season: FrostSeason, day: Day): number | null {
  const candidate =
    season.hemisphere === 'south' && season.half === 'spring' && month(day) === 1 ? year(day) - 1 : year(day);
  const { from, to } = seasonSpan(season, candidate);
  return from <= day && day <= to ? candidate : null;
}

/**
 * Days since the first day of the season, counted from 1 on the common calendar: 29 February counts as the 28th, so
 * that the same date has the same number in every year.
 */
export function seasonDay(season: FrostSeason, day: Day): number {
  const start = asDay(`${COMMON_YEAR}-${String(firstMonth(season)).padStart(2, '0')}-01`);
  const days = daysBetween(start, commonDay(day));
  return (days < 0 ? days + DAYS_PER_YEAR : days) + 1;
}

/** The day of a common year with that number; numbers outside the season run on into its neighbours. */
export function monthDayOf(season: FrostSeason, number: number): MonthDay {
  const start = Date.UTC(COMMON_YEAR, firstMonth(season) - 1, 1);
  const within = (((number - 1) % DAYS_PER_YEAR) + DAYS_PER_YEAR) % DAYS_PER_YEAR;
  const at = new Date(start + within * 86_400_000).toISOString();
  // Past New Year the next common year (2002) is counted, which has the same days.
  return at.slice(5, 10);
}

function commonDay(day: Day): Day {
  const leap = month(day) === 2 && dayOfMonth(day) === 29;
  return asDay(`${COMMON_YEAR}-${leap ? '02-28' : day.slice(5)}`);
}
