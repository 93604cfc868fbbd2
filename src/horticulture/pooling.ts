/** Which earlier batches say something of a new one, and how much: the same crop, and the more alike the more. */
import type { PastBatch } from './rooting-learning.js';
import type { DaysRange } from './rooting-prior.js';
import type { RootCheck, RootingRecord } from './rooting-record.js';

/** Under what a batch was struck; what is not known counts as the same. */
export interface RootingConditions {
  readonly crop: string;
  readonly cutting?: string | undefined;
  readonly medium?: string | undefined;
  readonly heated?: boolean | undefined;
  readonly place?: string | undefined;
}

export interface RecordedBatch extends RootingRecord {
  readonly conditions: RootingConditions;
  /** The crop table's range for these conditions. */
  readonly usualDays: DaysRange;
}

export type Difference = 'cutting' | 'medium' | 'heated' | 'place';

export interface Pool {
  readonly history: readonly PastBatch[];
  /** Batches struck under the same conditions, as they were. */
  readonly alike: readonly RootingRecord[];
  /** How many others lend weight, and in what they differ. */
  readonly others: number;
  readonly differences: readonly Difference[];
}

/** What a batch is worth beside one of the same conditions, for each thing in which it differs. Judgement. */
const SHARE: Readonly<Record<Difference, number>> = { cutting: 0.4, heated: 0.4, place: 0.6, medium: 0.8 };
const DIFFERENCES = Object.keys(SHARE) as Difference[];
/** Past so much weight more batches change little, and cost time. */
const ENOUGH_WEIGHT = 16;

/**
 * Forms the history for a batch under `conditions` from the same crop's earlier batches, the newest first in `past`. A
 * batch whose conditions have another published range has its days scaled by the ratio of the two ranges' centres, so
 * that a grower who is quicker than the table on the windowsill is expected to be so in the propagator.
 */
export function poolFor(
  conditions: RootingConditions,
  usualDays: DaysRange,
  past: readonly RecordedBatch[],
): Pool {
  const candidates = past
    .filter((batch) => batch.conditions.crop === conditions.crop)
    .map((batch) => ({ batch, differences: differencesOf(batch.conditions, conditions) }))
    .map((each) => ({ ...each, weight: each.differences.reduce((share, name) => share * SHARE[name], 1) }))
    .sort((a, b) => b.weight - a.weight);
  let sum = 0;
  const chosen = candidates.filter(({ weight }) => (sum += weight) <= ENOUGH_WEIGHT);
  const alike = chosen.filter(({ differences }) => differences.length === 0);
  return {
    history: chosen.map(({ batch, weight }) => ({ ...scaled(batch, usualDays), weight })),
    alike: alike.map(({ batch }) => batch),
    others: chosen.length - alike.length,
    differences: DIFFERENCES.filter((name) => chosen.some(({ differences }) => differences.includes(name))),
  };
}

function differencesOf(a: RootingConditions, b: RootingConditions): Difference[] {
  return DIFFERENCES.filter((name) => a[name] !== undefined && b[name] !== undefined && a[name] !== b[name]);
}

function scaled({ struck, checks, lost, final, usualDays }: RecordedBatch, to: DaysRange): RootingRecord {
  const ratio = Math.sqrt((to[0] * to[1]) / (usualDays[0] * usualDays[1]));
  const inTheirDays = (check: RootCheck): RootCheck => ({ ...check, day: check.day * ratio });
  return {
    struck,
    checks: ratio === 1 ? checks : checks.map(inTheirDays),
    ...(lost === undefined ? {} : { lost }),
    ...(final === undefined ? {} : { final }),
  };
}
