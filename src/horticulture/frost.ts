/** The day after which a frost still comes with no more than a given risk. */
import { type FrostRecord, frostRecord, type DailyMinimum, type FrostRule } from './frost-record.js';
import { type FrostSeason, type MonthDay, monthDayOf, seasonDay } from './frost-season.js';
import { predictiveQuantile } from './student-t.js';

/** Fewer frost years than this say too little about their spread, which is then drawn towards `USUAL_SPREAD_DAYS`. */
const FEW_YEARS = 8;
/** Common spread of last and first frosts from year to year, and what it weighs. Judgement, not published. */
export const USUAL_SPREAD_DAYS = 12;
const USUAL_SPREAD_DEGREES = 8;
const FEWEST_FROST_YEARS = 2;

export interface FrostSpread {
  /** Share of years that have any frost in the season. */
  readonly share: number;
  /** Frost years behind it. */
  readonly n: number;
  /** Of the frost's day, counted from the season's first. */
  readonly mean: number;
  readonly sd: number;
  readonly degreesOfFreedom: number;
}

export interface FrostRisk {
  readonly risk: number;
  /** Null where so few years have any frost that the risk is never higher. */
  readonly day: MonthDay | null;
}

export interface FrostOutlook extends FrostRecord {
  readonly at: readonly FrostRisk[];
}

export interface TooFewFrostYears extends FrostRecord {
  readonly refused: 'tooFewFrostYears';
  readonly frostYears: number;
}

/**
 * Reads daily minima and answers each year's last frost (spring) or first (autumn), and for each risk (between 0 and 1)
 * the first day after which, or the last before which, a frost comes with at most that chance: the share of years with a frost × the
 * predictive Student t of its day. The mixture with frost-free years is Thom's (Monthly Weather Review 87, 1959: 136–144).
 */
export function frostOutlook(
  minima: readonly DailyMinimum[],
  season: FrostSeason,
  rule: FrostRule,
  risks: readonly number[],
): FrostOutlook | TooFewFrostYears {
  const record = frostRecord(minima, season, rule);
  const spread = frostSpread(record, season);
  if (spread === null) {
    const frostYears = record.years.filter(({ date }) => date !== null).length;
    return { ...record, refused: 'tooFewFrostYears', frostYears };
  }
  return { ...record, at: risks.map((risk) => ({ risk, day: frostDay(spread, season, risk) })) };
}

/** How the day of the frost spreads over the years; null where fewer than two years had any. */
export function frostSpread({ years }: FrostRecord, season: FrostSeason): FrostSpread | null {
  const days = years.flatMap(({ date }) => (date === null ? [] : [seasonDay(season, date)]));
  const n = days.length;
  if (n < FEWEST_FROST_YEARS) return null;
  const mean = days.reduce((sum, day) => sum + day, 0) / n;
  const squares = days.reduce((sum, day) => sum + (day - mean) ** 2, 0);
  const share = n / years.length;
  if (n >= FEW_YEARS) return { share, n, mean, sd: Math.sqrt(squares / (n - 1)), degreesOfFreedom: n - 1 };
  const degreesOfFreedom = n - 1 + USUAL_SPREAD_DEGREES;
  const drawn = (squares + USUAL_SPREAD_DEGREES * USUAL_SPREAD_DAYS ** 2) / degreesOfFreedom;
  return { share, n, mean, sd: Math.sqrt(drawn), degreesOfFreedom };
}

/** The first whole day after which (spring), or the last before which (autumn), the chance of a frost is at most `risk`. */
export function frostDay(spread: FrostSpread, season: FrostSeason, risk: number): MonthDay | null {
  if (spread.share <= risk) return null;
  const within = risk / spread.share;
  return season.half === 'spring'
    ? monthDayOf(season, Math.ceil(predictiveQuantile(1 - within, spread)))
    : monthDayOf(season, Math.floor(predictiveQuantile(within, spread)));
}
