/** When it is safe to plant out: days at two risks, from a record of minima or from the day that a grower calls usual. */
import { addDays, asDay, type Day, latest, year } from '../calendar/day.js';
import type { Hemisphere } from '../calendar/hemisphere.js';
import type { DailyMinimum } from './frost-record.js';
import { frostOutlook, USUAL_SPREAD_DAYS } from './frost.js';
import { type FrostHalf, type MonthDay, monthDayOf, seasonDay } from './frost-season.js';
import { normalQuantile } from './normal.js';

/** An even chance, and one in ten. */
export const OFFERED_RISKS = [0.5, 0.1] as const;

/**
 * Tender growth is advised on by a screen minimum of 2 °C, since ground frost comes before air frost. Common practice, no
 * source.
 */
export const TENDER_SCREEN_CELSIUS = 2;

export interface FrostDates {
  /** What the days rest on: so many years of minima, or what the grower said. */
  readonly from: { readonly years: number; readonly thresholdCelsius: number } | 'stated';
  readonly half: FrostHalf;
  /** After it (in spring; before it in autumn) a frost comes in one year of two; null where frost is rarer than that. */
  readonly evenChance: MonthDay | null;
  /** Likewise one year in ten. */
  readonly oneInTen: MonthDay | null;
}

/**
 * Days at two risks from the day that a grower gives as the usual last (first) frost: it is read as the one after which
 * a frost comes in one year of two, and years are taken to spread about it normally with 12 days, so that the risk is one in
 * ten 16 days later (earlier in autumn). Judgement, and the same spread that a short record is drawn towards.
 */
export function statedFrostDates(usual: MonthDay, half: FrostHalf, hemisphere: Hemisphere): FrostDates {
  const season = { half, hemisphere };
  const day = seasonDay(season, asDay(`2001-${usual === '02-29' ? '02-28' : usual}`));
  const [even, tenth] = OFFERED_RISKS;
  const later = Math.ceil(USUAL_SPREAD_DAYS * (normalQuantile(1 - tenth) - normalQuantile(1 - even)));
  return {
    from: 'stated',
    half,
    evenChance: monthDayOf(season, day),
    oneInTen: monthDayOf(season, half === 'spring' ? day + later : day - later),
  };
}

/** Days at two risks from daily minima; null where fewer than two years had any frost. `tender` growth is advised on by 2 °C. */
export function recordedFrostDates(
  minima: readonly DailyMinimum[],
  { half, hemisphere, tender }: { half: FrostHalf; hemisphere: Hemisphere; tender: boolean },
): FrostDates | null {
  const thresholdCelsius = tender ? TENDER_SCREEN_CELSIUS : 0;
  const outlook = frostOutlook(
    minima,
    { half, hemisphere },
    { thresholdCelsius, orBelow: true },
    OFFERED_RISKS,
  );
  if ('refused' in outlook) return null;
  const [even, tenth] = outlook.at;
  return {
    from: { years: outlook.years.length, thresholdCelsius },
    half,
    evenChance: even?.day ?? null,
    oneInTen: tenth?.day ?? null,
  };
}

/** A plant put out needs so many days before frost to take hold. Common practice, no source. */
const DAYS_TO_TAKE_HOLD = 28;
/** Frost-free days after the last frost where no first frost is known. Judgement. */
const SHORT_SUMMER_DAYS = 120;

/**
 * The first day, `ready` or later, on which a plant that frost harms may be put out: after the last frost and long enough
 * before the first. Both are days of any year; without a last frost there is none to wait for.
 */
export function plantOutDay(
  ready: Day,
  { last, first }: { readonly last: MonthDay | null; readonly first: MonthDay | null },
): Day {
  if (last === null) return ready;
  let safe = onOrAfter(last, addDays(ready, -366));
  for (;;) {
    if (ready <= lastPlantOutDay(safe, first)) return latest(ready, safe);
    safe = onOrAfter(last, addDays(safe, 1));
  }
}

/** The last day on which a plant put out on `from` or later still takes hold before the first frost. */
export function lastPlantOutDay(from: Day, first: MonthDay | null): Day {
  const end = first === null ? addDays(from, SHORT_SUMMER_DAYS) : onOrAfter(first, from);
  return addDays(end, -DAYS_TO_TAKE_HOLD);
}

/** The first such day of a year that is not before `day`; 29 February is taken as the 28th. */
export function onOrAfter(monthDay: MonthDay, day: Day): Day {
  const common = monthDay === '02-29' ? '02-28' : monthDay;
  const sameYear = asDay(`${year(day)}-${common}`);
  return sameYear >= day ? sameYear : asDay(`${year(day) + 1}-${common}`);
}
