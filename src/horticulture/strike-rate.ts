/** What share roots, or survives: learnt from batches that differ, so that a big batch does not drown the small ones. */
import { RATE_CONCENTRATION } from './rooting-prior.js';

/** Beta(a, b): belief about a rate between 0 and 1. */
export interface RateBelief {
  readonly a: number;
  readonly b: number;
}

/** `succeeded` of `tried`: rooted of those struck, or kept of those rooted. */
export interface RateRecord {
  readonly tried: number;
  readonly succeeded: number;
}

/** Belief about survival from rooted to planted out, before records. Judgement, not published. */
export const USUAL_SURVIVAL: RateBelief = { a: 18, b: 2 };

/**
 * Belief about a grower's mean rate. Batches differ in their own rates, with concentration s, so that one of n tells as
 * much of the mean as `(s + 1)/(s + n)` of its cuttings would: it is discounted by that (the variance of a beta-binomial
 * count beside a binomial one).
 */
export function learnRate(
  prior: RateBelief,
  records: readonly RateRecord[],
  concentration = RATE_CONCENTRATION,
): RateBelief {
  let { a, b } = prior;
  for (const { tried, succeeded } of records) {
    const discount = (concentration + 1) / (concentration + tried);
    a += discount * succeeded;
    b += discount * (tried - succeeded);
  }
  return { a, b };
}

/**
 * Belief about the next batch's own rate: the same mean, with the spread of the mean and of batches about it together,
 * `c = 1/(1/(A+1) + A/((A+1)(s+1))) − 1` for A = a + b.
 */
export function nextBatchRate({ a, b }: RateBelief, concentration = RATE_CONCENTRATION): RateBelief {
  const known = a + b;
  const c = 1 / (1 / (known + 1) + known / ((known + 1) * (concentration + 1))) - 1;
  return { a: (c * a) / known, b: (c * b) / known };
}

export function meanRate({ a, b }: RateBelief): number {
  return a / (a + b);
}
