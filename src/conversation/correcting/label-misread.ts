/** “I misread the label, it’s Mother Thimble”: another name for the plant named there, or of the last note. */
import { amend, setSlots } from './amending.js';
import { onlyOfLastNote } from '../leaning/last-note.js';
import { renames } from './renaming.js';
import type { Sitting } from '../sitting.js';
import { LONGEST } from './doubts.js';

/** So long after a note is its label read again. */
const LATELY_MS = 7 * 24 * 3_600_000;
const MISREAD =
  /^(?:(?:oh|no|sorry|oops|ah|actually)[, ]+)*(?:(?:i(?:['’]ve| have)? |we )?(?:misread|misheard|mixed up|got) the (?:label|tag|name)(?: wrong)?|wrong (?:label|name)|the (?:label|tag|name) was wrong)(?:[,.:;]| -+)? (?:it['’]?s|it is|it was|that['’]?s|it should be|should be|it says|(?:the )?(?<old>[\p{L}'’ -]{2,40}?) (?:is|are|was|should be)) (?:really |actually |called )*(?<name>[\p{L}'’ -]{2,40})[.!]?$/iu;
/** Each word with a capital. */
const WRITTEN = /^\p{Lu}[\p{L}'’-]*(?: (?:of|the|and|de|la|\p{Lu}[\p{L}'’-]*))*$/u;

/** "No, Morn Thimble", "Morn Thimble, I mean": right behind a renaming. */
const RENAMED_AGAIN =
  /^(?:(?:no|nope|sorry|wait|actually|oops|i mean)[, ]+)+(?:it['’]?s |with )?(?<name>[\p{L}'’ -]{2,40})[.!]?$/iu;
const JUST_MS = 15 * 60_000;

function renamedAgain(sitting: Sitting, text: string): boolean {
  const { ledger, origin } = sitting;
  const last = ledger.standing.at(-1);
  if (last?.entry.kind !== 'rename' || origin.at - last.journal.at > JUST_MS) return false;
  const name = RENAMED_AGAIN.exec(text.trim())?.groups?.['name'] ?? '';
  const words = new Set((last.entry.to.variety ?? '').toLowerCase().split(' '));
  const isLike = name.includes(' ') && name.split(' ').some((word) => words.has(word.toLowerCase()));
  return isLike && WRITTEN.test(name) && setSlots(sitting, [last], { variety: name });
}

/** Whether the words give the plant its name anew, and that is done or asked about. */
export function misreadLabel(sitting: Sitting, text: string): boolean {
  if (text.length > LONGEST) return false;
  if (renamedAgain(sitting, text)) return true;
  const { old, name = '' } = MISREAD.exec(text.trim())?.groups ?? {};
  if (name === '') return false;
  const { ledger } = sitting;
  const known = (said: string) =>
    [...ledger.varieties.keys()].find((each) => each.toLowerCase() === said.toLowerCase());
  const variety = known(name);
  const last = onlyOfLastNote(sitting, LATELY_MS);
  if (old === undefined && variety !== undefined && last) {
    amend(sitting, { kind: 'amend', set: { variety } }, [last.line]);
    return true;
  }
  const [label, another] = last?.touched ?? [];
  const own = label === undefined || another !== undefined ? undefined : ledger.batches.get(label)?.variety;
  const from = old === undefined ? own : known(old);
  return from != null && variety === undefined && WRITTEN.test(name) && renames(sitting, from, name);
}
