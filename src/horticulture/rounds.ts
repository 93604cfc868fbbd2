/** Enough plants from several rounds of cuttings, struck on different days by one grower. */
import { betaBinomial, chanceOfEnough } from './beta-binomial.js';
import { binomial, chanceAt, chanceOfAtLeast, tabled } from './binomial.js';
import { chanceOfKept } from './cuttings-to-take.js';
import { normalCdf } from './normal.js';
import { rateNodes, rateWeights } from './rooting-grid.js';
import type { Learnt } from './rooting-learning.js';
import { RATE_CONCENTRATION } from './rooting-prior.js';
import { nextBatchRate, type RateBelief } from './strike-rate.js';

/** `take` cuttings with so many days to root in. */
export interface Round {
  readonly daysLeft: number;
  readonly take: number;
}

/** A possible median and spread of the time to root, and its weight. */
export interface TimingNode {
  readonly logMedian: number;
  readonly within: number;
  readonly weight: number;
}

export interface RoundsQuestion {
  readonly want: number;
  /** Of the grower's mean strike rate, which the rounds share. */
  readonly rate: RateBelief;
  /** Of those rooted to live until they are wanted; all do where it is missing. */
  readonly survival?: RateBelief | undefined;
  /** Weights sum to 1; the rounds share a node: a slow season is slow for all of them, which errs to the safe side. */
  readonly timing: readonly TimingNode[];
  /** s of the strike rates of rounds about the grower's mean; Infinity: they are the same. */
  readonly concentration?: number;
}

const CERTAIN = 1 - 1e-9;
const RATE_NODES = 64;
const MEAN_NODES = 32;
/** Chances to root in time are told apart to a fiftieth. */
const SHARE_STEPS = 50;

/** The next batch's timing after what was learnt. */
export function timingOf({ grid, nextBatch }: Learnt): TimingNode[] {
  const width = grid.rates.values.length;
  const nodes = Array.from({ length: nextBatch.length / width }, (_, row) => ({
    logMedian: grid.logMedians[row % grid.logMedians.length]!,
    within: grid.within.values[Math.floor(row / grid.logMedians.length)]!,
    weight: nextBatch.subarray(row * width, (row + 1) * width).reduce((sum, each) => sum + each, 0),
  })).filter(({ weight }) => weight > 1e-7);
  const total = nodes.reduce((sum, { weight }) => sum + weight, 0);
  return nodes.map((node) => ({ ...node, weight: node.weight / total }));
}

/** Chance that a cutting which roots at all does so within so many days. */
export function rootedWithin(days: number, { logMedian, within }: Omit<TimingNode, 'weight'>): number {
  return days <= 0 ? 0 : normalCdf((Math.log(days) - logMedian) / within);
}

/** Chance that at least `want` root in time (and live). */
export function chanceOfRounds(rounds: readonly Round[], question: RoundsQuestion): number {
  if (question.want <= 0) return 1;
  const [first, ...others] = rounds.filter(({ daysLeft, take }) => daysLeft > 0 && take > 0);
  if (first === undefined) return 0;
  return others.length === 0 ? oneRound(first, question) : manyRounds([first, ...others], question);
}

function oneRound({ daysLeft, take }: Round, question: RoundsQuestion): number {
  const { want, rate, survival, timing, concentration = RATE_CONCENTRATION } = question;
  const next = concentration === Infinity ? rate : nextBatchRate(rate, concentration);
  const enough = survival ? chanceOfEnough(want, take, survival) : null;
  const table = tabled(take, (share) =>
    enough
      ? binomial(take, share).reduce((sum, chance, rooted) => sum + chance * enough[rooted]!, 0)
      : chanceOfAtLeast(want, take, share),
  );
  const rates = rateNodes(RATE_NODES);
  const weights = rateWeights(rates, next.a, next.b);
  const whenAllInTime = chanceOfKept(take, want, next, survival);
  return timing.reduce((sum, node) => {
    const inTime = rootedWithin(daysLeft, node);
    if (inTime >= CERTAIN) return sum + node.weight * whenAllInTime;
    return (
      sum +
      node.weight * weights.reduce((all, weight, i) => all + weight * chanceAt(table, rates[i]! * inTime), 0)
    );
  }, 0);
}

function manyRounds(rounds: readonly Round[], question: RoundsQuestion): number {
  const { want, rate, survival, timing } = question;
  const total = rounds.reduce((sum, { take }) => sum + take, 0);
  if (want > total) return 0;
  const means = rateNodes(MEAN_NODES);
  const weights = rateWeights(means, rate.a, rate.b);
  const enough = survival ? chanceOfEnough(want, total, survival) : null;
  let chance = 0;
  for (const { inTime, weight } of distinctShares(rounds, timing))
    for (const [i, mean] of means.entries()) {
      const together = weight * weights[i]!;
      if (together < 1e-9) continue;
      const count = matched(rounds, inTime, mean, question.concentration ?? RATE_CONCENTRATION);
      chance +=
        together *
        (enough
          ? betaBinomial(total, count).reduce((sum, each, rooted) => sum + each * enough[rooted]!, 0)
          : chanceOfEnough(want, total, count)[total]!);
    }
  return chance;
}

interface InTime {
  /** For each round, of the cuttings that root at all. */
  readonly inTime: readonly number[];
  readonly weight: number;
}

/** Timing nodes under which each round has about the same share in time, taken as one. */
function distinctShares(rounds: readonly Round[], timing: readonly TimingNode[]): InTime[] {
  const groups = new Map<string, InTime>();
  for (const node of timing) {
    const inTime = rounds.map(({ daysLeft }) => rootedWithin(daysLeft, node));
    const key = inTime.map((share) => Math.round(share * SHARE_STEPS)).join();
    const group = groups.get(key);
    const weight = node.weight + (group?.weight ?? 0);
    const share = node.weight / weight;
    groups.set(key, {
      inTime: group ? inTime.map((each, i) => group.inTime[i]! + share * (each - group.inTime[i]!)) : inTime,
      weight,
    });
  }
  return [...groups.values()];
}

/**
 * The count of all rounds together, each a thinned beta-binomial with its own rate about `mean`, taken as one beta-binomial
 * of the same mean and variance.
 */
function matched(
  rounds: readonly Round[],
  inTime: readonly number[],
  mean: number,
  concentration: number,
): RateBelief {
  const rateVariance = (mean * (1 - mean)) / (concentration + 1);
  let total = 0;
  let expected = 0;
  let variance = 0;
  for (const [i, { take }] of rounds.entries()) {
    const share = inTime[i]!;
    total += take;
    expected += take * share * mean;
    variance +=
      take * share * (mean - share * (mean * mean + rateVariance)) +
      take * take * share * share * rateVariance;
  }
  const rate = Math.min(1 - 1e-9, Math.max(1e-9, expected / total));
  const binomialVariance = total * rate * (1 - rate);
  const alike = Math.max(1e-6, (variance / binomialVariance - 1) / (total - 1));
  const strength = 1 / Math.min(alike, 1 - 1e-6) - 1;
  return { a: strength * rate, b: strength * (1 - rate) };
}
