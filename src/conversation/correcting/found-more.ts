/** "No wait, there were 2 more down the side": the last note counted too few. */
import { setSlots } from './amending.js';
import { lastNote } from './entry-meant.js';
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

/** "There's only nine here". */
const FEWER =
  /^(?:(?:oh|ah|um|but|well)[, ]+)*(?:there(?:['’]s| is| are| was| were)|(?:i|we) (?:make it|get|count)) only (?<number>\d+|\p{L}+)(?: of (?:them|those))?(?: (?:here|there|in (?:it|there|here|the \p{L}+)))?[.!]?$/iu;

/** "I make it 34 of those": counted again, right behind what began. */
const COUNTED =
  /^(?:(?:oh|ah|um|but|well)[, ]+)*(?:i|we)(?:['’]ve)? (?:only )?(?:make it|get|got|count|counted|make that)(?: only)? (?<number>\d+|\p{L}+)(?: of (?:them|those|these))?(?: (?:here|in there|in all|altogether))?(?:, \p{Lu}\p{L}+)?[.!]?$/iu;

/** Whether so many more were found of what the last note counted, and that is put right. */
export function findsMore(sitting: Sitting, text: string): boolean {
  const words = text.length > LONGEST ? '' : withoutDoubts(text.trim());
  const { number, one, total } = MORE.exec(words)?.groups ?? {};
  const fewer = FEWER.exec(words)?.groups?.['number'];
  const anew = COUNTED.exec(words)?.groups?.['number'];
  const [last, another] = lastNote(sitting.ledger);
  if ((number ?? one ?? fewer ?? anew) === undefined || !last || another) return false;
  const { origin, world } = sitting;
  const isHere = last.journal.source?.chat === world.chat;
  const isOwn = isHere && (last.journal.by === origin.by || (fewer ?? anew) !== undefined);
  const isLate = origin.at - last.journal.at > WITHIN_MS;
  const { kind, count } = last.entry as { readonly kind: string; readonly count?: unknown };
  if (!isOwn || isLate || typeof count !== 'number' || !/^(?:strike|receive|loss|potOn)$/.test(kind))
    return false;
  const isBegun = kind === 'strike' || kind === 'receive';
  if (anew !== undefined && fewer === undefined) {
    const now = numberIn(sitting, anew);
    // A prompt that came since is answered first.
    const isAsked = sitting.talk.prompts.some((each) => each.open && each.givenAt > last.journal.postedAt);
    if (!isBegun || isAsked || now === null || now < count / 2 || now > count * 2) return false;
    return setSlots(sitting, [last], { count: now });
  }
  if (fewer !== undefined) {
    const left = numberIn(sitting, fewer);
    return isBegun && left !== null && left > 0 && left < count && setSlots(sitting, [last], { count: left });
  }
  const more = one === undefined ? numberIn(sitting, number ?? '') : 1;
  const whole = total === undefined ? undefined : numberIn(sitting, total);
  if (more === null || (whole !== undefined && whole !== count + more)) return false;
  return setSlots(sitting, [last], { count: count + more });
}
