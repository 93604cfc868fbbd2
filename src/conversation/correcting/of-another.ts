/** “Oh, and it was two Salt Harrier that died, not three” while we ask about another plant: no answer, and put right where it stands. */
import type { ReadNote } from '../../language/note.js';
import { plantOf } from '../../ledger/reach.js';
import { candidatesFor, isAbout } from './entry-meant.js';
import { isOther } from '../answers/plants-named.js';
import type { Sitting } from '../sitting.js';
import type { Plant } from '../../ledger/entry.js';
import type { Ask } from '../talk.js';
import { kindTold } from './few-words.js';
import { deniedNumber } from './number-denied.js';

/** So long after a note is a number of its plant put right. */
const JUST_MS = 15 * 60_000;

/** Whether the words put right an entry of another plant than the question is about. */
export function isOfAnother(
  sitting: Sitting,
  { asked }: Ask,
  text: string,
  { entries: [only, another] }: ReadNote,
): boolean {
  if (asked.ask !== 'slot' || !only || another || only.entry.kind !== 'amend') return false;
  const { ledger, origin } = sitting;
  const { set = {}, ...about } = only.entry;
  const plant = plantOf(about);
  if (!isOther(ledger, asked.entry as Plant, plant)) return false;
  // "Make that 15 Salt Harrier", of which 14 were noted just before.
  const last = ledger.standing.at(-1);
  const isJust = last?.entry.kind === asked.entry.kind && origin.at - last.journal.at <= JUST_MS;
  if (isJust && isAbout(ledger, last, plant) && !/\bmeant?\b/i.test(text)) return true;
  const denied = deniedNumber(text);
  const stands = ledger.standing.some((each) => {
    const { count, rooted } = each.entry as { readonly count?: unknown; readonly rooted?: unknown };
    return isAbout(ledger, each, plant) && (count ?? rooted) === denied;
  });
  if (denied !== undefined && stands) return true;
  const kind = kindTold(sitting, text, only.entry);
  return (
    kind !== undefined &&
    kind !== asked.entry.kind &&
    candidatesFor(ledger, only.entry, set, [], kind).length > 0
  );
}
