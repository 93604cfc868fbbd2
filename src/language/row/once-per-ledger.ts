/** What follows from all that a ledger holds: worked out once, however many texts are read before it changes. */
import type { NoteContext } from '../note.js';

interface Known<T> {
  readonly varieties: NoteContext['varieties'];
  readonly places: NoteContext['places'];
  readonly value: T;
}

/** The same work, done once for the same lists of batches, varieties and places, which nobody changes. */
export function oncePerLedger<T>(work: (context: NoteContext) => T): (context: NoteContext) => T {
  const known = new WeakMap<NonNullable<NoteContext['batches']>, Known<T>>();
  return (context) => {
    const { batches, varieties, places } = context;
    if (!batches) return work(context);
    const before = known.get(batches);
    if (before && before.varieties === varieties && before.places === places) return before.value;
    const value = work(context);
    known.set(batches, { varieties, places, value });
    return value;
  };
}
