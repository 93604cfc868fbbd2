/** Whether one method or place does better than another, said only when the records bear it. */
import { rateNodes, rateWeights } from './rooting-grid.js';
import { learnRate, meanRate, type RateBelief, type RateRecord } from './strike-rate.js';

export interface Comparison {
  /** The better one, or null where the records don't say. */
  readonly better: 'first' | 'second' | null;
  /** Chance that the first has the higher mean strike rate. */
  readonly firstHigher: number;
  readonly rates: readonly [first: number, second: number];
}

/** Chance from which a difference is called one. Judgement. */
export const SURE_ENOUGH = 0.9;
/** Batches on each side below which nothing is said, whatever the figures. Judgement. */
export const LEAST_BATCHES = 3;
/** A difference smaller than this is of no use to a grower. Judgement. */
const LEAST_DIFFERENCE = 0.05;

const NODES = 120;

/** Compares mean strike rates, batches discounted as in `learnRate`, from the same prior for both. */
export function compareRates(
  prior: RateBelief,
  first: readonly RateRecord[],
  second: readonly RateRecord[],
): Comparison {
  const beliefs = [learnRate(prior, first), learnRate(prior, second)] as const;
  const firstHigher = chanceHigher(...beliefs);
  const rates = [meanRate(beliefs[0]), meanRate(beliefs[1])] as const;
  const enough =
    Math.min(first.length, second.length) >= LEAST_BATCHES &&
    Math.abs(rates[0] - rates[1]) >= LEAST_DIFFERENCE;
  const better =
    !enough || Math.max(firstHigher, 1 - firstHigher) < SURE_ENOUGH
      ? null
      : firstHigher > 0.5
        ? 'first'
        : 'second';
  return { better, firstHigher, rates };
}

/** P(x > y) for independent beta rates. */
function chanceHigher(x: RateBelief, y: RateBelief): number {
  const nodes = rateNodes(NODES);
  const ofX = rateWeights(nodes, x.a, x.b);
  const ofY = rateWeights(nodes, y.a, y.b);
  let below = 0;
  let chance = 0;
  for (let i = 0; i < nodes.length; i++) {
    chance += ofX[i]! * (below + ofY[i]! / 2);
    below += ofY[i]!;
  }
  return chance;
}
