/** What is told behind a correction to say how it came about, and is no deed of its own. */
import type { ReadEntry } from '../../language/note.js';
import type { Plant } from '../../ledger/entry.js';
import { isAmendment } from '../../ledger/posting.js';
import { named } from '../../ledger/reach.js';
import { onlyOfLastNote } from '../leaning/last-note.js';
import type { Sitting } from '../sitting.js';
import { plantSaid } from '../reading/slots.js';

/**
 * Whether the entry accounts for a correction made since line `since` of the journal. "It was three, I binned one as
 * well" of two: the one that makes three of them, and no fourth. "No, 8, one was hollow so I binned it" of nine
 * cuttings: the one that was never struck, and no loss of the eight.
 */
export function explains({ journal }: Sitting, since: number, { entry, sources }: ReadEntry): boolean {
  const count = countOf(entry);
  if (count === undefined || named(plantSaid(entry as Plant, sources))) return false;
  return journal.slice(since).some(({ what }) => {
    if (!isAmendment(what)) return false;
    const [now] = what.entries;
    const first = journal[what.amends - 1]?.what;
    const before = first && !isAmendment(first) ? countOf(first) : undefined;
    if (now === undefined || before === undefined) return false;
    const made = now.kind === 'strike' && entry.kind === 'loss' ? before - count : before + count;
    return (now.kind === entry.kind || made < before) && countOf(now) === made;
  });
}

/** Where plants stand only on their way. */
const VEHICLE = /\b(?:car|van|truck|lorry|boot|trunk|trailer|pick-?up|ute|bakkie)\b/i;
/** So long after plants were given are they carried away. */
const LATELY_MS = 3_600_000;

/** "I carried them out to the car" behind two that were given: those, and no move of what is left. */
export function carriesAway(sitting: Sitting, text: string, { entry, sources }: ReadEntry): boolean {
  const last = onlyOfLastNote(sitting, LATELY_MS, true);
  return (
    entry.kind === 'move' &&
    last?.entry.kind === 'dispatch' &&
    /\b(?:them|those|it)\b/i.test(text) &&
    !named(plantSaid(entry as Plant, sources)) &&
    VEHICLE.test(entry.place ?? '')
  );
}

function countOf(entry: object): number | undefined {
  const { count } = entry as { readonly count?: unknown };
  return typeof count === 'number' ? count : undefined;
}
