/** The second closed set of what a note can say: what changes how the ledger is kept, not what is in it. */
import type { Day } from '../../calendar/day.js';
import type { TimeOfDay } from '../../calendar/zone.js';
import type { Plant } from '../../ledger/entry.js';

/** A part of a batch that is split: so many, such a share of it, or what the others leave; where it stands, if that is told. */
export interface SplitPart {
  readonly count?: number;
  readonly share?: readonly [number, number];
  readonly rest?: true;
  readonly place?: string;
}

export type Instruction =
  /** `place` as said where it is no IANA name; the conversation resolves it. */
  | { readonly kind: 'setZone'; readonly zone?: string; readonly place?: string }
  /** `MM-DD`, usual last frost of spring or first of autumn. */
  | { readonly kind: 'setFrost'; readonly last?: string; readonly first?: string }
  | { readonly kind: 'setDigest'; readonly at: TimeOfDay | 'off' }
  | { readonly kind: 'setQuiet'; readonly from: TimeOfDay; readonly to: TimeOfDay }
  | { readonly kind: 'setUnits'; readonly units: 'metric' | 'us' }
  | { readonly kind: 'setWording'; readonly wording: 'GB' | 'US' }
  | { readonly kind: 'setDateOrder'; readonly order: 'DMY' | 'MDY' }
  | { readonly kind: 'snooze'; readonly until: Day; readonly at?: TimeOfDay; readonly plant?: Plant }
  | { readonly kind: 'switchLedger'; readonly name: string; readonly create: boolean }
  /** Parts of `plant` become batches of their own; `of`: how many there are to be in all, where that was said. */
  | {
      readonly kind: 'split';
      readonly plant: Plant;
      readonly parts: readonly SplitPart[];
      readonly of?: number;
    }
  | { readonly kind: 'merge'; readonly plants: readonly Plant[] }
  /** "X roots in 2–3 weeks". */
  | { readonly kind: 'teach'; readonly crop: string; readonly daysToRoot: readonly [number, number] }
  | { readonly kind: 'labels'; readonly plant?: Plant; readonly blank?: number }
  | {
      readonly kind: 'picture';
      readonly of: 'season' | 'rooting' | 'review';
      readonly plant?: Plant;
      readonly year?: number;
    }
  | { readonly kind: 'export'; readonly format: 'csv' | 'ics' | 'json' }
  | { readonly kind: 'invite' }
  | { readonly kind: 'erase' }
  | { readonly kind: 'search'; readonly words: string }
  | { readonly kind: 'missed' };
