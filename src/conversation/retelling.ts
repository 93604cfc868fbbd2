/** "Seven, all in one pot", "ten no eleven": an answer with more in it than its number, read as the act told with it. */
import type { LoggedEntry, Plant } from '../ledger/entry.js';
import { actWords } from './act-words.js';
import { readIn } from './reading.js';
import type { Sitting } from './sitting.js';
import { plantSaid } from './slots.js';
import type { SlotAsk } from './talk.js';

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
  /^(?:(?:oh|um|er|erm|eh|well|just|only|about|the|it was|it's|there were|there are|they were|they are|they're|i made|i have made) )+/i;
const VAGUE = /\b(?:at (?:most|least)|or so|thing|of the|of these)\b/i;
/** In UTF-16 units. */
const LONGEST = 80;

/** The entry with what the reply says, where that begins with its number and tells no act of its own; else null. */
export function retold(sitting: Sitting, { entry, slot }: SlotAsk, text: string): LoggedEntry | null {
  const act = actWords[entry.kind];
  const words = text.trim().replace(LEADS, '');
  if (act === undefined || slot !== 'count' || words.length > LONGEST || VAGUE.test(words)) return null;
  const [first = ''] = words.split(/[\s,;.–—-]/);
  if (typeof numberAlone(sitting, first) !== 'number') return null;
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

function numberAlone(sitting: Sitting, word: string): unknown {
  const [only, another] = /^(?:\d+|\p{L}+)$/u.test(word) ? readIn(sitting, word).entries : [];
  return only && !another && only.entry.kind === 'answer' ? only.entry.value : undefined;
}
