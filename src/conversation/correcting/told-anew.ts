/** “It was Sunday I potted them, and only seven”, right behind an undo: what was taken back, told anew. */
import type { Plant } from '../../ledger/entry.js';
import { isAmendment, type Posting } from '../../ledger/posting.js';
import { readIn } from '../reading/reading.js';
import { isLogged, takeNote } from '../noting.js';
import type { Sitting } from '../sitting.js';
import { numberOf, type Slots } from './entry-meant.js';
import { deniedNumber } from './number-denied.js';
import { BEFALLS } from './renaming.js';

/** So long after an undo is it told anew. */
const LATELY_MS = 3_600_000;

/** What was taken back last in this chat, where that was lately, of the kind and of the plant where one is given; else null. */
export function takenBackLast(
  { journal, ledger, origin, world }: Sitting,
  kind: Posting['kind'] | undefined,
  plant?: Plant,
): Posting | null {
  const last = journal.at(-1);
  if (!last || !isAmendment(last.what) || last.what.entries.length > 0) return null;
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

/**
 * What was taken back last and is told anew, and what is to be set in it: of that plant where the words say "it was" or deny
 * the number that it had, of another where they say "it was" of that number; else null.
 */
export function toldAnew(
  sitting: Sitting,
  kind: Posting['kind'] | undefined,
  plant: Plant,
  set: Slots,
): { readonly posting: Posting; readonly set: Slots } | null {
  const { text } = sitting;
  const same = takenBackLast(sitting, kind, plant);
  const denied = deniedNumber(text);
  if (same) {
    const isDenied = denied !== undefined && numberOf(same) === denied;
    return CLEFT.test(text) || isDenied ? { posting: same, set } : null;
  }
  const other = CLEFT.test(text) ? takenBackLast(sitting, kind) : null;
  const isOther = other && BEFALLS.has(other.kind) && numberOf(other) === set['count'];
  return isOther ? { posting: other, set: { ...plant, ...set } } : null;
}

/** "Three Salt Harrier lost, not four", where no loss was told: a note, so far as it is of that kind. */
export function takesAsNote(sitting: Sitting, kind: Posting['kind'] | undefined): boolean {
  const told = readIn(sitting, sitting.text.replace(/,? not (?:\d+|\p{L}+)\b.*$/iu, ''));
  const isOfKind = told.entries.every(({ entry }) => isLogged(entry) && entry.kind === kind);
  const isPlain =
    deniedNumber(sitting.text) !== undefined && told.entries.length > 0 && told.asks.length === 0;
  if (!kind || !BEFALLS.has(kind) || !isOfKind || !isPlain) return false;
  takeNote(sitting, told);
  return true;
}
