/** An entry on its way: the slots that are known, where each comes from, and what must be asked. */
import type { Ask, Source } from '../note.js';

export interface OpenEntry {
  readonly slots: Record<string, unknown>;
  readonly sources: Record<string, Source>;
  readonly asks: Omit<Ask, 'entry'>[];
}

/** Puts a value into its slot; one that is not known leaves it as it is. */
export function say(entry: OpenEntry, slot: string, value: unknown, source: Source = 'said'): void {
  if (value === undefined) return;
  entry.slots[slot] = value;
  entry.sources[slot] = source;
}

/** Leaves a slot to a question. */
export function ask(entry: OpenEntry, slot: string, options?: readonly unknown[]): void {
  entry.asks.push(options ? { slot, options } : { slot });
}
