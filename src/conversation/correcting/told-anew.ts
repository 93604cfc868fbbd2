/** “It was Sunday I potted them, and only seven”, right behind an undo: what was taken back, told anew. */
import type { Plant } from '../../ledger/entry.js';
import { isAmendment, type Posting } from '../../ledger/posting.js';
import type { Sitting } from '../sitting.js';

/** So long after an undo is it told anew. */
const LATELY_MS = 3_600_000;

/** What was taken back last in this chat, where that was lately and is of the kind told, and of the plant where one is given; else null. */
export function takenBackLast(
  { journal, ledger, origin, world }: Sitting,
  kind: Posting['kind'] | undefined,
  plant?: Plant,
): Posting | null {
  const last = journal.at(-1);
  if ((kind ?? plant) === undefined || !last || !isAmendment(last.what) || last.what.entries.length > 0)
    return null;
  if (origin.at - last.at > LATELY_MS || last.source?.chat !== world.chat) return null;
  const first = journal[last.what.amends - 1]?.what;
  if (!first || isAmendment(first) || (kind !== undefined && first.kind !== kind)) return null;
  const { batch, variety } = first as Plant;
  const own = variety ?? ledger.batches.get(batch ?? '')?.variety ?? undefined;
  const isMeant =
    plant === undefined ||
    (plant.batch !== undefined && plant.batch === batch) ||
    (plant.variety !== undefined && plant.variety.toLowerCase() === own?.toLowerCase());
  return isMeant ? first : null;
}

/** "It was two of the Salt Harrier", said of what was just taken back. */
const CLEFT =
  /^(?:(?:no|sorry|oh|actually|and)[, ]+)*(?:it|that|they|there) (?:was|were)\b|\b(?:it|that) was[.!]?$/i;

/** What was taken back last of that plant, where the words tell it anew; else null. */
export function toldAnew(sitting: Sitting, kind: Posting['kind'] | undefined, plant: Plant): Posting | null {
  return CLEFT.test(sitting.text) ? takenBackLast(sitting, kind, plant) : null;
}
