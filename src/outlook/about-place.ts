/** The part of a due that says which place it is about, and batches by place. */
import { type Batch, placeOf } from '../ledger/batch.js';
import type { Due, DueKind } from './due.js';

export function aboutPlace(
  kind: DueKind,
  place: string,
  occasion: string,
  batches: readonly Batch[],
): Pick<Due, 'key' | 'kind' | 'labels' | 'variety' | 'crop' | 'place' | 'count' | 'at' | 'asks'> {
  return {
    key: `${kind}:${place}:${occasion}`,
    kind,
    labels: batches.map(({ label }) => label),
    variety: null,
    crop: null,
    place,
    count: null,
    at: null,
    asks: false,
  };
}

/** Batches by where most of each stands; '' where nobody said. */
export function byPlace(batches: readonly Batch[]): Map<string, Batch[]> {
  const groups = new Map<string, Batch[]>();
  for (const batch of batches) {
    const place = placeOf(batch) ?? '';
    groups.set(place, [...(groups.get(place) ?? []), batch]);
  }
  return groups;
}
