/** “And the watering as well”, “undo that other one too”, right behind an undo: another entry, taken back by what it is called, or the one before. */
import { entryNouns } from '../../language/grammar/entry-words.js';
import { leading } from '../../language/grammar/runs.js';
import { anyOf, whole } from '../../language/phrases.js';
import { isAmendment } from '../../ledger/posting.js';
import type { Sitting } from '../sitting.js';

/** So long after an undo is another meant by the same. */
const LATELY_MS = 600_000;
const TOO = new RegExp(
  `^(?:and|also|plus)(?: also)? (?:the|that|my) ((?:[\\p{L}'’]+ ){0,4}?(?:${entryNouns}))(?: (?:as well|too|also))?(?: please)?[.!]?$`,
  'iu',
);

const UNDO = anyOf`
  undo|scrap|scratch|delete|remove|cancel|forget|ignore|revert|scrub|wipe|take back
`;
const OTHER = anyOf`
  (the|that) other( one| entry| note)?|(the|that) one before( that| it)?
  another( one)?|one more|the next one( back)?
`;
const OTHER_TOO = whole`
  ${leading`and|also|plus|now|then|ok|no|sorry|please|pls`}${anyOf`
    ${UNDO} ${OTHER}|${OTHER}|take ${OTHER} (back|out|off)
  `}( (as well|too|also|back|again|please|pls|then))*
`;

/** The text as an undo of its own, where it only goes on with the one before; else as it was. */
export function undoneToo({ journal, origin, world }: Sitting, text: string): string {
  const last = journal.at(-1);
  const isUndo = last !== undefined && isAmendment(last.what) && last.what.entries.length === 0;
  if (!isUndo || origin.at - last.at > LATELY_MS || last.source?.chat !== world.chat) return text;
  const words = text.trim().toLowerCase().replace(/[.!]$/, '').replaceAll(',', '');
  if (OTHER_TOO.test(words) && !/^(?:another|one more)(?: one)?$/.test(words)) return 'undo that';
  const [, what] = TOO.exec(text.trim()) ?? [];
  return what === undefined ? text : `undo the ${what}`;
}
