/** The part of a due that says which batch and which occasion it is about. */
import { type Batch, placeOf } from '../ledger/batch.js';
import type { Due, DueKind } from './due.js';

/** `occasion` tells one asking of a kind from the next: how often it was done before. */
export function aboutBatch(
  batch: Batch,
  kind: DueKind,
  occasion: number | string,
): Pick<Due, 'key' | 'kind' | 'labels' | 'variety' | 'crop' | 'place' | 'at' | 'tooLateAfter'> {
  return {
    key: `${kind}:${batch.label}:${occasion}`,
    kind,
    labels: [batch.label],
    variety: batch.variety,
    crop: batch.crop,
    place: placeOf(batch),
    at: null,
    tooLateAfter: null,
  };
}
