/** "9 in the tubs", behind ten that were planted in the tubs: the same again, with its number put right. */
import { setSlots } from './amending.js';
import { onlyOfLastNote } from '../leaning/last-note.js';
import type { Sitting } from '../sitting.js';
import { numberIn } from './few-words.js';

/** So long after the note is it meant. */
const WITHIN_MS = 12 * 3_600_000;
const SO_MANY_THERE =
  /^(?:(?:no|sorry|actually|oops|wait)[,. ]+)*(?:only |just )?(?<number>\d+|\p{L}+)(?: of (?:them|those))? (?:went |are )?(?:in|on|into|onto|by|at|along|under|to) (?:the |my )?(?<place>.{2,40}?)[.!]?$/iu;

/** Whether the words tell the place of the last note's only deed with another number, and that is put right. */
export function countsThereAnew(sitting: Sitting, text: string): boolean {
  const { number = '', place = '' } = SO_MANY_THERE.exec(text.trim())?.groups ?? {};
  const last = onlyOfLastNote(sitting, WITHIN_MS);
  if (!last || !/^(?:plantOut|move|potOn|hardenOff|strike)$/.test(last.entry.kind)) return false;
  const { count, place: own } = last.entry as { readonly count?: unknown; readonly place?: string };
  if (own?.toLowerCase() !== place.toLowerCase() || typeof count !== 'number') return false;
  const now = numberIn(sitting, number);
  return now !== null && now > 0 && now !== count && setSlots(sitting, [last], { count: now });
}
