/** The ledger at the end of a conversation, in the contract's shape. */
import { alive, type Batch, placeOf } from '../../ledger/batch.js';
import type { LoggedEntry, Plant } from '../../ledger/entry.js';
import type { Ledger, StandingEntry } from '../../ledger/ledger.js';

export interface BatchRecord {
  readonly label: string;
  readonly variety: string | null;
  readonly crop: string | null;
  readonly struck: string | null;
  readonly received?: string;
  readonly count: number;
  readonly pots: number | null;
  readonly place: string | null;
  readonly alive: number;
  readonly rooted: number;
  readonly pottedOn: number;
  readonly plantedOut: number;
  readonly lost: number;
  readonly dispatched: number;
}

export function batchRecord(batch: Batch): BatchRecord {
  return {
    label: batch.label,
    variety: batch.variety,
    crop: batch.crop,
    struck: batch.struck,
    ...(batch.received === null ? {} : { received: batch.received }),
    count: batch.count,
    pots: batch.pots,
    place: placeOf(batch),
    alive: alive(batch),
    rooted: batch.rooted,
    pottedOn: batch.pottedOn,
    plantedOut: batch.plantedOut,
    lost: batch.lost,
    dispatched: batch.dispatched,
  };
}

/** Standing entries of the note contract's kinds, as they read now: a renamed plant by its name, `by` where there are several growers. */
export function entryRecords(ledger: Ledger): (LoggedEntry & { by?: string })[] {
  return ledger.standing.flatMap((each) => {
    const entry = entryRecord(ledger, each);
    return entry === null ? [] : [{ ...entry, ...(each.by === null ? {} : { by: each.by }) }];
  });
}

function entryRecord(ledger: Ledger, { entry, touched }: StandingEntry): LoggedEntry | null {
  switch (entry.kind) {
    case 'split':
    case 'merge':
    case 'rename':
    case 'teach':
      return null;
    case 'strike':
    case 'receive': {
      const { label, ...rest } = entry;
      return { ...rest, ...namesOf(ledger.batches.get(label)) };
    }
    default: {
      const { batch: label, variety } = entry as Plant;
      const isOfBatch = label !== undefined || variety !== undefined;
      const batch = isOfBatch ? ledger.batches.get(touched[0] ?? label ?? '') : undefined;
      return { ...entry, ...(batch ? namesOf(batch) : {}) };
    }
  }
}

function namesOf(batch: Batch | undefined): { variety?: string; crop?: string } {
  if (!batch) return {};
  return {
    ...(batch.variety === null ? {} : { variety: batch.variety }),
    ...(batch.crop === null ? {} : { crop: batch.crop }),
  };
}
