/** The pieces of an utterance: what each run of words is, before anything is made of it. */
import type { Day } from '../../calendar/day.js';
import type { Span } from '../../calendar/span.js';
import type { TimeOfDay } from '../../calendar/zone.js';
import type { CuttingType } from '../../ledger/entry.js';
import type { VerbSense } from '../row/lexicon.js';
import type { Quantity } from './quantities/quantity.js';

/** What the words say of a plant; `batch` only where a label was said. */
export interface PlantWords {
  readonly variety?: string;
  readonly crop?: string;
  readonly batch?: string;
}

/** A phrase of time; `ask` where it names no day there is, or more than one. */
export interface When {
  readonly past: Day | Span | 'ask' | undefined;
  readonly future: Day | Span | 'ask' | undefined;
  readonly time?: TimeOfDay;
  /** The words, as said. */
  readonly words: string;
}

interface Run {
  /** First token and the one past the last. */
  readonly from: number;
  readonly to: number;
}

export type Piece = Run &
  (
    | {
        readonly is: 'plant';
        readonly plant: PlantWords;
        /** Known to the context or the crop list. */ readonly known: boolean;
        /** The crop that the context has for the variety. */ readonly ofCrop?: string;
        /** A new name told behind what was taken of its crop: "12 dahlia cuttings today copper nan". */ readonly besideCuttings?: true;
      }
    /** `ofOurs`: "of the", "of my" belongs to it: of plants that there are. */
    | { readonly is: 'count'; readonly quantity: Quantity; readonly ofOurs?: true }
    | { readonly is: 'pots'; readonly pots?: number; readonly each?: number; readonly vague?: true }
    | { readonly is: 'size'; readonly size: string; readonly container: boolean }
    | { readonly is: 'celsius'; readonly celsius: number }
    /** `struck`: right before a plant that was struck on this day. */
    | { readonly is: 'when'; readonly when: When; readonly struck?: true }
    | {
        readonly is: 'place';
        readonly place: string;
        readonly known: boolean;
        readonly prep: string | undefined;
      }
    | { readonly is: 'medium'; readonly medium: string }
    | { readonly is: 'cutting'; readonly cutting: CuttingType }
    | {
        readonly is: 'money';
        /** The number of a house or a page, and no price. */ readonly numbers: boolean;
      }
    | { readonly is: 'break'; readonly hard: boolean; readonly mark: string }
    | {
        readonly is: 'word';
        readonly text: string;
        readonly verb?: VerbSense;
        /** Somebody, by its capital and where it stands: "took Pauline 3 Salt Harrier". */
        readonly somebody?: true;
      }
  );

export type PieceOf<Is extends Piece['is']> = Extract<Piece, { readonly is: Is }>;
