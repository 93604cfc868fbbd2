/** What a grower wants to know of a live batch: when it will be ready, whether at all, when to look, when to stop. */
import { atLeast, chanceOfAtLeast } from './binomial.js';
import { smallest } from './smallest.js';
import { LEAST_DAYS_BETWEEN_LOOKS, nextCheckDay } from './next-check.js';
import { normalBetween } from './normal.js';
import type { Learnt } from './rooting-learning.js';
import { chanceBy, posteriorOf } from './rooting-posterior.js';
import type { RootingPosterior } from './rooting-posterior.js';
import { evidenceOf, halfOf } from './rooting-record.js';
import type { RootingRecord } from './rooting-record.js';
import { plainClock } from './thermal-time.js';
import type { RootingClock } from './thermal-time.js';

/** Below this chance of even one more root, waiting is over. Judgement, not published. */
export const GIVE_UP_BELOW = 0.15;
/** Below this chance ever to be ready, the next look is the one that settles whether to go on waiting. Judgement. */
const UNLIKELY = 0.3;
const NEAR_ENOUGH = 0.005;
const FARTHEST_DAY = 2000;

/** Days after striking with decimals. */
export interface DayQuantiles {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

export interface RootingForecast {
  /** `giveUp`: not ready, and even one more root is unlikely; what has rooted is potted on all the same. */
  readonly state: 'rooting' | 'ready' | 'giveUp';
  /** How many rooted cuttings make the batch ready. */
  readonly need: number;
  readonly rooted: number;
  /** When it gets ready given that it ever does, or did; null where it can't any more. */
  readonly ready: DayQuantiles | null;
  /** Chance that it ever gets ready; 1 once it is. */
  readonly everChance: number;
  /** Chance that at least one more cutting roots. */
  readonly oneMoreChance: number;
  /** Chance that it is ready by a day after striking, not conditional. */
  readonly readyChanceBy: (day: number) => number;
  /** First day after striking by which the chance is within 0.005 of `everChance`. */
  readonly settledOn: number;
  /** Day after striking on which to look next; null when ready or given up. */
  readonly nextCheck: number | null;
}

export interface ForecastQuestion {
  readonly batch: RootingRecord;
  /** Today in days after striking; the next check never lies before it. */
  readonly today: number;
  /** Rooted cuttings that make the batch ready; half of those struck unless said otherwise. */
  readonly need?: number;
  readonly clock?: RootingClock;
}

/** Forecast of one batch from what earlier ones taught. Checks, today and answers are days of the calendar, whatever the clock. */
export function forecast(learnt: Learnt, question: ForecastQuestion): RootingForecast {
  const { batch, today, clock = plainClock, need = halfOf(batch.struck) } = question;
  const evidence = evidenceOf({
    ...batch,
    checks: batch.checks.map(({ day, rooted }) => ({ day: clock.thermal(day), rooted })),
  });
  const posterior = posteriorOf(learnt, evidence, batch.struck);
  const oneMoreChance = evidence.open === 0 ? 0 : chanceBy(posterior, atLeast(1, evidence.open))(Infinity);
  const known = { need, rooted: evidence.rooted, oneMoreChance };
  if (evidence.rooted >= need) return { ...known, ...readyAlready(posterior, need, clock) };

  const chance = chanceBy(posterior, atLeast(need - evidence.rooted, evidence.open));
  const everChance = chance(Infinity);
  const lastLook = batch.checks.at(-1)?.day ?? 0;
  const curve = chanceCurve((day) => chance(clock.thermal(day)), lastLook, everChance);
  const givenUp = oneMoreChance < GIVE_UP_BELOW;
  const readyBy = (day: number) => Math.min(1, curve.at(day) / everChance);
  const earliest = Math.max(batch.checks.length > 0 ? lastLook + LEAST_DAYS_BETWEEN_LOOKS : 1, today);
  return {
    ...known,
    state: givenUp ? 'giveUp' : 'rooting',
    ready:
      everChance > 0
        ? { p10: curve.quantile(0.1), p50: curve.quantile(0.5), p90: curve.quantile(0.9) }
        : null,
    everChance,
    readyChanceBy: curve.at,
    settledOn: curve.last,
    nextCheck: givenUp
      ? null
      : everChance < UNLIKELY
        ? settlingDay(posterior, clock, { oneMoreChance, earliest })
        : nextCheckDay({ readyBy, everChance, lookedOn: lastLook, earliest, latest: curve.last }),
  };
}

/** The first day on which a look that finds no new root ends the waiting. */
function settlingDay(
  posterior: RootingPosterior,
  clock: RootingClock,
  { oneMoreChance, earliest }: { readonly oneMoreChance: number; readonly earliest: number },
): number {
  const chance = chanceBy(posterior, atLeast(1, posterior.evidence.open));
  const stillToCome = (day: number): number => {
    const by = chance(clock.thermal(day));
    return (oneMoreChance - by) / (1 - by);
  };
  return smallest(earliest, FARTHEST_DAY, (day) => stillToCome(day) < GIVE_UP_BELOW) ?? earliest;
}

interface ChanceCurve {
  readonly at: (day: number) => number;
  readonly quantile: (p: number) => number;
  readonly last: number;
}

/** A distribution function worked out once, a day at a time at first and in longer strides as it flattens. */
function chanceCurve(chance: (day: number) => number, from: number, ever: number): ChanceCurve {
  const days = [from];
  const chances = [0];
  while (ever - chances.at(-1)! > Math.min(NEAR_ENOUGH, ever * 0.01) * 0.9 && days.at(-1)! < FARTHEST_DAY) {
    const day = days.at(-1)! + Math.max(1, Math.floor((days.at(-1)! - from) / 30));
    days.push(day);
    chances.push(Math.max(chances.at(-1)!, chance(day)));
  }
  const last = days.at(-1)!;
  return {
    last,
    at(day) {
      if (day <= from) return 0;
      if (day >= last) return day === last ? chances.at(-1)! : chance(day);
      const next = days.findIndex((each) => each > day);
      const share = (day - days[next - 1]!) / (days[next]! - days[next - 1]!);
      return chances[next - 1]! + share * (chances[next]! - chances[next - 1]!);
    },
    quantile(p) {
      const target = p * ever;
      const next = chances.findIndex((each) => each >= target);
      if (next < 1) return last;
      const share = (target - chances[next - 1]!) / (chances[next]! - chances[next - 1]!);
      return days[next - 1]! + share * (days[next]! - days[next - 1]!);
    },
  };
}

/** Quantiles within the interval in which the batch got ready: the h-th of the d cuttings that rooted in it. */
function readyAlready(
  posterior: RootingPosterior,
  need: number,
  clock: RootingClock,
): Omit<RootingForecast, 'need' | 'rooted' | 'oneMoreChance'> {
  let before = 0;
  const interval = posterior.evidence.intervals.find(({ rooted }) => {
    before += rooted;
    return before >= need;
  })!;
  const inIt = interval.rooted;
  const needed = need - (before - inIt);
  const from = clock.day(interval.from);
  const to = clock.day(interval.to);
  const steps = 60;
  const chances = Array.from({ length: steps + 1 }, (_, i) =>
    i === steps
      ? 1
      : chanceWithin(posterior, interval, clock.thermal(from + ((to - from) * i) / steps), needed),
  );
  const quantile = (p: number): number => {
    const next = Math.max(
      1,
      chances.findIndex((each) => each >= p),
    );
    const share = (p - chances[next - 1]!) / (chances[next]! - chances[next - 1]!);
    return from + ((to - from) * (next - 1 + share)) / steps;
  };
  return {
    state: 'ready',
    ready: { p10: quantile(0.1), p50: quantile(0.5), p90: quantile(0.9) },
    everChance: 1,
    readyChanceBy: (day) => {
      if (day >= to) return 1;
      return day <= from ? 0 : chanceWithin(posterior, interval, clock.thermal(day), needed);
    },
    settledOn: to,
    nextCheck: null,
  };
}

function chanceWithin(
  { cells }: RootingPosterior,
  { from, to, rooted }: { readonly from: number; readonly to: number; readonly rooted: number },
  day: number,
  needed: number,
): number {
  let chance = 0;
  for (const { logMedian, within, weights } of cells) {
    const z = (each: number) => (Math.log(each) - logMedian) / within;
    const whole = normalBetween(z(from), z(to));
    const share = whole > 0 ? normalBetween(z(from), z(day)) / whole : 1;
    const weight = weights.reduce((sum, each) => sum + each, 0);
    chance += weight * chanceOfAtLeast(needed, rooted, Math.min(1, share));
  }
  return chance;
}
