/** The state that a journal folds into: what stands, what is alive and where. */
import { type Batch, isLive, isOf, standsAt } from './batch.js';
import { standingAt } from './place-meant.js';
import type { Plant } from './entry.js';
import type { JournalLine, Line, Posting } from './posting.js';

/** An entry that stands, corrected where it was amended; `line` is where it was first posted. */
export interface StandingEntry {
  readonly line: Line;
  readonly by: string | null;
  readonly journal: JournalLine;
  readonly entry: Posting;
  /** The batches it touched. */
  readonly touched: readonly string[];
}

export interface Ledger {
  /** By label, in the order in which they began. */
  readonly batches: ReadonlyMap<string, Batch>;
  /** In the order of the journal. */
  readonly standing: readonly StandingEntry[];
  /** Crop (or null) by variety name as first written. */
  readonly varieties: ReadonlyMap<string, string | null>;
  /** Names of places, in the order in which they were first told. */
  readonly places: ReadonlySet<string>;
  /** Every label that any line ever gave, those taken back among them. */
  readonly labels: ReadonlySet<string>;
  /** Days to root that the grower taught, by crop. */
  readonly taught: ReadonlyMap<string, readonly [number, number]>;
}

export const emptyLedger: Ledger = {
  batches: new Map(),
  standing: [],
  varieties: new Map(),
  places: new Set(),
  labels: new Set(),
  taught: new Map(),
};

/** Live batches, oldest first. */
export function liveBatches(ledger: Ledger): Batch[] {
  return [...ledger.batches.values()].filter(isLive);
}

/** Live batches of a plant, some of which stand at a place where one is named. */
export function matching(ledger: Ledger, plant: Plant, place?: string): Batch[] {
  if (plant.batch !== undefined) {
    const batch = batchLabelled(ledger, plant.batch);
    return batch && isLive(batch) ? [batch] : [];
  }
  return liveBatches(ledger).filter(
    (batch) => isOf(batch, plant) && (place === undefined || standsAt(batch, place)),
  );
}

/** The place of that name, or the only one that ends in it ("propagator" of "heated propagator"); undefined where none is known. */
export function knownPlace({ places }: Ledger, name: string | undefined): string | undefined {
  const lower = name?.toLowerCase();
  if (lower === undefined) return undefined;
  const [first, another] = standingAt([...places], (place) => place, lower);
  return another === undefined || first?.toLowerCase() === lower ? first : undefined;
}

/** The batch of that label, however it is cased. */
export function batchLabelled(ledger: Ledger, label: string): Batch | undefined {
  return ledger.batches.get(label) ?? ledger.batches.get(label.toUpperCase());
}

/** Standing entries of one kind, in the order told. */
export function entriesOf<K extends Posting['kind']>(
  ledger: Ledger,
  kind: K,
): (StandingEntry & { readonly entry: Extract<Posting, { kind: K }> })[] {
  return ledger.standing.filter(
    (each): each is StandingEntry & { readonly entry: Extract<Posting, { kind: K }> } =>
      each.entry.kind === kind,
  );
}
