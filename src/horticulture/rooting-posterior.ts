/** What is believed of one live batch after its checks: weights over its median, spread and strike rate. */
import { chanceAt } from './binomial.js';
import type { AtLeast } from './binomial.js';
import { normalCdfTabled } from './normal.js';
import { rateNodes, rateWeights } from './rooting-grid.js';
import { timingLikelihood } from './rooting-likelihood.js';
import type { Learnt } from './rooting-learning.js';
import type { RootingEvidence } from './rooting-record.js';

/**
 * Active cells of (σ, μ), each with a row of weights over strike rates; all weights sum to 1. Given a cell and a rate,
 * the open cuttings root independently of each other.
 */
export interface RootingPosterior {
  readonly evidence: RootingEvidence;
  readonly rates: Float64Array;
  readonly cells: readonly PosteriorCell[];
}

export interface PosteriorCell {
  readonly logMedian: number;
  readonly within: number;
  /** Chance that a cutting which roots at all would have by the last check. */
  readonly rootedByLook: number;
  /** One weight for each rate. */
  readonly weights: Float64Array;
}

/** Cells with less than this share of the heaviest's weight are left out. */
const NEGLIGIBLE = 1e-6;

/** Beliefs about a batch with this evidence (days as `learn` was given them). */
export function posteriorOf(learnt: Learnt, evidence: RootingEvidence, struck: number): RootingPosterior {
  const rates = ratesFor(learnt, struck);
  const finer = struck <= 60 ? 1 : Math.ceil(Math.sqrt(struck / 40));
  const spread = rateMatrix(learnt, rates);
  const cells = weighted(learnt, evidence, { rates, spread, finer });
  const total = cells.reduce((sum, { weights }) => sum + weights.reduce((all, each) => all + each, 0), 0);
  for (const { weights } of cells) for (let i = 0; i < weights.length; i++) weights[i]! /= total;
  return { evidence, rates, cells };
}

/**
 * Chance that `table`'s need of the open cuttings has rooted by `day` (Infinity: ever). Days before the last check count
 * as the last check.
 */
export function chanceBy({ cells, rates }: RootingPosterior, day: number, table: AtLeast): number {
  const logDay = Math.log(day);
  const impossibleSoFar = table.chances[0] === 0;
  let chance = 0;
  for (const { logMedian, within, rootedByLook, weights } of cells) {
    const more = normalCdfTabled((logDay - logMedian) / within) - rootedByLook;
    if (more > 1e-9 || !impossibleSoFar)
      chance += chanceInCell(weights, rates, rootedByLook, Math.max(0, more), table);
  }
  return chance;
}

function chanceInCell(
  weights: Float64Array,
  rates: Float64Array,
  rootedByLook: number,
  more: number,
  table: AtLeast,
): number {
  let chance = 0;
  for (let i = 0; i < rates.length; i++) {
    const rate = rates[i]!;
    chance += weights[i]! * chanceAt(table, (rate * more) / (1 - rate * rootedByLook));
  }
  return chance;
}

function ratesFor(learnt: Learnt, struck: number): Float64Array {
  if (learnt.grid.prior.rateConcentration === Infinity) return learnt.grid.rates.values;
  return rateNodes(Math.min(200, 20 + Math.ceil(struck / 4)));
}

/** Chance of each of the batch's rates given the grower's, one row for each m. */
function rateMatrix({ grid }: Learnt, rates: Float64Array): readonly Float64Array[] {
  const s = grid.prior.rateConcentration;
  return Array.from(grid.rates.values, (m, row) =>
    s === Infinity
      ? rates.map((_, column) => (column === row ? 1 : 0))
      : rateWeights(rates, s * m, s * (1 - m)),
  );
}

function weighted(
  { grid, nextBatch }: Learnt,
  evidence: RootingEvidence,
  { rates, spread, finer }: { rates: Float64Array; spread: readonly Float64Array[]; finer: number },
): PosteriorCell[] {
  const { logMedians, step, within } = grid;
  const width = grid.rates.values.length;
  const points = Array.from(within.values, (sigma, s) =>
    Array.from({ length: (logMedians.length - 1) * finer + 1 }, (_, i) => {
      const logMedian = logMedians[0]! + (i * step) / finer;
      const row = s * logMedians.length + Math.floor(i / finer);
      return { sigma, logMedian, row, between: (i % finer) / finer };
    }),
  ).flat();
  const timings = points.map(({ logMedian, sigma }) => timingLikelihood(evidence, logMedian, sigma));
  const belief = new Float64Array(width);
  const cells: { cell: PosteriorCell; sum: number }[] = [];
  const top = timings.reduce((most, { logSeen }) => Math.max(most, logSeen), -Infinity);
  for (const [i, { sigma, logMedian, row, between }] of points.entries()) {
    const { logSeen, later } = timings[i]!;
    if (logSeen < top - 500) continue;
    const seen = Math.exp(logSeen - top);
    for (let m = 0; m < width; m++) {
      const here = nextBatch[row * width + m]!;
      belief[m] = between === 0 ? here : here + between * (nextBatch[(row + 1) * width + m]! - here);
    }
    const weights = new Float64Array(rates.length);
    let sum = 0;
    for (let m = 0; m < width; m++) {
      const share = belief[m]! * seen;
      if (share === 0) continue;
      const chances = spread[m]!;
      for (let r = 0; r < rates.length; r++) weights[r]! += share * chances[r]!;
    }
    for (let r = 0; r < rates.length; r++) {
      sum += weights[r]! *= rateLikelihood(evidence, rates[r]!, 1 - later);
    }
    cells.push({ cell: { logMedian, within: sigma, rootedByLook: 1 - later, weights }, sum });
  }
  const heaviest = cells.reduce((most, { sum }) => Math.max(most, sum), 0);
  return cells.filter(({ sum }) => sum > heaviest * NEGLIGIBLE).map(({ cell }) => cell);
}

/** Likelihood of the counts at each rate as a function of it, as a share of the best that any rate could reach. */
function rateLikelihood(
  { rooted, open, failed }: RootingEvidence,
  rate: number,
  rootedByLook: number,
): number {
  const not = open + failed;
  const best = xLogY(rooted, rooted / (rooted + not)) + xLogY(not, not / (rooted + not));
  return Math.exp(
    rooted * Math.log(rate) + failed * Math.log1p(-rate) + open * Math.log1p(-rate * rootedByLook) - best,
  );
}

function xLogY(x: number, y: number): number {
  return x === 0 ? 0 : x * Math.log(y);
}
