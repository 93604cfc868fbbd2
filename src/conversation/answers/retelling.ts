/** "Seven, all in one pot", "ten no eleven": an answer with more in it than its number, read as the act told with it. */
import type { LoggedEntry, Plant } from '../../ledger/entry.js';
import { actWords } from '../reading/act-words.js';
import { withoutPlant } from './plants-named.js';
import { readIn } from '../reading/reading.js';
import type { Sitting } from '../sitting.js';
import { plantSaid } from '../reading/slots.js';
import type { SlotAsk } from '../talk.js';

/** What else an answer may tell. */
const MORE: Partial<Record<LoggedEntry['kind'], readonly string[]>> = {
  strike: ['pots', 'medium', 'place', 'cutting', 'potSize', 'hormone', 'date'],
  receive: ['place', 'potSize', 'date'],
  potOn: ['potSize', 'medium', 'date'],
  plantOut: ['place', 'date'],
  loss: ['date'],
  pinch: ['date'],
  dispatch: ['to', 'how', 'date'],
};
/** "Ten no eleven", "six I think". */
const FEW_WORDS = 3;
/** What may stand before the number of an answer. */
const LEADS =
  /^(?:(?:oh|lol|haha|hmm|fine|um|er|erm|eh|well|right|ok|okay|so|just|only|about|around|roughly|the|it was|it's|that was|that's|there were|there are|there was|they were|they are|they're|was|were|i (?:made|make|took|did|counted|got|think|reckon|have made|have)(?: it)?|(?:it |that |they )?(?:came|comes|come) to|makes|call it|say|i'd say|must be|(?:it |there )?must(?:['’]ve| have) been|that can['’]?t be right|can['’]?t be right|probably) )+/i;
/** What may stand behind it. */
const TAIL = /,? (?:by the way|btw|in the end|i think|i reckon|i believe|if i recall|to be exact)[.!]?$/i;
const VAGUE = /\b(?:at (?:most|least)|or so|thing|of the|of these)\b/i;
/** "Four in each pot, so 12": what it comes to, told last. */
const TOTAL =
  /\b(?:so|that['’]?s|that makes|which makes|which is|making|makes|make|equals|total|totals|comes to|came to) (?:about )?((?:(?:half )?a )?\p{L}+|\d+)(?: (?:in all|in total|all told|altogether|total|all in|then|of them|cuttings|plants))?[.!]?$/iu;
/** In UTF-16 units. */
const LONGEST = 80;
/** A number in words: "a dozen", "two dozen and one". */
const MOST_WORDS_OF_NUMBER = 3;

/** The entry with what the reply says, where that begins with its number and tells no act of its own; else null. */
export function retold(sitting: Sitting, { entry, slot }: SlotAsk, text: string): LoggedEntry | null {
  const act = actWords[entry.kind];
  const words = withoutPlant(sitting.ledger, entry as Plant, text.trim())
    .replace(LEADS, '')
    .replace(TAIL, '');
  if (act === undefined || slot !== 'count' || words.length > LONGEST) return null;
  const whole = wholeTold(sitting, words);
  if (whole !== null) return { ...entry, count: whole } as LoggedEntry;
  if (VAGUE.test(words) || !beginsWithNumber(sitting, words)) return null;
  const [told, more] = readIn(sitting, `${act} ${words}`).entries;
  if (!told || more || told.entry.kind !== entry.kind) return null;
  const plant = plantSaid(told.entry as Plant, told.sources);
  if (!('count' in told.entry) || Object.keys(plant).length > 0) return null;
  const own = entry as unknown as Readonly<Record<string, unknown>>;
  const said = Object.entries(told.entry).filter(([each]) => told.sources[each as never] === 'said');
  const besides = said.filter(([each]) => each !== 'count');
  // Words that fill no slot may say anything: "one of these days I'll learn to count".
  const isAll = besides.length > 0 || words.split(/\s+/).length <= FEW_WORDS;
  const fits = besides.every(
    ([each, value]) => MORE[entry.kind]?.includes(each) && (own[each] ?? value) === value,
  );
  return isAll && fits ? ({ ...entry, ...Object.fromEntries(said) } as LoggedEntry) : null;
}

/** The number that the words come to, where they tell it last. */
function wholeTold(sitting: Sitting, words: string): number | null {
  const [, last = ''] = TOTAL.exec(words) ?? [];
  const value = last === '' ? undefined : numberAlone(sitting, last);
  // "Two trays so 24", and no "can't say, so 3 guesses": another number leads to it.
  return typeof value === 'number' && /\d|\b(?:each|every|per|apiece|pots?|trays?|rows?)\b/i.test(words)
    ? value
    : null;
}

function beginsWithNumber(sitting: Sitting, words: string): boolean {
  const first = (/^[^,;.–—-]*/u.exec(words)?.[0] ?? '').split(/\s+/).slice(0, MOST_WORDS_OF_NUMBER);
  return first.some((_, n) => typeof numberAlone(sitting, first.slice(0, n + 1).join(' ')) === 'number');
}

function numberAlone(sitting: Sitting, words: string): unknown {
  const [only, another] = /^[\p{L} ]+$|^\d+$/u.test(words) ? readIn(sitting, words).entries : [];
  return only && !another && only.entry.kind === 'answer' ? only.entry.value : undefined;
}
