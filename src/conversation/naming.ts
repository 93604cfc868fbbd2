/** "It's called Aunt Fanny", "the variety is Quiet Lane": the name that the last note's plant was told without. */
import { setSlots } from './amending.js';
import { onlyOfLastNote } from './last-note.js';
import type { Sitting } from './sitting.js';

/** So long after the note its plant may still be named. */
const OPEN_MS = 3 * 24 * 3_600_000;
const KINDS: ReadonlySet<string> = new Set(['strike', 'receive', 'stock']);

/** Said to be a name, which may then be written in small letters. */
const CALLED =
  /^(?:(?:oh|and|ps|sorry),? )*(?:(?:it|they|that|those|these|this|(?:the|that|this) (?:one|plant|\p{Ll}+))(?:['’]?s|['’]?re| is| are| was| were)? (?:called|named)|(?:the |its |their )?(?:variety|cultivar|name)(?:['’]?s| is| was|:)?) (.+)$/iu;
/** "That's Aunt Fanny by the way": a name if it is written as one. */
const IS = /^(?:(?:oh|and|ps|sorry),? )*(?:it|they|that|those|these|this)(?:['’]?s|['’]?re| is| are) (.+)$/iu;
const AFTERWORDS = /,? (?:btw|by the way|i think|actually|on the label|apparently)$/i;
/** Two words or more, or one that no sentence would begin with: each with a capital. */
const WRITTEN = /^\p{Lu}[\p{L}'’-]*(?: (?:of|the|and|de|la|\p{Lu}[\p{L}'’-]*))+$/u;

/** Whether the words name it, and it is named. */
export function namesLast(sitting: Sitting, text: string): boolean {
  const told = text
    .trim()
    .replace(/(?<![.!])[.!]+$/, '')
    .replace(AFTERWORDS, '');
  const called = CALLED.exec(told)?.[1];
  const name = (called ?? IS.exec(told)?.[1] ?? '').replace(/^["'“‘]|["'”’]$/gu, '').trim();
  const isName = called === undefined ? WRITTEN.test(name) : /^\p{L}[\p{L}\d '’-]*$/u.test(name);
  if (!isName || name.split(' ').length > 4 || name.length > 40) return false;
  const last = onlyOfLastNote(sitting, OPEN_MS);
  if (!last || !KINDS.has(last.entry.kind) || 'variety' in last.entry) return false;
  return setSlots(sitting, [last], { variety: called === undefined ? name : inCapitals(name) });
}

const inCapitals = (name: string): string =>
  name.replace(/(?<=^|\s)\p{Ll}/gu, (letter) => letter.toUpperCase());
