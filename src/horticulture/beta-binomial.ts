/** How many of n succeed when their common rate is itself uncertain: the beta-binomial distribution. */
import { logBeta } from './beta.js';
import type { RateBelief } from './strike-rate.js';

/** Chances of 0 … n successes. */
export function betaBinomial(n: number, { a, b }: RateBelief): Float64Array {
  const whole = logBeta(a, b);
  const chances = new Float64Array(n + 1);
  let logChoose = 0;
  for (let k = 0; k <= n; k++) {
    if (k > 0) logChoose += Math.log((n - k + 1) / k);
    chances[k] = Math.exp(logChoose + logBeta(a + k, b + n - k) - whole);
  }
  return chances;
}

/** The smallest k with P(X ≤ k) ≥ p. */
export function betaBinomialQuantile(p: number, n: number, rate: RateBelief): number {
  let sum = 0;
  for (const [k, chance] of betaBinomial(n, rate).entries()) {
    sum += chance;
    if (sum >= p - 1e-12) return k;
  }
  return n;
}

/**
 * Chance of at least `want` successes for each number tried from 0 to `most`: one pass along Pólya's urn, in which each
 * try succeeds with (a + successes)/(a + b + tries), so that ties at a confidence come out as ties.
 */
export function chanceOfEnough(want: number, most: number, { a, b }: RateBelief): Float64Array {
  const chances = new Float64Array(most + 1);
  if (want <= 0) return chances.fill(1);
  const before = want - 1;
  // Of the chance that exactly want − 1 of the tries so far succeeded.
  let log = 0;
  for (let i = 0; i < before; i++) log += Math.log((a + i) / (a + b + i));
  for (let tries = before; tries < most; tries++) {
    chances[tries + 1] = Math.min(1, chances[tries]! + (Math.exp(log) * (a + before)) / (a + b + tries));
    log += Math.log(((tries + 1) / (tries + 1 - before)) * ((b + tries - before) / (a + b + tries)));
  }
  return chances;
}
