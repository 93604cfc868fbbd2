/** A ledger's state while it is being written; batches themselves are never changed in place. */
import type { Batch } from './batch.js';
import type { Ledger, StandingEntry } from './ledger.js';

export interface Draft extends Ledger {
  readonly batches: Map<string, Batch>;
  readonly standing: StandingEntry[];
  readonly varieties: Map<string, string | null>;
  readonly places: Set<string>;
  readonly labels: Set<string>;
  readonly taught: Map<string, readonly [number, number]>;
}

/** A copy that may be written to. */
export function draftOf(ledger: Ledger): Draft {
  return {
    batches: new Map(ledger.batches),
    standing: [...ledger.standing],
    varieties: new Map(ledger.varieties),
    places: new Set(ledger.places),
    labels: new Set(ledger.labels),
    taught: new Map(ledger.taught),
  };
}
