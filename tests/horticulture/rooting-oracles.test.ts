/** The rooting model against answers worked out in R; their source stands in each fixture. */
import { describe, expect, it } from 'vitest';
import hierarchical from '../../fixtures/statistics/hierarchical.json' with { type: 'json' };
import posterior from '../../fixtures/statistics/posterior.json' with { type: 'json' };
import { forecast } from '../../src/horticulture/rooting-forecast.js';
import { learn } from '../../src/horticulture/rooting-learning.js';
import type { RootingPrior } from '../../src/horticulture/rooting-prior.js';
import type { RootCheck, RootingRecord } from '../../src/horticulture/rooting-record.js';

const PROBABILITY = 0.005;
const DAYS = 0.1;

function checksOf(days: number | readonly number[], counts: number | readonly number[]): RootCheck[] {
  let rooted = 0;
  return [days].flat().map((day, i) => ({ day, rooted: (rooted += [counts].flat()[i]!) }));
}

describe('one batch with a known prior (R grid, no spread between batches, one strike rate)', () => {
  for (const [name, each] of Object.entries(posterior.cases)) {
    const prior: RootingPrior = {
      logMedian: { mean: each.prior.mu0, sd: each.prior.t0, tails: 'normal' },
      logWithin: { mean: each.prior.log_sigma0, sd: each.prior.s_log_sigma },
      logBetween: { mean: -Infinity, sd: 0 },
      strikeRate: [each.prior.a, each.prior.b],
      rateConcentration: Infinity,
    };
    const seen = forecast(learn(prior, []), {
      batch: { struck: each.n, checks: checksOf(each.data.R, each.data.k) },
      today: 0,
    });

    it(`${name}: needs half of those struck`, () => {
      expect(seen.need).toBe(each.k_star);
      expect(seen.state).toBe(each.P_ready_by === null ? 'ready' : 'rooting');
    });

    if (each.P_ready_by === null) continue;
    it(`${name}: the chance to be ready by each day agrees`, () => {
      for (const [day, chance] of Object.entries(each.P_ready_by))
        expect(Math.abs(seen.readyChanceBy(Number(day.slice(3))) - chance), day).toBeLessThan(PROBABILITY);
    });
  }
});

describe('a grower with three earlier batches (R grid with a known spread between batches)', () => {
  const prior: RootingPrior = {
    logMedian: { mean: Math.log(Math.sqrt(210)), sd: 0.25, tails: 'normal' },
    logWithin: { mean: Math.log(0.22), sd: 0.35 },
    logBetween: { mean: Math.log(0.13), sd: 0 },
    strikeRate: [6, 2],
    rateConcentration: 20,
  };
  const history = hierarchical.batches.map(({ n, R, k }) => ({ struck: n, checks: checksOf(R, k) }));
  const unchecked: RootingRecord = { struck: 8, checks: [] };
  const cases = [
    { name: 'before any batch', answer: hierarchical.prior_only_n8, history: [], batch: unchecked },
    { name: 'after three batches', answer: hierarchical.after3_n8, history, batch: unchecked },
    {
      name: 'after three batches and one root of eight on day 14',
      answer: hierarchical.after3_n8_check_day14_1of8,
      history,
      batch: { struck: 8, checks: [{ day: 14, rooted: 1 }] },
    },
  ];

  for (const { name, answer, history: earlier, batch } of cases) {
    it(`${name}, quantiles and chances agree`, () => {
      const seen = forecast(learn(prior, earlier), { batch, today: 0 });
      expect(Math.abs(seen.ready!.p10 - answer.q10)).toBeLessThan(DAYS);
      expect(Math.abs(seen.ready!.p50 - answer.q50)).toBeLessThan(DAYS);
      expect(Math.abs(seen.ready!.p90 - answer.q90)).toBeLessThan(DAYS);
      expect(Math.abs(seen.everChance - answer.P_ever)).toBeLessThan(PROBABILITY);
      for (const [day, chance] of Object.entries(answer.P_ready_by))
        expect(Math.abs(seen.readyChanceBy(Number(day.slice(3))) - chance), day).toBeLessThan(PROBABILITY);
    });
  }
});
