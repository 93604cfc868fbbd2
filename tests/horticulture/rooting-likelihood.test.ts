/** The parts of the rooting likelihood against published fits and R's survival package; the source stands in each fixture. */
import { describe, expect, it } from 'vitest';
import cure from '../../fixtures/statistics/cure.json' with { type: 'json' };
import distributions from '../../fixtures/statistics/distributions.json' with { type: 'json' };
import readouts from '../../fixtures/statistics/readouts.json' with { type: 'json' };
import years from '../../fixtures/statistics/student-t.json' with { type: 'json' };
import { logBeta } from '../../src/horticulture/beta.js';
import { normalCdf, normalCdfTabled, normalQuantile } from '../../src/horticulture/normal.js';
import { openPolynomial, polynomialAt, timingLikelihood } from '../../src/horticulture/rooting-likelihood.js';
import type { RootingEvidence } from '../../src/horticulture/rooting-record.js';
import { predictiveQuantile } from '../../src/horticulture/student-t.js';

interface Censored {
  readonly L: readonly number[];
  readonly R: readonly (number | null)[];
  readonly w: readonly number[];
}

/** Rows of one row each, since a wheel seen once and a batch seen often differ only in who was looked at when. */
function logLikelihood({ L, R, w }: Censored, mu: number, sigma: number, rate = 1): number {
  return L.reduce((sum, from, i) => {
    const to = R[i] ?? null;
    const count = w[i]!;
    const evidence: RootingEvidence =
      to === null
        ? { intervals: [], rooted: 0, open: count, failed: 0, lookedOn: from }
        : { intervals: [{ from, to, rooted: count }], rooted: count, open: 0, failed: 0, lookedOn: to };
    const { logSeen, later } = timingLikelihood(evidence, mu, sigma);
    if (rate === 1) return sum + logSeen + (to === null ? count * Math.log(later) : 0);
    const { coefficients, logScale } = openPolynomial(evidence, rate, Infinity);
    return sum + logSeen + logScale + Math.log(polynomialAt(coefficients, later));
  }, 0);
}

describe('the likelihood of checks', () => {
  it.each([
    ['part cracking, read out eight times (Nelson 1982)', readouts.cracks.data, readouts.cracks.lognormal],
    ['turbine wheels, each looked at once (Nelson 1982)', readouts.turbine.data, readouts.turbine.lognormal],
  ])('agrees with R survival on %s', (_, data, fit) => {
    expect(logLikelihood(data, fit.mu, fit.sigma)).toBeCloseTo(fit.logLik, 6);
  });

  it('agrees with the published fit of the turbine wheels', () => {
    const { lognormal_mu, log_scale, logLik } = readouts.turbine.published;
    expect(
      Math.abs(logLikelihood(readouts.turbine.data, lognormal_mu, Math.exp(log_scale)) - logLik),
    ).toBeLessThan(0.05);
  });

  it('with a share that never roots agrees with R’s fit, which no neighbour beats', () => {
    const { data, lognormal } = cure.cases.synthetic40;
    const at = (mu: number, sigma: number, rate: number) => logLikelihood(data, mu, sigma, rate);
    const { mu, sigma, p } = lognormal;
    expect(at(mu, sigma, p)).toBeCloseTo(lognormal.logLik, 6);
    for (const step of [-0.003, 0.003])
      expect(
        Math.max(at(mu + step, sigma, p), at(mu, sigma + step, p), at(mu, sigma, p + step)),
      ).toBeLessThan(lognormal.logLik);
    expect(Math.exp(mu)).toBeCloseTo(lognormal.median_rooters, 9);
  });

  it('averages a varying strike rate to what a fixed one gives when batches hardly differ', () => {
    const evidence: RootingEvidence = { intervals: [], rooted: 3, open: 4, failed: 2, lookedOn: 12 };
    const at = (concentration: number) => {
      const { coefficients, logScale } = openPolynomial(evidence, 0.7, concentration);
      return logScale + Math.log(polynomialAt(coefficients, 0.4));
    };
    expect(at(1e7)).toBeCloseTo(at(Infinity), 4);
    expect(at(20)).not.toBeCloseTo(at(Infinity), 2);
  });
});

describe('the distributions agree with R', () => {
  it.each(distributions.normal_cdf)('Φ($z)', ({ z, p }) => {
    expect(Math.abs(normalCdf(z) / p - 1)).toBeLessThan(1e-11);
    expect(Math.abs(normalCdfTabled(z) - p)).toBeLessThan(1e-6);
  });

  it.each(distributions.normal_quantile)('the normal quantile at $p', ({ p, q }) => {
    // The library's rational approximation is good to 2e-8 as far out as 1e-10, and to 1e-11 where forecasts go.
    expect(Math.abs(normalQuantile(p) - q)).toBeLessThan(p < 1e-4 ? 2e-8 : 1e-11);
  });

  it.each(distributions.lbeta)('log B($a, $b)', ({ a, b, v }) => {
    expect(Math.abs(logBeta(a, b) - v)).toBeLessThan(1e-10 * Math.max(1, Math.abs(v)));
  });

  it.each(distributions.lognormal)('lognormal at $t, and its upper tail', ({ mu, sigma, t, cdf, sf }) => {
    const z = (Math.log(t) - mu) / sigma;
    expect(Math.abs(normalCdf(z) - cdf)).toBeLessThan(1e-12);
    expect(Math.abs(normalCdf(-z) / sf - 1)).toBeLessThan(1e-9);
  });

  it.each(Object.values(years).filter((each) => typeof each !== 'string'))(
    'predictions from $n_years springs',
    (each) => {
      for (const [name, value] of Object.entries(each.student_t_predictive))
        expect(
          predictiveQuantile(Number(name.slice(1)) / 100, {
            mean: each.mean_doy,
            sd: each.sd_doy,
            n: each.n_years,
          }),
        ).toBeCloseTo(value, 8);
    },
  );
});
