/** What a clause says of one plant: the slots of an entry as they were told, before the ledger is asked. */
import type { Cause, CuttingType } from '../../../ledger/entry.js';
import type { PlantWords, When } from '../../pieces/pieces.js';
import type { Quantity } from '../../pieces/quantities/quantity.js';
import type { WhichBatch } from '../../lots/which-batch.js';

export interface Draft {
  readonly quantity?: Quantity;
  readonly plant?: PlantWords;
  readonly known?: boolean;
  /** The crop that the context has for the variety. */
  readonly ofCrop?: string;
  /** "Them", "those": what was named before. */
  readonly pronoun?: boolean;
  readonly pots?: number;
  readonly each?: number;
  readonly potsVague?: boolean;
  readonly size?: string;
  readonly place?: string;
  readonly fromPlace?: string;
  readonly medium?: string;
  readonly cutting?: CuttingType;
  readonly hormone?: boolean;
  readonly cause?: Cause;
  readonly when?: When;
  readonly celsius?: number;
  readonly to?: string;
  /** Which of several batches is meant; it is no slot. */
  readonly which?: WhichBatch;
  /** "Everything except the Marble Wren": what is left out; which others are meant, nobody has said. */
  readonly leftOut?: readonly LeftOut[];
}

/** A plant, or one of several lots, that an act leaves out. */
export interface LeftOut {
  readonly plant?: PlantWords;
  readonly which?: WhichBatch;
}

/** A draft that is still being told. */
export type OpenDraft = { -readonly [Slot in keyof Draft]: Draft[Slot] };
