/** The grid on which beliefs about rooting are kept, and the prior's weight at each of its nodes. */
import { betaDensity } from './beta.js';
import type { LogBelief, RootingPrior } from './rooting-prior.js';

/** Nodes of μ (log median days, evenly spaced), σ, τ and m, with the prior weight of each σ, τ and m. */
export interface RootingGrid {
  readonly prior: RootingPrior;
  readonly logMedians: Float64Array;
  readonly step: number;
  readonly within: Nodes;
  readonly between: Nodes;
  readonly rates: Nodes;
}

export interface Nodes {
  readonly values: Float64Array;
  /** Sum to 1. */
  readonly weights: Float64Array;
}

const MEDIAN_STEP = 0.04;
const LEAST_REACH = 1.5;
const REACH_IN_SD = 4.5;
const WITHIN_NODES = 17;
const BETWEEN_NODES = 7;
const RATE_NODES = 20;

/** Lays the grid out for a prior: about 81 × 17 × 7 × 20 nodes, fewer where something is known. */
export function gridFor(prior: RootingPrior): RootingGrid {
  const { mean, sd } = prior.logMedian;
  const half = Math.ceil(Math.max(LEAST_REACH, REACH_IN_SD * sd) / MEDIAN_STEP);
  return {
    prior,
    logMedians: Float64Array.from({ length: 2 * half + 1 }, (_, i) => mean + (i - half) * MEDIAN_STEP),
    step: MEDIAN_STEP,
    within: logNormalNodes(prior.logWithin, WITHIN_NODES, 3.2),
    between: logNormalNodes(prior.logBetween, BETWEEN_NODES, 2.7),
    rates: betaNodes(prior.strikeRate, RATE_NODES),
  };
}

/** Prior weight of each μ node, up to a factor. */
export function medianWeights({ prior: { logMedian }, logMedians }: RootingGrid): Float64Array {
  return logMedians.map((median) => {
    const z = (median - logMedian.mean) / logMedian.sd;
    return logMedian.tails === 't4' ? (1 + (z * z) / 4) ** -2.5 : Math.exp((-z * z) / 2);
  });
}

function logNormalNodes({ mean, sd }: LogBelief, count: number, reachInSd: number): Nodes {
  if (sd === 0) return { values: Float64Array.of(Math.exp(mean)), weights: Float64Array.of(1) };
  const z = Float64Array.from({ length: count }, (_, i) => reachInSd * ((2 * i) / (count - 1) - 1));
  return {
    values: z.map((each) => Math.exp(mean + sd * each)),
    weights: normalised(z.map((each) => Math.exp((-each * each) / 2))),
  };
}

/** The points of a rate between 0 and 1, crowded towards its ends, where Beta densities may be steep. */
export function rateNodes(count: number): Float64Array {
  return Float64Array.from({ length: count }, (_, i) => (1 - Math.cos((Math.PI * (i + 0.5)) / count)) / 2);
}

/** Weights, summing to 1, of Beta(a, b) at `rateNodes`. */
export function rateWeights(nodes: Float64Array, a: number, b: number): Float64Array {
  return normalised(nodes.map((p) => betaDensity(p, a, b) * Math.sqrt(p * (1 - p))));
}

function betaNodes([a, b]: readonly [number, number], count: number): Nodes {
  const values = rateNodes(count);
  return { values, weights: rateWeights(values, a, b) };
}

/** The same proportions with sum 1; unchanged where the sum is 0. */
export function normalised(weights: Float64Array): Float64Array {
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return sum === 0 ? weights : weights.map((weight) => weight / sum);
}
