/** What is believed of one live batch after its checks: weights over its median, spread and strike rate. */
import { chanceAt } from './binomial.js';
import type { TabledChance } from './binomial.js';
import { normalCdfTabled } from './normal.js';
import { cellsOf, openRate, rateLikelihood, type RootingCell } from './rooting-cells.js';
import { normalised } from './rooting-grid.js';
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

export interface PosteriorCell extends Omit<RootingCell, 'byMean'> {
  /** One weight for each rate … */
  readonly weights: Float64Array;
  /** … and their sum. */
  readonly weight: number;
}

/** Rates weigh alike in two cells where no share differs by more. */
const ALIKE = 1e-9;

/** Cells with less than this share of the heaviest's weight are left out. */
const NEGLIGIBLE = 1e-6;

/** Beliefs about a batch with this evidence (days as `learn` was given them). */
export function posteriorOf(learnt: Learnt, evidence: RootingEvidence, struck: number): RootingPosterior {
  const { cells, rates, rateGivenMean } = cellsOf(learnt, evidence, struck);
  const likelihood = rateLikelihood(evidence, rates);
  // Where nothing was seen yet, every rate is as likely: a factor of 1.
  const unseen = evidence.lookedOn === 0 && evidence.rooted + evidence.failed === 0;
  const weighed = cells.map(({ byMean, logMedian, within, rootedByLook }) => {
    const weights = new Float64Array(rates.length);
    for (let m = 0; m < byMean.length; m++) addTo(weights, byMean[m]!, rateGivenMean[m]!);
    let sum = 0;
    for (let r = 0; r < rates.length; r++)
      sum += unseen ? weights[r]! : (weights[r]! *= likelihood(r, rootedByLook));
    return { logMedian, within, rootedByLook, weights, sum };
  });
  const heaviest = weighed.reduce((most, { sum }) => Math.max(most, sum), 0);
  const active = weighed.filter(({ sum }) => sum > heaviest * NEGLIGIBLE);
  const total = active.reduce((all, { sum }) => all + sum, 0);
  for (const { weights } of active) for (let r = 0; r < rates.length; r++) weights[r]! /= total;
  // Some thousand cells: each property by name, since a copy that gains one is slow to make.
  const cellsLeft = active.map(({ logMedian, within, rootedByLook, weights, sum }) => ({
    logMedian,
    within,
    rootedByLook,
    weights,
    weight: sum / total,
  }));
  return { evidence, rates, cells: cellsLeft };
}

function addTo(target: Float64Array, share: number, source: Float64Array): void {
  if (share === 0) return;
  for (let i = 0; i < target.length; i++) target[i]! += share * source[i]!;
}

/** Chance by a day after striking; Infinity: ever. Days before the last check count as the last check. */
export type ChanceBy = (day: number) => number;

/** The chance of what `table` tells of the rate at which open cuttings have rooted. */
export function chanceBy(posterior: RootingPosterior, table: TabledChance): ChanceBy {
  const shares = unseenShares(posterior, table);
  return shares
    ? (day) => chanceUnseen(posterior, day, shares)
    : (day) => chanceInCells(posterior, day, table);
}

function chanceInCells({ cells, rates }: RootingPosterior, day: number, table: TabledChance): number {
  const logDay = Math.log(day);
  const impossibleSoFar = table.chances[0] === 0;
  let chance = 0;
  for (const cell of cells) {
    const rooted = normalCdfTabled((logDay - cell.logMedian) / cell.within);
    if (impossibleSoFar && rooted - cell.rootedByLook < 1e-9) continue;
    chance += chanceInCell(cell, rates, rooted, table);
  }
  return chance;
}

function chanceInCell(
  { weights, rootedByLook }: PosteriorCell,
  rates: Float64Array,
  rooted: number,
  table: TabledChance,
): number {
  let chance = 0;
  for (let i = 0; i < rates.length; i++)
    chance += weights[i]! * chanceAt(table, openRate(rates[i]!, rooted, rootedByLook));
  return chance;
}

/**
 * Before a batch's first check, nothing as a rule ties its strike rate to its time: every cell weighs the rates alike. Then
 * the sum over the rates depends on the share rooted alone, is tabled once, and a day costs a look-up for each cell.
 */
function unseenShares({ cells, rates }: RootingPosterior, table: TabledChance): TabledChance | null {
  const [first] = cells;
  if (!first || cells.some(({ rootedByLook }) => rootedByLook > 0)) return null;
  const alike = normalised(first.weights);
  for (const { weight, weights } of cells)
    for (let i = 0; i < rates.length; i++)
      if (Math.abs(weights[i]! - weight * alike[i]!) > ALIKE * weight) return null;
  const { steps } = table;
  const chances = Float64Array.from({ length: steps + 2 }, (_, i) => {
    let chance = 0;
    for (let r = 0; r < rates.length; r++)
      chance += alike[r]! * chanceAt(table, rates[r]! * Math.min(1, i / steps));
    return chance;
  });
  return { steps, chances };
}

function chanceUnseen({ cells }: RootingPosterior, day: number, shares: TabledChance): number {
  const logDay = Math.log(day);
  let chance = 0;
  for (const { weight, logMedian, within } of cells)
    chance += weight * chanceAt(shares, normalCdfTabled((logDay - logMedian) / within));
  return chance;
}
