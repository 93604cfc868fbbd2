/** Why an entry cannot follow from what the ledger holds; `words/` turns it into a sentence. */
import type { Day } from '../calendar/day.js';
import type { Plant } from './entry.js';
import type { Line } from './posting.js';

export type Refusal =
  | { readonly refused: 'noBatch'; readonly plant: Plant }
  | { readonly refused: 'severalBatches'; readonly plant: Plant; readonly labels: readonly string[] }
  /** More than are there: `there` are alive, `wanted` were named. */
  | { readonly refused: 'tooMany'; readonly batch: string; readonly there: number; readonly wanted: number }
  /** Nothing is left to do it to. */
  | { readonly refused: 'noneLeft'; readonly batch: string }
  | {
      readonly refused: 'tooManyRooted';
      readonly batch: string;
      readonly atMost: number;
      readonly wanted: number;
    }
  | { readonly refused: 'beforeItBegan'; readonly batch: string; readonly began: Day; readonly date: Day }
  | { readonly refused: 'countMissing'; readonly plant: Plant }
  | { readonly refused: 'countNotPositive'; readonly wanted: number }
  | { readonly refused: 'labelTaken'; readonly label: string }
  | { readonly refused: 'unlikeBatches'; readonly labels: readonly string[] }
  | { readonly refused: 'noSuchLine'; readonly line: Line };

/** A line of the journal that no longer follows once an earlier one is amended. */
export interface Conflict {
  readonly line: Line;
  readonly refusal: Refusal;
}

export function isRefusal<T extends object>(value: T | Refusal): value is Refusal {
  return 'refused' in value;
}
