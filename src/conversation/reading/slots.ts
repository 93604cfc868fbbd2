/** Slots taken from an entry. */
import type { Plant } from '../../ledger/entry.js';
import { plantOf } from '../../ledger/reach.js';

/** The entry without these slots; the rest as it was. */
export function withoutSlots<T extends object>(entry: T, ...slots: readonly string[]): T {
  return Object.fromEntries(Object.entries(entry).filter(([slot]) => !slots.includes(slot))) as T;
}

/** What the words said of the plant, without what was assumed. */
export function plantSaid(entry: Plant, sources: Readonly<Record<string, string>>): Plant {
  const plant = plantOf(entry);
  return Object.fromEntries(Object.entries(plant).filter(([slot]) => sources[slot] === 'said')) as Plant;
}
