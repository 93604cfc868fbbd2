/** Growers made up from the model's own distributions, to see how forecasts and advice fare with them. */
import { rateNodes, rateWeights } from '../../src/horticulture/rooting-grid.js';
import { normalQuantile } from '../../src/horticulture/normal.js';
import type { RootCheck, RootingRecord } from '../../src/horticulture/rooting-record.js';

export interface Generator {
  readonly medianDays: number;
  readonly betweenGrowers: number;
  readonly betweenBatches: number;
  readonly withinBatch: number;
  readonly strikeRate: readonly [number, number];
  readonly cuttings: readonly [least: number, most: number];
}

/** A batch whose truth is known: on which day each cutting roots, Infinity for never. */
export interface TrueBatch {
  readonly struck: number;
  readonly rootDays: readonly number[];
}

export type Draw = () => number;

/** Numbers between 0 and 1 from a seed (mulberry32), the same on every machine. */
export function drawing(seed: number): Draw {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

const nodes = rateNodes(400);

/** Quantiles of a beta rate, to the spacing of the nodes; the sums are made once for many draws. */
export function betaQuantiles([a, b]: readonly [number, number]): (p: number) => number {
  let sum = 0;
  const sums = rateWeights(nodes, a, b).map((weight) => (sum += weight));
  return (p) => {
    let [low, high] = [0, nodes.length - 1];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (sums[middle]! < p) low = middle + 1;
      else high = middle;
    }
    return nodes[low]!;
  };
}

export interface Grower {
  readonly strikeRate: number;
  /** Of so many cuttings; of any number that the generator gives where it is missing. */
  readonly batch: (struck?: number) => TrueBatch;
}

/** `position` and `rank`, both between 0 and 1, say where among growers this one stands in speed and in strike rate. */
export function growerAt(generator: Generator, position: number, rank: number, draw: Draw): Grower {
  const { medianDays, betweenGrowers, betweenBatches, withinBatch, cuttings } = generator;
  const gauss = () => normalQuantile(Math.min(1 - 1e-12, Math.max(1e-12, draw())));
  const logMedian = Math.log(medianDays) + betweenGrowers * normalQuantile(position);
  const mean = betaQuantiles(generator.strikeRate)(rank);
  const rates = betaQuantiles([20 * mean, 20 * (1 - mean)]);
  return {
    strikeRate: mean,
    batch(struck = cuttings[0] + Math.floor(draw() * (cuttings[1] - cuttings[0] + 1))) {
      const rate = rates(draw());
      const centre = logMedian + betweenBatches * gauss();
      const rootDays = Array.from({ length: struck }, () =>
        draw() < rate ? Math.exp(centre + withinBatch * gauss()) : Infinity,
      );
      return { struck, rootDays: rootDays.sort((a, b) => a - b) };
    },
  };
}

export function lookAt({ rootDays }: TrueBatch, day: number): RootCheck {
  return { day, rooted: rootDays.filter((each) => each <= day).length };
}

/** A batch looked at every `every` days from `first` on until half have rooted or 40 days are over, then cleared out. */
export function pastRecord(batch: TrueBatch, first: number, every: number): RootingRecord {
  const checks: RootCheck[] = [];
  for (let day = first; day <= 40; day += every) {
    checks.push(lookAt(batch, day));
    if (checks.at(-1)!.rooted >= batch.struck / 2) break;
  }
  checks.push(lookAt(batch, checks.at(-1)!.day + 14));
  return { struck: batch.struck, checks, final: true };
}
