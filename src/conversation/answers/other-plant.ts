/** "Ah no, that was the Salt Harrier", "no, the other one": of an entry that still waits for its number. */
import { withWholeNames } from '../../language/row/whole-names.js';
import type { ReadNote } from '../../language/note.js';
import { batchLabelled } from '../../ledger/ledger.js';
import type { LoggedEntry, Plant } from '../../ledger/entry.js';
import { named, plantOf } from '../../ledger/reach.js';
import { isOnOneBatch } from './completing.js';
import { doubtsFirst, LONGEST, withoutDoubts } from '../correcting/doubts.js';
import { slotIn } from '../correcting/few-words.js';
import { otherThan } from '../correcting/swapping.js';
import { isOther } from './plants-named.js';
import { noteOf } from '../reading/reading.js';
import type { Sitting } from '../sitting.js';
import { withoutSlots } from '../reading/slots.js';
import type { SlotAsk } from '../talk.js';

/** The same of the plant that is said instead, with the number that was too many for the first; null where none is. */
export function ofOtherPlant(
  sitting: Sitting,
  { entry, slot, refusal }: SlotAsk,
  text: string,
  read: ReadNote,
): LoggedEntry | null {
  const isOfBatch = isOnOneBatch(entry.kind);
  if ((!isOfBatch && entry.kind !== 'strike') || slot === 'batch' || text.length > LONGEST) return null;
  const own = entry as Plant;
  const plant =
    numberedPlant(sitting, own, slot, read) ??
    (isOfBatch ? (plantAmended(read) ?? otherBatch(sitting, own, text)) : null) ??
    plantAlone(sitting, text);
  // Cuttings that are still to be logged have no batch.
  if (!plant || (!isOfBatch && plant.batch !== undefined)) return null;
  const wanted = refusal && 'wanted' in refusal ? { [slot]: refusal.wanted } : {};
  return { ...withoutSlots(entry, 'variety', 'crop', 'batch'), ...wanted, ...plant } as LoggedEntry;
}

/** "Sorry, I meant the Salt Harrier, two of them": with a number of its own. */
function numberedPlant({ ledger }: Sitting, own: Plant, slot: string, { entries }: ReadNote): Plant | null {
  const [only, another] = entries;
  if (!only || another || only.entry.kind !== 'amend') return null;
  const { set = {}, ...about } = only.entry;
  if (Object.keys(set).join() !== slot || about.date !== undefined) return null;
  const said = plantOf(about);
  return isOther(ledger, own, said) ? { ...said, ...set } : null;
}

function plantAmended({ entries }: ReadNote): Plant | null {
  const [only, another] = entries;
  if (!only || another || only.entry.kind !== 'amend') return null;
  const { set = {}, ...about } = only.entry;
  const plant = plantOf(Object.keys(set).length > 0 ? set : about);
  const isAll = Object.keys(set).every((each) => each in plant);
  return isAll && named(plant) && about.date === undefined ? plant : null;
}

function otherBatch(sitting: Sitting, { batch }: Plant, text: string): Plant | null {
  const asked = batch === undefined ? undefined : batchLabelled(sitting.ledger, batch);
  const other = asked && otherThan(sitting, text, asked);
  return other ? { batch: other.label } : null;
}

/** "Sorry, Salt Harrier". */
function plantAlone(sitting: Sitting, text: string): Plant | null {
  const words = withWholeNames(noteOf(sitting, text)).trim().replace(/[.!]$/, '');
  // "Slate Widow even": better said so.
  const even = / (?:even|rather)$/i.test(words)
    ? slotIn(sitting, words.replace(/,? (?:even|rather)$/i, ''))
    : null;
  if (even && named(plantOf(even))) return plantOf(even);
  const set =
    doubtsFirst.test(words) || /^(?:no|nope|nah)[, ]/i.test(words)
      ? slotIn(sitting, withoutDoubts(words))
      : null;
  const plant = set ? plantOf(set) : {};
  return named(plant) ? plant : null;
}
