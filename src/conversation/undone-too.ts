/** “And the watering as well”, right behind an undo: another entry, taken back by what it is called. */
import { entryNouns } from '../language/grammar/entry-words.js';
import { isAmendment } from '../ledger/posting.js';
import type { Sitting } from './sitting.js';

/** So long after an undo is another meant by the same. */
const LATELY_MS = 600_000;
const TOO = new RegExp(
  `^(?:and|also|plus)(?: also)? (?:the|that|my) ((?:[\\p{L}'’]+ ){0,4}?(?:${entryNouns}))(?: (?:as well|too|also))?(?: please)?[.!]?$`,
  'iu',
);

/** The text as an undo of its own, where it only goes on with the one before; else as it was. */
export function undoneToo({ journal, origin, world }: Sitting, text: string): string {
  const last = journal.at(-1);
  const isUndo = last !== undefined && isAmendment(last.what) && last.what.entries.length === 0;
  if (!isUndo || origin.at - last.at > LATELY_MS || last.source?.chat !== world.chat) return text;
  const [, what] = TOO.exec(text.trim()) ?? [];
  return what === undefined ? text : `undo the ${what}`;
}
