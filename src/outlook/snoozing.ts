/** What a grower put off: hidden until the day that was named. */
import type { Day } from '../calendar/day.js';
import { isOf } from '../ledger/batch.js';
import type { Plant } from '../ledger/entry.js';
import type { Ledger } from '../ledger/ledger.js';
import type { Due } from './due.js';

export interface Snooze {
  readonly until: Day;
  /** Of these plants alone; without plant and keys, of all. */
  readonly plant?: Plant;
  /** Of these dues alone. */
  readonly keys?: readonly string[];
}

/** Each due that a snooze holds begins on the day to which it was put off. A frost waits for nobody. */
export function snoozed(all: readonly Due[], snoozes: readonly Snooze[], ledger: Ledger): readonly Due[] {
  if (snoozes.length === 0) return all;
  return all.map((due) => {
    if (due.kind === 'frostWarning') return due;
    const until = snoozes
      .filter((snooze) => holds(snooze, due, ledger))
      .reduce<Day>((latest, snooze) => (snooze.until > latest ? snooze.until : latest), due.from);
    return until > due.from ? { ...due, from: until, bestBy: until > due.bestBy ? until : due.bestBy } : due;
  });
}

function holds({ plant, keys }: Snooze, due: Due, ledger: Ledger): boolean {
  if (keys !== undefined) return keys.includes(due.key);
  if (plant === undefined) return true;
  return due.labels.some((label) => {
    const batch = ledger.batches.get(label);
    return batch !== undefined && isOf(batch, plant);
  });
}
