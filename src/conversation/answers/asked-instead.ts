/** What is asked where an entry could not stand as it was told. */
import type { LoggedEntry } from '../../ledger/entry.js';
import type { Refusal } from '../../ledger/refusal.js';
import { withoutSlots } from '../reading/slots.js';
import type { SlotAsk } from '../talk.js';

/** The question that would put a refused entry right; null where none would. */
export function askFor(entry: LoggedEntry, refusal: Refusal): SlotAsk | null {
  const about = (slot: string, options: readonly unknown[], batch?: string): SlotAsk => {
    const rest = withoutSlots(entry, slot);
    const known = batch === undefined ? rest : { ...rest, batch };
    return { ask: 'slot', entry: known as LoggedEntry, slot, options, then: [], refusal };
  };
  switch (refusal.refused) {
    case 'tooMany':
      return about('count', refusal.there > 0 ? [refusal.there] : [], refusal.batch);
    case 'tooManyRooted':
      return about('rooted', [refusal.atMost], refusal.batch);
    case 'beforeItBegan':
      return about('date', [], refusal.batch);
    case 'countMissing':
    case 'countNotPositive':
      return about('count', []);
    case 'severalBatches':
      return about('batch', refusal.labels);
    case 'noBatch':
    case 'noneLeft':
    case 'labelTaken':
    case 'unlikeBatches':
    case 'noSuchLine':
      return null;
  }
}
