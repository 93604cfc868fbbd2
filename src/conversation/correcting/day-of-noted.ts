/** “Sorry, it was Thursday” while we ask how many of another plant: of what was just noted, of what waits, or of both. */
import type { ReadNote } from '../../language/note.js';
import type { StandingEntry } from '../../ledger/ledger.js';
import { ofLastNote } from '../leaning/last-note.js';
import type { Sitting } from '../sitting.js';
import type { Ask, SlotAsk } from '../talk.js';

/** So long after a note is its day put right in few words. */
const JUST_MS = 15 * 60_000;

/**
 * The entries noted just before whose day the words put right, and whether what waits is of that day too. Told in one
 * message, or on one day, both are; a day told of the first alone is put right there.
 */
export function dayOfNoted(
  sitting: Sitting,
  { askedAt }: Ask,
  { entry }: SlotAsk,
  { entries: [only] }: ReadNote,
): { readonly noted: readonly StandingEntry[]; readonly both: boolean } | null {
  const set = only?.entry.kind === 'amend' ? (only.entry.set ?? {}) : {};
  if (Object.keys(set).join() !== 'date') return null;
  const last = ofLastNote(sitting, JUST_MS);
  const [first] = last;
  if (!first || first.journal.postedAt > askedAt) return null;
  const { date } = entry as { readonly date?: unknown };
  const both = first.journal.postedAt === askedAt || first.entry.date === date;
  // Every entry has a day; one that is not today's was said.
  if (!both && (date !== undefined || first.entry.date === sitting.today)) return null;
  return { noted: last, both };
}
