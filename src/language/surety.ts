/** Whether a spoken note was heard and read so surely that it may be posted before the grower has said yes. */
import type { ReadEntry, ReadNote } from './note.js';

/**
 * The least posterior of a word that fills a slot. Chosen so that at most one in a hundred notes posted without a yes is
 * wrong; how it was measured stands in DEVELOPERS.md under "Voice".
 */
export const sureFrom = 0.97;

/** Kinds that tell of things done or seen; a wish, a reminder, a question or a correction is never posted unasked. */
const postedKinds: ReadonlySet<string> = new Set([
  'stock', 'receive', 'strike', 'tend', 'check', 'loss', 'potOn', 'pinch', 'move', 'hardenOff', 'plantOut', 'dispatch',
]); // prettier-ignore

/** A number is the word that recognisers mishear most, and the one that does the most harm: it always needs a yes. */
const numberSlots = ['count', 'pots', 'rooted', 'celsius', 'potSize'] as const;

/** Only where nothing is asked, nothing was left over, no number is told, and every word that fills a slot is sure. */
export function mayPostUnasked(read: ReadNote): boolean {
  const { entries, asks, instruction, unknown } = read;
  if (entries.length === 0 || asks.length > 0 || instruction !== undefined || unknown !== undefined)
    return false;
  return entries.every(isSure);
}

function isSure({ entry, surety }: ReadEntry): boolean {
  const slots = entry as unknown as Readonly<Record<string, unknown>>;
  const tellsNumber = numberSlots.some((slot) => slots[slot] !== undefined);
  return postedKinds.has(entry.kind) && !tellsNumber && surety !== undefined && surety >= sureFrom;
}
