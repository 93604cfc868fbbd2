/** Something to do: derived from the ledger, never stored. */
import type { Day } from '../calendar/day.js';
import type { TimeOfDay } from '../calendar/zone.js';
import type { FrostDates } from '../horticulture/plant-out.js';
import type { Pinch, PotOnSign } from '../horticulture/crops.js';
import type { RootingOutlook } from './rooting-outlook.js';

export type DueKind =
  | 'check'
  | 'potOn'
  | 'pinch'
  | 'hardenOff'
  | 'plantOut'
  | 'strike'
  | 'clearOut'
  | 'bringIn'
  | 'frostWarning'
  | 'tend'
  | 'reminder';

export interface Due {
  /** Kind, what it is about and which occasion: the same thing has the same key whenever it is derived. */
  readonly key: string;
  readonly kind: DueKind;
  /** Batches, where it is about some. */
  readonly labels: readonly string[];
  readonly variety: string | null;
  readonly crop: string | null;
  readonly place: string | null;
  /** Plants or cuttings that it is about; null where that says nothing. */
  readonly count: number | null;
  readonly from: Day;
  /** After this day it is late. */
  readonly bestBy: Day;
  /** After this day it is no longer worth saying; null where it stays true until done. */
  readonly tooLateAfter: Day | null;
  /** Time of day, where one was asked for. */
  readonly at: TimeOfDay | null;
  /** A question that wants an answer, rather than a statement. */
  readonly asks: boolean;
  readonly why: Why;
}

/** The ground that it stands on, as data; the words come last. */
export type Why =
  | {
      readonly because: 'rootsExpected';
      readonly day: number;
      readonly rooting: RootingOutlook;
      /** Put off to the end of the winter's rest. */
      readonly rested: boolean;
    }
  | { readonly because: 'nothingMore'; readonly day: number; readonly rooting: RootingOutlook }
  | {
      readonly because: 'rooted';
      readonly rooted: number;
      readonly of: number;
      readonly sign: PotOnSign | null;
    }
  | { readonly because: 'grown'; readonly pottedOn: Day; readonly pinch: Pinch }
  | { readonly because: 'plantingNears'; readonly plantOutOn: Day; readonly frost: FrostDates | null }
  | { readonly because: 'hardened'; readonly since: Day | null; readonly frost: FrostDates | null }
  | {
      readonly because: 'tooFew';
      readonly want: number;
      readonly by: Day;
      /** Plants and cuttings of it now. */
      readonly living: number;
      /** That they are enough. */
      readonly chance: number;
      readonly take: number;
    }
  | { readonly because: 'firstFrostNears'; readonly oneInTen: Day }
  | { readonly because: 'minimum'; readonly celsius: number; readonly on: Day }
  /** `covered`: some of them root under a cover; else all in open air, on the dry side. */
  | { readonly because: 'rooting'; readonly batches: number; readonly covered: boolean }
  | { readonly because: 'asked'; readonly text: string };

export function isLate(due: Due, today: Day): boolean {
  return due.bestBy < today;
}

export function isDue(due: Due, today: Day): boolean {
  return due.from <= today && (due.tooLateAfter === null || today <= due.tooLateAfter);
}

/** After "not yet", it is asked about again so many days later. Judgement: long enough for something to have changed. */
export function daysUntilAskedAgain(kind: DueKind): number {
  switch (kind) {
    case 'check':
      return 2;
    case 'potOn':
    case 'pinch':
      return 4;
    default:
      return 3;
  }
}
