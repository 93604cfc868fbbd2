/** "No wait, there were 2 more down the side": the last note counted too few. */
import { setSlots } from '../amending.js';
import { lastNote } from '../entry-meant.js';
import type { Sitting } from '../sitting.js';
import { LONGEST, withoutDoubts } from './doubts.js';
import { numberIn } from './few-words.js';

/** So long after a note is more found of the same. */
const WITHIN_MS = 12 * 3_600_000;
const HIDDEN =
  "(?:down|under|underneath|behind|beneath|beside|at|round|in|on|stuck|hiding|hidden|tucked|lurking|left|lying|that i|i(?:['’]d| had)? missed|still|there)";
const MORE = new RegExp(
  `^(?:(?:oh|ah|um|and|but|well)[, ]+)*(?:there(?:['’]s| is| was| are| were)|(?:i|we)(?:['’]ve|['’]d| have| had)? (?:just )?(?:found|missed|forgot|overlooked)|found|missed) (?:(?<number>\\d+|\\p{L}+) (?:more|others?|extra)|(?<one>another(?: one)?))(?: of (?:them|those))?(?: ${HIDDEN}\\b.{0,50}?)?(?:, (?:so |that makes |making |makes )(?<total>\\d+|\\p{L}+)(?: now| in all| altogether| in total)?)?[.!]?$`,
  'iu',
);

/** Whether so many more were found of what the last note counted, and that is put right. */
export function findsMore(sitting: Sitting, text: string): boolean {
  const words = text.length > LONGEST ? '' : withoutDoubts(text.trim());
  const { number, one, total } = MORE.exec(words)?.groups ?? {};
  const [last, another] = lastNote(sitting.ledger);
  if ((number ?? one) === undefined || !last || another) return false;
  const { origin, world } = sitting;
  const isOwn = last.journal.by === origin.by && last.journal.source?.chat === world.chat;
  const isLate = origin.at - last.journal.at > WITHIN_MS;
  const { kind, count } = last.entry as { readonly kind: string; readonly count?: unknown };
  if (!isOwn || isLate || typeof count !== 'number' || !/^(?:strike|receive|loss|potOn)$/.test(kind))
    return false;
  const more = one === undefined ? numberIn(sitting, number ?? '') : 1;
  const whole = total === undefined ? undefined : numberIn(sitting, total);
  if (more === null || (whole !== undefined && whole !== count + more)) return false;
  return setSlots(sitting, [last], { count: count + more });
}
