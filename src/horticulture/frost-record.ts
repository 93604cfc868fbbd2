/** From daily minima to each year's last frost of spring or first of autumn. */
import { addDays, type Day } from '../calendar/day.js';
import { type FrostSeason, seasonDay, seasonSpan, seasonYearOf } from './frost-season.js';

export interface DailyMinimum {
  readonly date: Day;
  readonly celsius: number;
}

/** What counts as a frost. */
export interface FrostRule {
  readonly thresholdCelsius: number;
  /** Whether the threshold itself counts (`≤`, as the US freeze normals count) or only what lies below it (`<`). */
  readonly orBelow: boolean;
}

export interface FrostYear {
  readonly year: number;
  /** The last frost of spring or the first of autumn; null where the season had none. */
  readonly date: Day | null;
}

export interface FrostRecord {
  /** Ascending; those that dropped out are not among them. */
  readonly years: readonly FrostYear[];
  /** Years whose gaps may hide the frost that is asked for. */
  readonly dropped: readonly number[];
}

interface SeasonMinima {
  readonly year: number;
  readonly recorded: ReadonlySet<Day>;
  readonly frosts: readonly Day[];
}

/**
 * Reads each season's frost. A day given twice counts with its lower minimum. A year drops out where a day without a
 * minimum, between its last recorded frost and the season's end (in autumn between the season's start and its first),
 * lies within the days of the season on which other years had frost: the frost that is asked for may hide there.
 */
export function frostRecord(
  minima: readonly DailyMinimum[],
  season: FrostSeason,
  rule: FrostRule,
): FrostRecord {
  const seasons = seasonsOf(minima, season, rule);
  const years: FrostYear[] = [];
  const dropped: number[] = [];
  for (const each of seasons) {
    const date = season.half === 'spring' ? each.frosts.at(-1) : each.frosts[0];
    const window = frostWindow(
      seasons.filter((other) => other !== each),
      season,
    );
    if (window !== null && mayHideFrost(each, date ?? null, season, window)) dropped.push(each.year);
    else years.push({ year: each.year, date: date ?? null });
  }
  return { years, dropped };
}

function seasonsOf(
  minima: readonly DailyMinimum[],
  season: FrostSeason,
  { thresholdCelsius, orBelow }: FrostRule,
): SeasonMinima[] {
  const lowest = new Map<Day, number>();
  for (const { date, celsius } of minima)
    lowest.set(date, Math.min(celsius, lowest.get(date) ?? Number.POSITIVE_INFINITY));
  const byYear = new Map<number, { recorded: Set<Day>; frosts: Day[] }>();
  for (const [date, celsius] of [...lowest].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const year = seasonYearOf(season, date);
    if (year === null) continue;
    const seen = byYear.get(year) ?? { recorded: new Set<Day>(), frosts: [] };
    byYear.set(year, seen);
    seen.recorded.add(date);
    if (celsius < thresholdCelsius || (orBelow && celsius === thresholdCelsius)) seen.frosts.push(date);
  }
  return [...byYear].map(([year, seen]) => ({ year, ...seen }));
}

/** First and last day of the season on which any of these years had frost; null where none had. */
function frostWindow(years: readonly SeasonMinima[], season: FrostSeason): [number, number] | null {
  const first = years.flatMap(({ frosts }) => frosts.slice(0, 1)).map((day) => seasonDay(season, day));
  const last = years.flatMap(({ frosts }) => frosts.slice(-1)).map((day) => seasonDay(season, day));
  return first.length === 0 ? null : [Math.min(...first), Math.max(...last)];
}

function mayHideFrost(
  { year, recorded }: SeasonMinima,
  frost: Day | null,
  season: FrostSeason,
  [from, to]: [number, number],
): boolean {
  const span = seasonSpan(season, year);
  const spring = season.half === 'spring';
  const start = spring && frost !== null ? addDays(frost, 1) : span.from;
  const end = !spring && frost !== null ? addDays(frost, -1) : span.to;
  for (let day = start; day <= end; day = addDays(day, 1)) {
    const number = seasonDay(season, day);
    if (number >= from && number <= to && !recorded.has(day)) return true;
  }
  return false;
}
