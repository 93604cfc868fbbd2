/** How the forecast fares through whole batches of made-up growers, against the aims set for it. */
import { describe, expect, it } from 'vitest';
import { cuttingsToTake } from '../../src/horticulture/cuttings-to-take.js';
import { forecast } from '../../src/horticulture/rooting-forecast.js';
import { learn } from '../../src/horticulture/rooting-learning.js';
import { priorFromRange } from '../../src/horticulture/rooting-prior.js';
import type { RootCheck } from '../../src/horticulture/rooting-record.js';
import { learnRate, nextBatchRate } from '../../src/horticulture/strike-rate.js';
import { drawing, growerAt, lookAt, pastRecord, type Generator, type TrueBatch } from './growers.js';

const usual: Generator = {
  medianDays: 14,
  betweenGrowers: 0.25,
  betweenBatches: 0.13,
  withinBatch: 0.22,
  strikeRate: [6, 2],
  cuttings: [6, 14],
};
const EARLIER = 10;
/** Steps of the golden section: growers spread evenly over speed and strike rate, so that few will do. */
const GOLDEN = 0.618034;

interface Course {
  readonly looks: number;
  /** From the day it was ready to the look that found it; null where it was not found. */
  readonly waitDays: number | null;
  /** Whether the first forecast's 80 % interval held the day; null where that day never came. */
  readonly held: boolean | null;
}

/** Strikes, asks when to look, looks that day, and so on until ready or given up. */
function course(learnt: ReturnType<typeof learn>, batch: TrueBatch): Course {
  const checks: RootCheck[] = [];
  let seen = forecast(learnt, { batch: { struck: batch.struck, checks }, today: 0 });
  const readyOn = batch.rootDays[seen.need - 1]!;
  const held = readyOn === Infinity ? null : readyOn >= seen.ready!.p10 && readyOn <= seen.ready!.p90;
  while (seen.nextCheck !== null) {
    checks.push(lookAt(batch, seen.nextCheck));
    seen = forecast(learnt, { batch: { struck: batch.struck, checks }, today: seen.nextCheck });
  }
  return {
    looks: checks.length,
    waitDays: seen.state === 'ready' ? checks.at(-1)!.day - readyOn : null,
    held,
  };
}

function season(generator: Generator, growers: number, seed: number): Course[] {
  const draw = drawing(seed);
  return Array.from({ length: growers }, (_, i) => {
    const grower = growerAt(generator, (i + 0.5) / growers, ((i + 0.5) * GOLDEN) % 1, draw);
    const history = Array.from({ length: EARLIER }, (_each, h) =>
      h % 2 === 0 ? pastRecord(grower.batch(), 7, 3) : pastRecord(grower.batch(), 14, 4),
    );
    const learnt = learn(priorFromRange([10, 20]), history);
    return Array.from({ length: 4 }, () => course(learnt, grower.batch()));
  }).flat();
}

interface Estimate {
  readonly low: number;
  readonly high: number;
}

/** The mean of a sample give or take two standard errors: a bound is missed only when the sample shows it. */
function meanOf(values: readonly number[]): Estimate {
  const mean = values.reduce((sum, each) => sum + each, 0) / values.length;
  const variance = values.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (values.length - 1);
  const error = 2 * Math.sqrt(variance / values.length);
  return { low: mean - error, high: mean + error };
}

describe('in simulation', () => {
  it(
    'a grower with ten earlier batches looks little, waits little, and gets honest intervals',
    { timeout: 180_000 },
    () => {
      const courses = season(usual, 40, 1);
      const waits = courses.flatMap(({ waitDays }) => waitDays ?? []);
      const held = courses.flatMap((each) => each.held ?? []);
      expect(meanOf(courses.map(({ looks }) => looks)).low).toBeLessThanOrEqual(2);
      expect(meanOf(waits).low).toBeLessThanOrEqual(1.65);
      expect(meanOf(waits.map((wait) => (wait > 3 ? 1 : 0))).low).toBeLessThanOrEqual(0.12);
      expect(meanOf(held.map(Number)).high).toBeGreaterThanOrEqual(0.76);
      expect(meanOf(held.map(Number)).low).toBeLessThanOrEqual(0.86);
    },
  );

  it.each([
    ['easy', [6, 2], 6],
    ['harder', [3, 3], 6],
    ['for many plants', [6, 2], 40],
  ] as const)(
    'taking as many cuttings as advised gives enough about nine times in ten (%s)',
    (_, rate, want) => {
      const draw = drawing(2);
      const [a, b] = rate;
      let enough = 0;
      const seasons = 3000;
      for (let i = 0; i < seasons; i++) {
        const grower = growerAt({ ...usual, strikeRate: rate }, 0.5, draw(), draw);
        const records = Array.from({ length: EARLIER }, () => {
          const batch = grower.batch();
          return { tried: batch.struck, succeeded: lookAt(batch, 1000).rooted };
        });
        const next = nextBatchRate(learnRate({ a, b }, records));
        const { take } = cuttingsToTake({ want, confidence: 0.9, rate: next })!;
        if (lookAt(grower.batch(take), 1000).rooted >= want) enough++;
      }
      expect(Math.abs(enough / seasons - 0.9)).toBeLessThanOrEqual(0.03);
    },
  );
});
