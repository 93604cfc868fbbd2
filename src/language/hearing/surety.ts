/** Whether a spoken note was heard and read so surely that it may be posted before the grower has said yes. */
import type { HeardWord, ReadEntry, ReadNote } from '../note.js';

/**
 * The least posterior of every word that can change the meaning. Chosen so that at most one in a hundred notes posted
 * without a yes is wrong; how it was measured stands in DEVELOPERS.md under "Voice".
 */
export const sureFrom = 0.95;

/** Kinds that tell of things done; a wish, a remark, a question or a correction is never posted unasked. */
const postedKinds: ReadonlySet<string> = new Set([
  'stock', 'receive', 'strike', 'tend', 'check', 'loss', 'potOn', 'pinch', 'move', 'hardenOff', 'plantOut', 'dispatch',
]); // prettier-ignore

/** A number is the word that recognisers mishear most, and the one that does the most harm: it always needs a yes. */
const numberSlots = ['count', 'pots', 'rooted', 'celsius', 'potSize'] as const;

/** Words that carry no slot; whether one of them was said or its like makes no difference. */
const weightless: ReadonlySet<string> = new Set([
  'the',
  'a',
  'an',
  'my',
  'i',
  "i've",
  'and',
  'um',
  'er',
  'well',
  'so',
]);

/** The words that the receipt marks as doubtful. */
export function doubtfulWords(heard: readonly HeardWord[]): readonly HeardWord[] {
  return heard.filter(({ word, p }) => p < sureFrom && !weightless.has(word));
}

/** Only where nothing is asked, nothing was left over, no number is told and no word that matters is in doubt. */
export function mayPostUnasked(read: ReadNote, heard: readonly HeardWord[]): boolean {
  const { entries, asks, instruction, unknown } = read;
  if (entries.length === 0 || asks.length > 0 || instruction !== undefined || unknown !== undefined)
    return false;
  return heard.length > 0 && doubtfulWords(heard).length === 0 && entries.every(tellsNoNumber);
}

/** A spoken yes, no or "not yet", heard surely: it needs no yes of its own. A number, or "all", does. */
export function mayAnswerUnasked(read: ReadNote, heard: readonly HeardWord[]): boolean {
  const [first, second] = read.entries;
  if (heard.length === 0 || doubtfulWords(heard).length > 0 || first?.entry.kind !== 'answer' || second)
    return false;
  const { value } = first.entry;
  return read.asks.length === 0 && (value === 'yes' || value === 'no' || value === 'notYet');
}

/** A question posts nothing, so that one heard amiss does no harm. */
export function asksOnly(read: ReadNote): boolean {
  const { entries, asks } = read;
  return entries.length > 0 && asks.length === 0 && entries.every(({ entry }) => entry.kind === 'question');
}

function tellsNoNumber({ entry }: ReadEntry): boolean {
  const slots = entry as unknown as Readonly<Record<string, unknown>>;
  return postedKinds.has(entry.kind) && numberSlots.every((slot) => slots[slot] === undefined);
}
