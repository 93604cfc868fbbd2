/** How many cuttings to take for so many plants at a confidence. */
import { betaBinomial, chanceOfEnough } from './beta-binomial.js';
import { smallest } from './smallest.js';
import type { RateBelief } from './strike-rate.js';

/** A need above this many cuttings is none that a grower means. */
export const MOST_CUTTINGS = 5000;
/** Ties at the confidence are real; rounding must not miss them. */
export const TIE = 1e-12;

export interface TakeQuestion {
  readonly want: number;
  /** Between 0 and 1. */
  readonly confidence: number;
  /** Of the next batch to root; see `nextBatchRate`. */
  readonly rate: RateBelief;
  /** Of those rooted to live until they are wanted; all do where it is missing. */
  readonly survival?: RateBelief | undefined;
}

/** `take` cuttings give at least `want` with chance `p`. */
export interface Take {
  readonly take: number;
  readonly p: number;
}

/** The smallest number of cuttings that reaches the confidence; null where even 5,000 don't. */
export function cuttingsToTake({ want, confidence, rate, survival }: TakeQuestion): Take | null {
  if (want === 0) return { take: 0, p: 1 };
  if (want > MOST_CUTTINGS) return null;
  if (!survival) {
    const chances = chanceOfEnough(want, MOST_CUTTINGS, rate);
    const take = chances.findIndex((chance) => chance >= confidence - TIE);
    return take < 0 ? null : { take, p: chances[take]! };
  }
  const chance = (n: number) => chanceOfKept(n, want, rate, survival);
  const take = smallest(want, MOST_CUTTINGS, (n) => chance(n) >= confidence - TIE);
  return take === null ? null : { take, p: chance(take) };
}

/** Chance that of n cuttings at least `want` root and live. */
export function chanceOfKept(n: number, want: number, rate: RateBelief, survival?: RateBelief): number {
  if (!survival) return chanceOfEnough(want, n, rate)[n]!;
  const enough = chanceOfEnough(want, n, survival);
  return betaBinomial(n, rate).reduce((sum, chance, rooted) => sum + chance * enough[rooted]!, 0);
}
