/** "Into 9cm", "two pots of four, in the propagator": what the grower's last note left unsaid, said behind it. */
import type { LoggedEntry } from '../ledger/entry.js';
import { actWords } from './act-words.js';
import { setSlots } from './amending.js';
import { onlyOfLastNote } from './last-note.js';
import { readIn } from './reading.js';
import type { Sitting } from './sitting.js';

/** So long a note may still be added to. */
const OPEN_MS = 15 * 60_000;
/** No bench holds so many, so that a number in what is added shows itself. */
const NUMBER = 7_000;
const KINDS: ReadonlySet<string | undefined> = new Set(['strike', 'potOn', 'plantOut', 'dispatch']);
const ADDED = ['pots', 'potSize', 'medium', 'place', 'cutting', 'to'] as const;

/** "They are in a jam jar on the windowsill". */
const THEY_ARE =
  /^(?:(?:and|oh|also) )*(?:they|they['’]re|these|those|it|it['’]s|all)(?: are| is| were| went)?(?: all| both| now| just)? (?=(?:in|into|on|at|under|by|with|to) )/i;

/** Whether the words are a slot or two that the last note lacks, and they are set. */
export function addsToLast(sitting: Sitting, text: string): boolean {
  const words = text
    .trim()
    .replace(/(?<![.!])[.!]+$/, '')
    .replace(THEY_ARE, '');
  if (
    !/^(?:and |oh and |oh |also )?(?:in|into|to|with|on|at|for|all in|one|two|three|four|five|six|\d{1,2}) /i.test(
      words,
    )
  )
    return false;
  const only = words.length > 60 ? null : onlyOfLastNote(sitting, OPEN_MS);
  if (!only || !KINDS.has(only.entry.kind)) return false;
  const act = `${actWords[only.entry.kind as LoggedEntry['kind']]} ${NUMBER} dahlia`;
  const read = readIn(sitting, `${act}, ${words.replace(/^(?:and|oh and|oh|also) /i, '')}`);
  const [told, more] = read.entries;
  if (!told || more || told.entry.kind !== only.entry.kind) return false;
  const { count, date } = told.entry as { count?: unknown; date?: unknown };
  if (count !== NUMBER || date !== undefined) return false;
  const has = only.entry as unknown as Record<string, unknown>;
  const says = told.entry as unknown as Record<string, unknown>;
  const set = Object.fromEntries(
    ADDED.filter((slot) => slot in says && !(slot in has)).map((slot) => [slot, says[slot]]),
  );
  if (Object.keys(set).length === 0) return false;
  setSlots(sitting, [only], set);
  return true;
}
