/** What the grid says of one live batch: each point of median and spread, its weight and what the checks make of it. */
import { rateNodes, rateWeights } from './rooting-grid.js';
import { timingLikelihood } from './rooting-likelihood.js';
import type { Learnt } from './rooting-learning.js';
import type { RootingEvidence } from './rooting-record.js';

/** A point of (σ, μ_b) that the checks leave possible. */
export interface RootingCell {
  readonly logMedian: number;
  readonly within: number;
  /** Chance that a cutting which roots at all would have by the last check. */
  readonly rootedByLook: number;
  /** Weight before the strike rate is considered, for each of the grower's mean rates m. */
  readonly byMean: Float64Array;
}

/** Cells, the batch's possible strike rates, and the chance of each rate under each of the grower's mean rates. */
export interface BatchCells {
  readonly cells: readonly RootingCell[];
  readonly rates: Float64Array;
  readonly rateGivenMean: readonly Float64Array[];
}

const HOPELESS_LOG = 500;

/** For a batch with this evidence. A likelihood narrower than the grid's step is met with points between, by interpolation. */
export function cellsOf(learnt: Learnt, evidence: RootingEvidence, struck: number): BatchCells {
  const { grid, nextBatch } = learnt;
  const { logMedians, step, within } = grid;
  const finer = struck <= 60 ? 1 : Math.ceil(Math.sqrt(struck / 40));
  const points = Array.from(within.values, (sigma, table) =>
    Array.from({ length: (logMedians.length - 1) * finer + 1 }, (_, i) => {
      const logMedian = logMedians[0]! + (i * step) / finer;
      const row = table * logMedians.length + Math.floor(i / finer);
      return {
        logMedian,
        sigma,
        row,
        between: (i % finer) / finer,
        ...timingLikelihood(evidence, logMedian, sigma),
      };
    }),
  ).flat();
  const top = points.reduce((most, { logSeen }) => Math.max(most, logSeen), -Infinity);
  const cells = points
    .filter(({ logSeen }) => logSeen > top - HOPELESS_LOG)
    .map(({ logMedian, sigma, row, between, logSeen, later }) => ({
      logMedian,
      within: sigma,
      rootedByLook: 1 - later,
      byMean: belief(nextBatch, grid.rates.values.length, { row, between, factor: Math.exp(logSeen - top) }),
    }));
  return { cells, ...ratesOf(learnt, struck) };
}

function belief(
  nextBatch: Float64Array,
  width: number,
  { row, between, factor }: { row: number; between: number; factor: number },
): Float64Array {
  const byMean = new Float64Array(width);
  const here = row * width;
  // At the last row there is nothing between, and nothing beyond to read.
  const next = between === 0 ? here : here + width;
  for (let m = 0; m < width; m++)
    byMean[m] = factor * (nextBatch[here + m]! + between * (nextBatch[next + m]! - nextBatch[here + m]!));
  return byMean;
}

function ratesOf({ grid }: Learnt, struck: number): Pick<BatchCells, 'rates' | 'rateGivenMean'> {
  const s = grid.prior.rateConcentration;
  const means = grid.rates.values;
  if (s === Infinity)
    return {
      rates: means,
      rateGivenMean: Array.from(means, (_, row) => means.map((_, column) => (column === row ? 1 : 0))),
    };
  const rates = rateNodes(Math.min(200, 20 + Math.ceil(struck / 4)));
  return { rates, rateGivenMean: Array.from(means, (m) => rateWeights(rates, s * m, s * (1 - m))) };
}

/**
 * Likelihood of the counts at each strike rate (by its place in `rates`) and share rooted by the last look, as a share of the
 * best that any rate could reach.
 */
export function rateLikelihood(
  { rooted, open, failed }: RootingEvidence,
  rates: Float64Array,
): (rate: number, rootedByLook: number) => number {
  const not = open + failed;
  const best = xLogY(rooted, rooted / (rooted + not)) + xLogY(not, not / (rooted + not));
  const settled = rates.map((rate) => rooted * Math.log(rate) + failed * Math.log1p(-rate) - best);
  return (rate, rootedByLook) =>
    Math.exp(settled[rate]! + (open === 0 ? 0 : open * Math.log1p(-rates[rate]! * rootedByLook)));
}

/** Chance that an open cutting roots by the time a share `rooted` of those that ever do has, at a strike rate. */
export function openRate(rate: number, rooted: number, rootedByLook: number): number {
  return (rate * Math.max(0, rooted - rootedByLook)) / (1 - rate * rootedByLook);
}

function xLogY(x: number, y: number): number {
  return x === 0 ? 0 : x * Math.log(y);
}
