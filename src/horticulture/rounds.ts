/** Enough plants from several rounds of cuttings, struck on different days by one grower. */
import { atLeast, chanceAt, tabled, type TabledChance } from './binomial.js';
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
const IMPOSSIBLE = 1e-9;
const RATE_NODES = 64;
const SURVIVAL_NODES = 24;
const MEAN_NODES = 32;
/** Chances to root in time are told apart to a twenty-fourth. */
const SHARE_STEPS = 24;

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
  const whenAllInTime = chanceOfKept(take, want, next, survival);
  const enough = enoughAt(take, want, survival);
  const rates = rateNodes(RATE_NODES);
  const weights = rateWeights(rates, next.a, next.b);
  let chance = 0;
  for (const node of timing) {
    const inTime = rootedWithin(daysLeft, node);
    if (inTime >= CERTAIN) chance += node.weight * whenAllInTime;
    else if (inTime > IMPOSSIBLE)
      for (let i = 0; i < rates.length; i++)
        chance += node.weight * weights[i]! * chanceAt(enough, rates[i]! * inTime);
  }
  return chance;
}

function manyRounds(rounds: readonly Round[], question: RoundsQuestion): number {
  const { want, rate, survival, timing, concentration = RATE_CONCENTRATION } = question;
  const total = rounds.reduce((sum, { take }) => sum + take, 0);
  if (want > total) return 0;
  const enough = enoughAt(total, want, survival);
  const means = rateNodes(MEAN_NODES);
  const weights = rateWeights(means, rate.a, rate.b);
  let chance = 0;
  for (const { inTime, weight } of distinctShares(rounds, timing)) {
    if (inTime.every((share) => share <= IMPOSSIBLE)) continue;
    for (let i = 0; i < means.length; i++) {
      const together = weight * weights[i]!;
      if (together > 1e-8)
        chance += together * averaged(enough, matched(rounds, inTime, means[i]!, concentration));
    }
  }
  return chance;
}

/** Chance of enough plants as a function of the rate at which cuttings root in time, survival averaged over. */
function enoughAt(take: number, want: number, survival: RateBelief | undefined): TabledChance {
  const rooted = atLeast(want, take);
  if (!survival) return rooted;
  const shares = rateNodes(SURVIVAL_NODES);
  const weights = rateWeights(shares, survival.a, survival.b);
  // Of cuttings that root at a rate and live at another, each is kept at the product of the two.
  return tabled(take, (rate) =>
    shares.reduce((sum, share, i) => sum + weights[i]! * chanceAt(rooted, rate * share), 0),
  );
}

/** Mean of a tabled chance over a rate that is Beta(a, b). */
function averaged(chance: TabledChance, { a, b }: RateBelief): number {
  const { rates, logs, restLogs } = nodesFor(a + b);
  const atMean = (a - 0.5) * Math.log(a / (a + b)) + (b - 0.5) * Math.log(b / (a + b));
  let sum = 0;
  let total = 0;
  for (let i = 0; i < rates.length; i++) {
    // The half is the crowding of the nodes towards the ends.
    const weight = Math.exp((a - 0.5) * logs[i]! + (b - 0.5) * restLogs[i]! - atMean);
    total += weight;
    sum += weight * chanceAt(chance, rates[i]!);
  }
  return sum / total;
}

interface LoggedNodes {
  readonly rates: Float64Array;
  readonly logs: Float64Array;
  readonly restLogs: Float64Array;
}

const nodesByCount = new Map<number, LoggedNodes>();

/** The narrower the rate the more points. */
function nodesFor(strength: number): LoggedNodes {
  const count = 32 * Math.ceil(Math.max(32, 3 * Math.sqrt(Math.min(strength, 1e4))) / 32);
  const known = nodesByCount.get(count);
  if (known) return known;
  const rates = rateNodes(count);
  const nodes = { rates, logs: rates.map(Math.log), restLogs: rates.map((rate) => Math.log1p(-rate)) };
  nodesByCount.set(count, nodes);
  return nodes;
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
  const alike = Math.max(1e-4, (variance / binomialVariance - 1) / (total - 1));
  const strength = 1 / Math.min(alike, 1 - 1e-6) - 1;
  return { a: strength * rate, b: strength * (1 - rate) };
}
