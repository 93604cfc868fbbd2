/** "Took four in fact, she rang to say": what whoever had the plants tells of their number, and "two might pull through, so call it one" of a loss. */
import { anyOf } from '../../language/phrases.js';
import type { StandingEntry } from '../../ledger/ledger.js';
import { setSlots } from './amending.js';
import type { Sitting } from '../sitting.js';
import { LONGEST, withoutDoubts } from './doubts.js';
import { numberIn } from './few-words.js';
import { deniedNumber } from './number-denied.js';

/** So long after a note is it put right so. */
const LATELY_MS = 3 * 24 * 3_600_000;

const WHO = String.raw`(?:s?he|they|\p{Lu}[\p{L}'’]+)`;
const REPORTS = String.raw`(?:rang|phoned|called|texted|messaged|emailed|wrote|says|said|told|tells)(?: me| us| back)?(?: (?:just now|last night|this morning|today|yesterday|earlier|later|after))?(?: to (?:say|tell me|let me know)| that| so)?`;
const NUMBER = String.raw`(?:only |just )?(?<number>\d+|\p{L}+)(?: of (?:them|those))?(?:,? (?:in fact|actually|in the end|after all|altogether|all told))?`;
const HAD = '(?:took|had|got|bought|has|ended up with)';

const FORMS: readonly RegExp[] = [
  `(?:${WHO} )?${HAD} ${NUMBER}, (?:and )?(?:${WHO} )?(?:has |['’]s )?(?:just )?${REPORTS}`,
  `(?:it was |that was )?${NUMBER}(?: (?:that )?${WHO} ${HAD})?, (?:and )?${WHO} (?:has |['’]s )?(?:just )?${REPORTS}`,
  `${WHO} (?:has |['’]s )?(?:just )?${REPORTS} (?:that )?(?:it was |there were )?${NUMBER}(?: (?:that )?${WHO} ${HAD})?`,
  `${WHO} (?:has |['’]s )?(?:just )?${REPORTS} (?:that )?${WHO} ${HAD} ${NUMBER}`,
].map((form) => new RegExp(`^${form}[.!]?$`, 'u'));
/** Cheap to ask, before the forms are tried. */
const REPORTED = /\b(?:rang|phoned|called|texted|messaged|emailed|wrote|says|said|told|tells)\b/i;

/** Whether the words tell by somebody's report how many they had of what was last given or sold, and that is put right. */
function reportsNumber(sitting: Sitting, words: string): boolean {
  if (!REPORTED.test(words)) return false;
  const number = FORMS.map((form) => form.exec(words)?.groups?.['number']).find((each) => each !== undefined);
  const last = lastOf(sitting, 'dispatch');
  return number !== undefined && last !== null && setCount(sitting, last, numberIn(sitting, number));
}

const SAYS_SO =
  /^(?:(?:my|the|our) )?\p{L}+(?: \p{L}+)? (?:says?|said|reckons?|thinks?|tells me)(?: that)? (?<said>(?:it|there|they) (?:was|were) .{2,80}?)(?<right>,? (?:and )?(?:s?he|they)(?:['’]?s| is| was|['’]?re| are| were) (?:quite |dead )?right)?[.!]?$/iu;

/** "My wife says it was fourteen Salt Harrier not twelve and she's right": what she says, where a number is denied or she is right. */
export function asTheySay(text: string): string {
  const { said, right } = SAYS_SO.exec(text.slice(0, LONGEST).trim())?.groups ?? {};
  const isRight = right !== undefined || (said !== undefined && deniedNumber(said) !== undefined);
  return said !== undefined && isRight && text.length <= LONGEST ? `no, ${said}` : text;
}

const LIVES = anyOf`
  pull through|make it|recover|revive|survive|rally|live|perk up|come (back|round|around)|be (ok|okay|fine|alright|all right)
`;
const CALL_IT = new RegExp(
  `^(?<number>\\d+|\\p{L}+)(?: of (?:them|those|these))? (?:(?:might|may|could|should)(?: well| just| still| yet)* ${LIVES}|(?:is|are) looking (?:better|brighter|perkier))(?: yet| after all| still| actually)?[,;.]? (?:and )?(?:so )?(?:let['’]s )?(?:(?:call|make|put) (?:it|that)(?: down as)?|say|(?:it|that)['’]s|only|just) (?:only |just )?(?:the )?(?<left>\\d+|\\p{L}+)(?: lost| dead| gone)?[.!]?$`,
  'iu',
);

/** Whether some of what was lost may live, and the words say how many to count as lost. */
function callsIt(sitting: Sitting, words: string): boolean {
  const { number = '', left = '' } = CALL_IT.exec(words)?.groups ?? {};
  const last = number === '' ? null : lastOf(sitting, 'loss');
  if (last === null) return false;
  const { count } = last.entry as { readonly count?: unknown };
  const [back, still] = [numberIn(sitting, number), numberIn(sitting, left)];
  if (typeof count !== 'number' || back === null || still === null || count - back !== still) return false;
  return setCount(sitting, last, still);
}

/** The last note, where it is a deed of that kind told here lately. */
function lastOf({ ledger, origin, world }: Sitting, kind: 'dispatch' | 'loss'): StandingEntry | null {
  const last = ledger.standing.at(-1);
  const isHere = last?.journal.source?.chat === world.chat && origin.at - last.journal.at <= LATELY_MS;
  return isHere && last.entry.kind === kind ? last : null;
}

function setCount(sitting: Sitting, last: StandingEntry, count: number | null): boolean {
  return count !== null && count > 0 && setSlots(sitting, [last], { count });
}

/** Whether a number is put right by what somebody reported, or by what may live yet. */
export function toldByReport(sitting: Sitting, text: string): boolean {
  if (text.length > LONGEST) return false;
  const words = withoutDoubts(text.trim());
  return reportsNumber(sitting, words) || callsIt(sitting, words);
}
