/** "Put it back": what the turn before took back stands again. */
import { isAmendment, type Line } from '../../ledger/posting.js';
import type { Sitting } from '../sitting.js';
import { restore } from './undoing.js';

const PUT_BACK =
  /^(?:(?:oh|no|wait|sorry|actually|ah|so|please|can you|could you)[, ]+)*(?:(?:put|bring|take|add|leave) (?:it|that|them|those|the (?:last|first|other|second) one|that (?:last )?one) back(?: in)?|redo(?: (?:it|that))?|undo the undo|un-?undo(?: that)?|reinstate (?:it|that)|restore (?:it|that))\b/i;

/** "Oh, I only meant the one. Put that back": said behind why. */
const FIRST = /^[^.!?;]{3,70}[.!;,–—-]+ *(.{6,60})$/u;

/** Whether the words say so, right behind an undo, and that is done. */
export function putsBack(sitting: Sitting, text: string): boolean {
  if (!PUT_BACK.test(text.trim()) && !PUT_BACK.test(FIRST.exec(text.trim())?.[1] ?? '')) return false;
  const lines: Line[] = [];
  const last = sitting.journal.at(-1);
  for (const { what, postedAt, line } of sitting.journal.toReversed()) {
    if (postedAt !== last?.postedAt || !isAmendment(what) || what.entries.length > 0) break;
    lines.unshift(line);
  }
  if (lines.length === 0) return false;
  restore(sitting, lines);
  return sitting.reply.text.length > 0;
}
