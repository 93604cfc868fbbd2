/** Comparing methods, being on track, materials, pooling, and what common practice says of a tender perennial. */
import { describe, expect, it } from 'vitest';
import { compareRates } from '../../src/horticulture/comparison.js';
import { cropNamed } from '../../src/horticulture/crops.js';
import { strikePrior, rootingDays } from '../../src/horticulture/cutting-season.js';
import { earlierSpan } from '../../src/horticulture/earlier-span.js';
import { materialsFor } from '../../src/horticulture/materials.js';
import { onTrack } from '../../src/horticulture/on-track.js';
import { poolFor, type RecordedBatch } from '../../src/horticulture/pooling.js';
import { forecast } from '../../src/horticulture/rooting-forecast.js';
import { expectedStrikeRate, learn } from '../../src/horticulture/rooting-learning.js';
import { priorFromRange } from '../../src/horticulture/rooting-prior.js';
import { halfOfExpected } from '../../src/horticulture/rooting-record.js';
import { chanceOfRounds, timingOf } from '../../src/horticulture/rounds.js';
import { USUAL_RESHOOT_DAYS } from '../../src/horticulture/schedule.js';

const learnt = learn(priorFromRange([10, 21]), []);

describe('common practice, without a source: basal cuttings of a tender perennial in a heated, covered propagator', () => {
  const dahlia = cropNamed('dahlia')!;
  const own = learn(priorFromRange(rootingDays(dahlia, { cutting: 'basal' }), strikePrior(dahlia)), []);

  it('root in about 10 to 14 days', () => {
    const { p50 } = forecast(own, { batch: { struck: 10, checks: [] }, today: 0 }).ready!;
    expect(p50).toBeGreaterThan(10);
    expect(p50).toBeLessThan(14);
  });

  it('are ready to plant out six to seven weeks after striking', () => {
    const { p50 } = forecast(own, { batch: { struck: 10, checks: [] }, today: 0 }).ready!;
    const weeks = (p50 + dahlia.growOnDays + dahlia.hardenOffDays) / 7;
    expect(weeks).toBeGreaterThan(6);
    expect(weeks).toBeLessThan(7.1);
  });

  it('come again from a cut stock plant in about two weeks', () => {
    expect(USUAL_RESHOOT_DAYS).toBe(14);
  });
});

describe('advice on rooted cuttings', () => {
  it('asks for half of those expected to root, at least one', () => {
    expect([halfOfExpected(10, 0.25), halfOfExpected(10, 0.75), halfOfExpected(2, 0.25)]).toEqual([2, 4, 1]);
    expect(expectedStrikeRate(learnt)).toBeCloseTo(0.75, 2);
  });

  it('never calls a batch given up that has enough roots', () => {
    const batch = { struck: 10, checks: [{ day: 60, rooted: 2 }] };
    expect(forecast(learnt, { batch, today: 60, need: 2 }).state).toBe('ready');
  });
});

describe('which does better', () => {
  const of = (...rooted: number[]) => rooted.map((succeeded) => ({ tried: 10, succeeded }));
  const prior = { a: 6, b: 2 };

  it('is said when the records bear it', () => {
    expect(compareRates(prior, of(9, 9, 10, 9), of(3, 4, 2, 3)).better).toBe('first');
    expect(compareRates(prior, of(3, 4, 2, 3), of(9, 9, 10, 9)).better).toBe('second');
  });

  it('is not said from two batches, nor from a small difference', () => {
    expect(compareRates(prior, of(10, 10), of(1, 1)).better).toBeNull();
    expect(compareRates(prior, of(8, 7, 8, 7), of(7, 7, 8, 7)).better).toBeNull();
    expect(compareRates(prior, of(8, 7, 8), of(8, 7, 8)).firstHigher).toBeCloseTo(0.5, 6);
  });
});

describe('on track', () => {
  it('agrees with a round struck today where nothing has been seen', () => {
    const rate = { a: 6, b: 2 };
    for (const rootedByDay of [16, 21, 60]) {
      const { p } = onTrack(6, [{ learnt, record: { struck: 12, checks: [] }, rootedByDay }]);
      const round = chanceOfRounds([{ take: 12, daysLeft: rootedByDay }], {
        want: 6,
        rate,
        timing: timingOf(learnt),
      });
      expect(Math.abs(p - round)).toBeLessThan(0.01);
    }
  });

  it('counts what has rooted and not what is gone, and rises with each batch', () => {
    const rooted = { learnt, record: { struck: 8, checks: [{ day: 20, rooted: 8 }] }, rootedByDay: 30 };
    expect(onTrack(8, [rooted]).p).toBeCloseTo(1, 9);
    expect(onTrack(8, [{ ...rooted, gone: 1 }]).p).toBe(0);
    const more = onTrack(8, [
      { ...rooted, gone: 1 },
      { learnt, record: { struck: 4, checks: [] }, rootedByDay: 30 },
    ]);
    expect(more.p).toBeGreaterThan(0.9);
    expect(more.plants.p10).toBeLessThanOrEqual(more.plants.p50);
  });

  it('allows for losses after rooting', () => {
    const batches = [{ learnt, record: { struck: 10, checks: [{ day: 20, rooted: 10 }] }, rootedByDay: 30 }];
    const { p, plants } = onTrack(10, batches, { a: 18, b: 2 });
    expect(p).toBeGreaterThan(0.3);
    expect(p).toBeLessThan(0.6);
    expect(plants.p50).toBeLessThan(10);
  });
});

describe('pooling', () => {
  const bench = { crop: 'dahlia', heated: true, place: 'propagator' };
  const record = (
    day: number,
    conditions: RecordedBatch['conditions'],
    usualDays: readonly [number, number],
  ) => ({
    struck: 8,
    checks: [
      { day: day - 4, rooted: 0 },
      { day, rooted: 6 },
    ],
    conditions,
    usualDays,
  });

  it('takes batches under the same conditions whole, others in part and in their own days', () => {
    const sill = { crop: 'dahlia', heated: false, place: 'windowsill' };
    const pool = poolFor(
      bench,
      [10, 14],
      [record(12, bench, [10, 14]), record(24, sill, [20, 28]), record(9, { crop: 'fuchsia' }, [10, 14])],
    );
    expect(pool.history.map(({ weight, checks }) => [weight, checks.at(-1)!.day])).toEqual([
      [1, 12],
      [expect.closeTo(0.24, 9), expect.closeTo(12, 9)],
    ]);
    expect(pool).toMatchObject({ others: 1, differences: ['heated', 'place'] });
    expect(pool.alike).toHaveLength(1);
  });

  it('says what most earlier batches took, the odd one left out', () => {
    const days = [11, 12, 13, 13, 14, 14, 15, 16, 40];
    const history = days.map((day) => ({
      struck: 8,
      checks: [
        { day: day - 1, rooted: 0 },
        { day: day + 1, rooted: 5 },
      ],
    }));
    expect(earlierSpan(history)).toEqual({ batches: 9, within: 7, from: 12, to: 16 });
    expect(earlierSpan([{ struck: 8, checks: [{ day: 30, rooted: 1 }] }])).toBeNull();
  });
});

describe('materials', () => {
  it('fill whole pots and trays, with a little over', () => {
    expect(
      materialsFor({ cuttings: 13, strikeIn: { size: '1l', perPot: 5 }, plants: 6, potOnIn: '2l' }),
    ).toEqual({ strikePots: 3, potOnPots: 6, striking: 4, pottingOn: 14 });
    expect(
      materialsFor({ cuttings: 30, strikeIn: { size: '24cell', perPot: 1 }, plants: 0, potOnIn: '9cm' })
        .strikePots,
    ).toBe(2);
  });
});
