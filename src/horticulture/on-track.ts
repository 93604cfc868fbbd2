/** Whether the live batches will give enough plants by a day, as a chance. */
import { chanceOfEnough } from './beta-binomial.js';
import { binomial } from './binomial.js';
import { normalCdf } from './normal.js';
import { cellsOf, openRate, rateLikelihood } from './rooting-cells.js';
import type { Learnt } from './rooting-learning.js';
import { evidenceOf, type RootingRecord } from './rooting-record.js';
import type { RateBelief } from './strike-rate.js';
import { plainClock, type RootingClock } from './thermal-time.js';

/** A batch that counts towards plants wanted. */
export interface LiveBatch {
  /** Batches with the same one share the grower's strike rate. */
  readonly learnt: Learnt;
  readonly record: RootingRecord;
  /** Day after striking by which a cutting must have rooted to be of use. */
  readonly rootedByDay: number;
  /** Rooted ones that are there no more: died since, or dispatched. */
  readonly gone?: number;
  readonly clock?: RootingClock;
}

export interface OnTrack {
  /** Chance of at least as many as are wanted. */
  readonly p: number;
  /** Plants that there will be: nine times in ten at least `p10`, as many as not `p50`, one time in ten over `p90`. */
  readonly plants: { readonly p10: number; readonly p50: number; readonly p90: number };
}

/** `survival`: of those rooted, from now until the plants are wanted; all live where it is missing. */
export function onTrack(want: number, batches: readonly LiveBatch[], survival?: RateBelief): OnTrack {
  const rooted = rootedInTime(batches);
  const plants = survival ? kept(rooted, survival) : rooted;
  return {
    p: plants.slice(Math.max(0, want)).reduce((sum, each) => sum + each, 0),
    plants: { p10: quantile(plants, 0.1), p50: quantile(plants, 0.5), p90: quantile(plants, 0.9) },
  };
}

/** Chances of 0, 1, 2 … rooted cuttings from all of them, in time and still there. */
export function rootedInTime(batches: readonly LiveBatch[]): Float64Array {
  const shared = new Map<Learnt, LiveBatch[]>();
  for (const batch of batches) shared.set(batch.learnt, [...(shared.get(batch.learnt) ?? []), batch]);
  return [...shared].reduce<Float64Array>(
    (sum, [learnt, group]) => convolved(sum, rootedOf(learnt, group)),
    Float64Array.of(1),
  );
}

/** Chances of 0, 1, 2 … rooted cuttings from batches that share the grower's mean strike rate m. */
function rootedOf(learnt: Learnt, batches: readonly LiveBatch[]): Float64Array {
  const byMean = batches.map((batch) => rootedByMean(learnt, batch));
  const means = learnt.grid.rates.values.length;
  const prior = Float64Array.from({ length: means }, (_, m) => massAt(learnt, m));
  const weights = prior.map((mass, m) =>
    mass === 0 ? 0 : byMean.reduce((product, { evidence }) => product * (evidence[m]! / mass), mass),
  );
  const total = weights.reduce((sum, each) => sum + each, 0);
  let rooted = new Float64Array(1);
  for (let m = 0; m < means; m++) {
    const weight = weights[m]! / total;
    if (weight < 1e-9) continue;
    const sum = byMean.reduce<Float64Array>(
      (all, { counts }) => convolved(all, counts[m]!),
      Float64Array.of(1),
    );
    rooted = Float64Array.from(sum, (each, k) => (rooted[k] ?? 0) + weight * each);
  }
  return rooted;
}

function massAt({ grid, nextBatch }: Learnt, m: number): number {
  const width = grid.rates.values.length;
  let sum = 0;
  for (let cell = m; cell < nextBatch.length; cell += width) sum += nextBatch[cell]!;
  return sum;
}

const RATE_BINS = 256;

/** For each m, how well it agrees with the batch's checks, and chances of how many will have rooted. */
function rootedByMean(
  learnt: Learnt,
  { record, rootedByDay, gone = 0, clock = plainClock }: LiveBatch,
): { readonly evidence: Float64Array; readonly counts: readonly Float64Array[] } {
  const seen = evidenceOf({
    ...record,
    checks: record.checks.map(({ day, rooted }) => ({ day: clock.thermal(day), rooted })),
  });
  const { cells, rates, rateGivenMean } = cellsOf(learnt, seen, record.struck);
  const logDay = Math.log(clock.thermal(Math.max(0, rootedByDay)));
  const likelihoodAt = rateLikelihood(seen, rates);
  const bins = rateGivenMean.map(() => new Float64Array(RATE_BINS + 1));
  for (const { logMedian, within, rootedByLook, byMean } of cells) {
    const rooted = normalCdf((logDay - logMedian) / within);
    for (let r = 0; r < rates.length; r++) {
      const rate = rates[r]!;
      const likelihood = likelihoodAt(r, rootedByLook);
      const bin = Math.round(openRate(rate, rooted, rootedByLook) * RATE_BINS);
      for (let m = 0; m < bins.length; m++) bins[m]![bin]! += byMean[m]! * rateGivenMean[m]![r]! * likelihood;
    }
  }
  const more = Array.from({ length: RATE_BINS + 1 }, (_, bin) => binomial(seen.open, bin / RATE_BINS));
  const present = Math.max(0, seen.rooted - gone);
  return {
    evidence: Float64Array.from(bins, (shares) => shares.reduce((sum, each) => sum + each, 0)),
    counts: bins.map((shares) => {
      const total = shares.reduce((sum, each) => sum + each, 0);
      const counts = new Float64Array(present + seen.open + 1);
      for (const [bin, share] of shares.entries())
        if (share > 0)
          for (const [k, chance] of more[bin]!.entries()) counts[present + k]! += (share / total) * chance;
      return counts;
    }),
  };
}

function kept(rooted: Float64Array, survival: RateBelief): Float64Array {
  const most = rooted.length - 1;
  const atLeastKept = Array.from({ length: most + 2 }, (_, want) =>
    chanceOfEnough(want, most, survival).reduce((sum, chance, of) => sum + chance * rooted[of]!, 0),
  );
  return Float64Array.from(rooted, (_, k) => (k > most ? 0 : atLeastKept[k]! - atLeastKept[k + 1]!));
}

/** The distribution of the sum of two independent counts. */
export function convolved(a: Float64Array, b: Float64Array): Float64Array {
  const sum = new Float64Array(a.length + b.length - 1);
  for (let i = 0; i < a.length; i++) for (let j = 0; j < b.length; j++) sum[i + j]! += a[i]! * b[j]!;
  return sum;
}

function quantile(chances: Float64Array, p: number): number {
  let sum = 0;
  const k = chances.findIndex((chance) => (sum += chance) >= p - 1e-12);
  return k < 0 ? chances.length - 1 : k;
}
