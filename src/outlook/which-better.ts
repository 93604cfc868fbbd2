/** Which place or kind of cutting does better for a crop, where the grower's records bear it. */
import { compareRates } from '../horticulture/comparison.js';
import { cropNamed } from '../horticulture/crops.js';
import { strikePrior } from '../horticulture/cutting-season.js';
import type { RateRecord } from '../horticulture/strike-rate.js';
import { type Batch, placeOf } from '../ledger/batch.js';
import { isSettled } from './rooting-story.js';

export interface Better {
  readonly crop: string;
  readonly by: 'place' | 'cutting';
  readonly better: string;
  readonly than: string;
  /** Mean strike rates, 0–1. */
  readonly rates: readonly [better: number, than: number];
  /** Chance that the better one is, 0–1. */
  readonly sure: number;
}

const WAYS = {
  place: placeOf,
  cutting: (batch: Batch) => batch.cutting,
} as const;
/** Where the crop is not in the table: easy soft cuttings, doubtfully. */
const ANY_PRIOR = [4, 2] as const;

/** One answer at most for each crop and way, of the two that the records know best; empty where nothing can be said. */
export function whichBetter(batches: readonly Batch[]): readonly Better[] {
  const settled = batches.filter((batch) => batch.crop !== null && isSettled(batch));
  const crops = [...new Set(settled.map(({ crop }) => crop as string))];
  return crops.flatMap((crop) =>
    (Object.keys(WAYS) as (keyof typeof WAYS)[]).flatMap((by) => {
      const found = compared(
        crop,
        by,
        settled.filter((batch) => batch.crop === crop),
      );
      return found === null ? [] : [found];
    }),
  );
}

function compared(crop: string, by: keyof typeof WAYS, batches: readonly Batch[]): Better | null {
  const groups = new Map<string, RateRecord[]>();
  for (const batch of batches) {
    const way = WAYS[by](batch);
    if (way === null) continue;
    groups.set(way, [
      ...(groups.get(way) ?? []),
      { tried: batch.count, succeeded: Math.min(batch.rooted, batch.count) },
    ]);
  }
  const [first, second] = [...groups].sort(([, a], [, b]) => b.length - a.length);
  if (!first || !second) return null;
  const known = cropNamed(crop);
  const [a, b] = known ? strikePrior(known) : ANY_PRIOR;
  const { better, firstHigher, rates } = compareRates({ a, b }, first[1], second[1]);
  if (better === null) return null;
  const [one, other] = better === 'first' ? ([0, 1] as const) : ([1, 0] as const);
  const names = [first[0], second[0]] as const;
  return {
    crop,
    by,
    better: names[one],
    than: names[other],
    rates: [rates[one], rates[other]],
    sure: Math.max(firstHigher, 1 - firstHigher),
  };
}
