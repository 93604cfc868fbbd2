/** From what a note says to what can be posted: dated, labelled, its batch found; or the question that stands before it. */
import type { Day } from '../../calendar/day.js';
import { lastDay } from '../../calendar/span.js';
import { alive, type Batch, began } from '../../ledger/batch.js';
import type { LoggedEntry, Plant } from '../../ledger/entry.js';
import { nextLabel } from '../../ledger/label.js';
import { batchLabelled, type Ledger, liveBatches, matching } from '../../ledger/ledger.js';
import type { Posting } from '../../ledger/posting.js';
import { named, plantOf } from '../../ledger/reach.js';
import { withoutSlots } from '../reading/slots.js';
import type { SlotAsk } from '../talk.js';

/** Kinds that are done to one batch: where several fit, which is meant must be asked. */
const onOneBatch = new Set<LoggedEntry['kind']>(['check', 'loss', 'potOn', 'plantOut', 'dispatch', 'pinch']);

export function isOnOneBatch(kind: LoggedEntry['kind']): boolean {
  return onOneBatch.has(kind);
}

/** Whether it is done to plants that the ledger has, one batch or several. */
export function isDoneToPlants(kind: LoggedEntry['kind']): boolean {
  return isOnOneBatch(kind) || kind === 'move' || kind === 'hardenOff';
}

/** Stands for all batches that are offered. */
export const allOfThem = '*';

/** Slots without which a kind cannot be posted; the plant is looked after apart. */
const needs: Partial<Record<LoggedEntry['kind'], readonly string[]>> = {
  strike: ['count'],
  receive: ['count'],
  check: ['rooted'],
  loss: ['count'],
  dispatch: ['count'],
  tend: ['care'],
  move: ['place'],
  remark: ['text'],
  target: ['count'],
  remind: ['text'],
  reading: ['celsius'],
};

export type Completed = { readonly posting: Posting; readonly assumed: boolean } | { readonly asks: SlotAsk };

/** `today` is the local day of the note; an entry keeps a label that it already carries. */
export function complete(ledger: Ledger, entry: LoggedEntry, today: Day): Completed {
  const missing = needs[entry.kind]?.find((slot) => !(slot in entry));
  if (missing !== undefined) return asking(entry, missing, optionsFor(ledger, entry, missing));
  const date = entry.date ?? today;
  if (entry.kind === 'strike' || entry.kind === 'receive') {
    if (entry.variety === undefined && entry.crop === undefined)
      return asking(entry, 'variety', knownVarieties(ledger));
    const begun: typeof entry & { label?: string } = withoutSlots(entry, 'batch');
    const crop = entry.crop ?? cropOf(ledger, entry.variety);
    const label = begun.label ?? nextLabel(ledger, entry.variety ?? null, crop);
    return {
      posting: { ...begun, ...(crop === null ? {} : { crop }), label, date } as Posting,
      assumed: false,
    };
  }
  if (!onOneBatch.has(entry.kind) && !isOfSome(ledger, entry)) {
    const plant = entry as LoggedEntry & Plant;
    const [only, another] = named(plant) ? matching(ledger, plantOf(plant)) : [];
    // What is wanted is wanted of the variety, whichever batches come to it.
    const isOfOne = only && !another && plant.batch === undefined && entry.kind !== 'target';
    const found = isOfOne ? withBatch(entry, only) : entry;
    return { posting: { ...found, date } as Posting, assumed: false };
  }
  return chosen(ledger, entry, today);
}

/** "Moved 8" of 12 in one batch and 8 in another: fewer than there are, and of which is not said. */
function isOfSome(ledger: Ledger, entry: LoggedEntry): boolean {
  if ((entry.kind !== 'move' && entry.kind !== 'hardenOff') || typeof entry.count !== 'number') return false;
  const from = entry.kind === 'move' ? entry.fromPlace : undefined;
  const fitting = matching(ledger, plantOf(entry), from);
  return fitting.length > 1 && entry.count < fitting.reduce((sum, batch) => sum + alive(batch), 0);
}

function chosen(ledger: Ledger, entry: LoggedEntry & Plant, today: Day): Completed {
  const date = entry.date ?? today;
  const plant = plantOf(entry);
  const from = entry.kind === 'move' ? entry.fromPlace : undefined;
  const fitting = matching(ledger, plant, from).filter((batch) => began(batch) <= lastDay(date));
  const [only, another] = fitting.length > 0 ? fitting : matching(ledger, plant);
  if (!only) return asking(entry, 'batch', liveBatches(ledger).map(labelOf), { refused: 'noBatch', plant });
  if (another) return asking(entry, 'batch', whichOf(entry, fitting.map(labelOf)));
  return { posting: { ...withBatch(entry, only), date } as Posting, assumed: !named(entry) };
}

/** The labels to choose from; all of them too, where the same can be done to each in full. */
export function whichOf(entry: LoggedEntry, labels: readonly string[]): readonly string[] {
  const whole = !('count' in entry) || entry.count === 'all';
  const each =
    ['potOn', 'pinch', 'plantOut'].includes(entry.kind) ||
    (entry.kind === 'loss' && 'count' in entry) ||
    (entry.kind === 'check' && typeof entry.rooted === 'string');
  return whole && each && labels.length > 1 ? [...labels, allOfThem] : labels;
}

/** The entry about that batch alone; what it is of is then the batch's to say, also after a renaming. */
export function withBatch(entry: LoggedEntry, batch: Batch): LoggedEntry {
  return { ...withoutSlots(entry, 'variety', 'crop'), batch: batch.label } as LoggedEntry;
}

export function asking(
  entry: LoggedEntry,
  slot: string,
  options: readonly unknown[],
  refusal?: SlotAsk['refusal'],
): { asks: SlotAsk } {
  return { asks: { ask: 'slot', entry, slot, options, then: [], ...(refusal ? { refusal } : {}) } };
}

/** What may be tapped as an answer; few, since a number is as quickly typed. */
export function optionsFor(ledger: Ledger, entry: LoggedEntry, slot: string): readonly unknown[] {
  const plant = entry as LoggedEntry & Plant;
  const batch = plant.batch === undefined ? undefined : batchLabelled(ledger, plant.batch);
  if (slot === 'rooted') return ['all', 'none'];
  if (slot === 'count' && batch && onOneBatch.has(entry.kind))
    return alive(batch) <= 6 ? Array.from({ length: alive(batch) }, (_, index) => index + 1) : [];
  if (slot === 'place') return [...ledger.places].slice(-6);
  if (slot === 'care') return ['mist', 'water', 'vent', 'feed', 'shade'];
  return [];
}

function knownVarieties(ledger: Ledger): readonly string[] {
  return [...ledger.varieties.keys()].slice(-6);
}

function cropOf(ledger: Ledger, variety: string | undefined): string | null {
  const lower = variety?.toLowerCase();
  for (const [name, crop] of ledger.varieties) if (name.toLowerCase() === lower) return crop;
  return null;
}

function labelOf(batch: Batch): string {
  return batch.label;
}
