/** Cuttings to take, against R (extraDistr, VGAM); the source stands in each fixture. */
import { describe, expect, it } from 'vitest';
import answers from '../../fixtures/statistics/beta-binomial.json' with { type: 'json' };
import taking from '../../fixtures/statistics/taking.json' with { type: 'json' };
import { betaBinomial, betaBinomialQuantile, chanceOfEnough } from '../../src/horticulture/beta-binomial.js';
import { chanceOfKept, cuttingsToTake } from '../../src/horticulture/cuttings-to-take.js';
import { learnRate, meanRate, nextBatchRate } from '../../src/horticulture/strike-rate.js';

describe('the beta-binomial distribution', () => {
  it.each(answers.pmf_cdf)('gives R’s chance of $k of $n at Beta($a, $b)', ({ a, b, n, k, pmf, cdf }) => {
    const chances = betaBinomial(n, { a, b });
    expect(chances[k]).toBeCloseTo(pmf, 12);
    expect(chances.slice(0, k + 1).reduce((sum, each) => sum + each, 0)).toBeCloseTo(cdf, 11);
  });

  it.each(answers.quantiles)('gives R’s $q quantile of $n at Beta($a, $b)', ({ a, b, n, q, k }) => {
    expect(betaBinomialQuantile(q, n, { a, b })).toBe(k);
  });

  it.each(answers.upper_tail)('gives R’s chance of $N or more of $n at Beta($a, $b)', ({ a, b, N, n, P }) => {
    expect(chanceOfEnough(N, n, { a, b })[n]).toBeCloseTo(P, 11);
  });
});

describe('how many cuttings to take', () => {
  it.each(answers.smallest_n)('is $n for $N at $gamma and Beta($a, $b)', (each) => {
    const { a, b, N, gamma, n, P_at_n, P_at_n_minus_1 } = each;
    const taken = cuttingsToTake({ want: N, confidence: gamma, rate: { a, b } });
    expect(taken?.take).toBe(n);
    expect(taken?.p).toBeCloseTo(P_at_n, 10);
    expect(chanceOfKept(n - 1, N, { a, b })).toBeCloseTo(P_at_n_minus_1 ?? 0, 10);
  });

  it.each(taking.two_stage)('counts rooting and survival together: $n for $N', (each) => {
    const { N, a, b, c, d, n, P, P_minus_1 } = each;
    const rate = { a, b };
    const survival = { a: c, b: d };
    expect(cuttingsToTake({ want: N, confidence: 0.9, rate, survival })?.take).toBe(n);
    expect(chanceOfKept(n, N, rate, survival)).toBeCloseTo(P, 10);
    expect(chanceOfKept(n - 1, N, rate, survival)).toBeCloseTo(P_minus_1, 10);
  });

  it.each(taking.discounted_update)('discounts past batches: $prior after $records', (each) => {
    const { prior, s, records, result } = each;
    const [a = 0, b = 0] = prior;
    const learnt = learnRate(
      { a, b },
      records.map(([tried = 0, succeeded = 0]) => ({ tried, succeeded })),
      s,
    );
    const rate = nextBatchRate(learnt, s);
    expect([learnt.a, learnt.b, meanRate(learnt)]).toEqual([
      expect.closeTo(result.a_post, 10),
      expect.closeTo(result.b_post, 10),
      expect.closeTo(result.mean, 10),
    ]);
    expect(rate.a).toBeCloseTo(result.pred_a, 10);
    expect(rate.b).toBeCloseTo(result.pred_b, 10);
    expect(cuttingsToTake({ want: 6, confidence: 0.9, rate })?.take).toBe(result.n_for_6);
    expect(cuttingsToTake({ want: 12, confidence: 0.9, rate })?.take).toBe(result.n_for_12);
  });

  it('takes none for none, and finds no number where more than 5,000 are needed', () => {
    const rate = { a: 6, b: 2 };
    expect(cuttingsToTake({ want: 0, confidence: 0.9, rate })).toEqual({ take: 0, p: 1 });
    expect(cuttingsToTake({ want: 4000, confidence: 0.9, rate })).toBeNull();
    expect(cuttingsToTake({ want: 2000, confidence: 0.9, rate: { a: 0.5, b: 5 } })).toBeNull();
  });
});
