/** How likely a batch's checks are under a given median, spread and strike rate. */
import { logBeta } from './beta.js';
import { normalBetween, normalCdf } from './normal.js';
import type { RootingEvidence } from './rooting-record.js';

/** The part that depends on when cuttings root: log Π q^d of those seen, and S, the chance to root later. */
export interface TimingLikelihood {
  readonly logSeen: number;
  readonly later: number;
}

/** Of evidence under `log day ~ N(logMedian, within)`. */
export function timingLikelihood(
  { intervals, lookedOn }: RootingEvidence,
  logMedian: number,
  within: number,
): TimingLikelihood {
  let logSeen = 0;
  for (const { from, to, rooted } of intervals)
    logSeen +=
      rooted *
      Math.log(normalBetween((Math.log(from) - logMedian) / within, (Math.log(to) - logMedian) / within));
  return { logSeen, later: lookedOn === 0 ? 1 : normalCdf((logMedian - Math.log(lookedOn)) / within) };
}

/** A polynomial in S, lowest power first, its largest coefficient 1, and the log of the factor taken out. */
export interface ScaledPolynomial {
  readonly coefficients: Float64Array;
  readonly logScale: number;
}

/**
 * The part that depends on the strike rate, as a polynomial in S: K rooted, f failed and r open, of whom i root later.
 * With p ~ Beta(s·m, s(1−m)) integrated out, Σ C(r, i) Sⁱ B(sm + K + i, s(1−m) + f + r − i) / B(sm, s(1−m)); where s is
 * Infinity, p = m and the terms are C(r, i) Sⁱ m^(K+i) (1−m)^(f+r−i).
 */
export function openPolynomial(
  { rooted, open, failed }: RootingEvidence,
  rate: number,
  concentration: number,
): ScaledPolynomial {
  const term =
    concentration === Infinity
      ? (i: number) => (rooted + i) * Math.log(rate) + (failed + open - i) * Math.log1p(-rate)
      : betaTerm(concentration * rate, concentration * (1 - rate));
  const logs = new Float64Array(open + 1);
  let logChoose = 0;
  for (let i = 0; i <= open; i++) {
    if (i > 0) logChoose += Math.log((open - i + 1) / i);
    logs[i] = logChoose + term(i);
  }
  const logScale = logs.reduce((top, each) => Math.max(top, each), -Infinity);
  return { coefficients: logs.map((each) => Math.exp(each - logScale)), logScale };

  function betaTerm(a: number, b: number): (i: number) => number {
    const whole = logBeta(a, b);
    return (i) => logBeta(a + rooted + i, b + failed + open - i) - whole;
  }
}

/** Σ coefficients[i]·xⁱ. */
export function polynomialAt(coefficients: Float64Array, x: number): number {
  let sum = 0;
  for (let i = coefficients.length - 1; i >= 0; i--) sum = sum * x + coefficients[i]!;
  return sum;
}
