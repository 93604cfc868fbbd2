/** "Put it back": what the turn before took back stands again. */
import { isAmendment, type Line } from '../ledger/posting.js';
import type { Sitting } from './sitting.js';
import { restore } from './undoing.js';

const PUT_BACK =
  /^(?:(?:oh|no|wait|sorry|actually|ah|please|can you|could you)[, ]+)*(?:(?:put|bring|take) (?:it|that|them|those|the last one) back(?: in)?|redo(?: (?:it|that))?|undo the undo|un-?undo(?: that)?|reinstate (?:it|that)|restore (?:it|that))\b/i;

/** Whether the words say so, right behind an undo, and that is done. */
export function putsBack(sitting: Sitting, text: string): boolean {
  if (!PUT_BACK.test(text.trim())) return false;
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
