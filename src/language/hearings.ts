/** What else a sound may have been: another hearing that names a plant of the ledger, where the likeliest tells of nothing. */
import type { HeardWord, NoteContext, ReadNote } from './note.js';

/** Whether a hearing came to nothing, so that another may be asked. */
export function tellsNothing({ entries, instruction }: ReadNote): boolean {
  return entries.length === 0 && instruction === undefined;
}

/**
 * The likeliest of the other hearings that tells something of a variety or batch which the ledger knows; who talks of
 * something else names none. It is never sure: the words that differ from the likeliest hearing have a posterior of nought.
 */
export function heardOtherwise(
  words: readonly HeardWord[],
  others: readonly string[],
  { varieties = [], batches = [] }: NoteContext,
  readingOf: (text: string) => ReadNote,
): readonly HeardWord[] | undefined {
  const names = new Set<unknown>([
    ...varieties.map(({ name }) => name),
    ...batches.flatMap(({ label, variety }) => [label, variety]),
  ]);
  names.delete(undefined);
  // A plant that is taken for granted, since the ledger has no other, was not heard.
  const isKnown = ({ entries }: ReadNote): boolean =>
    entries.some(({ entry, sources }) =>
      Object.entries(entry).some(
        ([slot, value]) => /^(?:variety|batch)$/.test(slot) && sources[slot] === 'said' && names.has(value),
      ),
    );
  const meant = others.find((text) => isKnown(readingOf(text)));
  return meant === undefined ? undefined : likened(meant.split(' '), words);
}

/** What two hearings have in common at their beginning and end keeps its posterior. */
function likened(texts: readonly string[], words: readonly HeardWord[]): HeardWord[] {
  const shortest = Math.min(texts.length, words.length);
  let head = 0;
  while (head < shortest && texts[head] === words[head]?.word) head++;
  let tail = 0;
  while (tail < shortest - head && texts.at(-1 - tail) === words.at(-1 - tail)?.word) tail++;
  return texts.map((word, at) => {
    const end = at - texts.length;
    const same = at < head ? words[at] : -end <= tail ? words.at(end) : undefined;
    return same ?? { word, p: 0 };
  });
}
