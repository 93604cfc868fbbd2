/** What else a sound may have been: another hearing that names a plant of the ledger, where the likeliest tells of nothing. */
import type { HeardWord, NoteContext, ReadNote } from '../note.js';

/** Whether a hearing came to nothing, so that another may be asked. */
export function tellsNothing({ entries, instruction }: ReadNote): boolean {
  return entries.length === 0 && instruction === undefined;
}

/**
 * The likeliest of the other hearings that tells something of a variety or batch which the ledger knows; where none does,
 * of any crop. It is never sure: the words that differ from the likeliest hearing have a posterior of nought.
 */
export function heardOtherwise(
  words: readonly HeardWord[],
  others: readonly string[],
  { varieties = [], batches = [] }: NoteContext,
  readingOf: (text: string) => ReadNote,
): readonly HeardWord[] | undefined {
  const names = new Set<unknown>([
    ...varieties.map(({ name }) => name),
    ...batches.flatMap(({ label, variety }) => (variety === undefined ? [label] : [label, variety])),
  ]);
  const known: ReadNote[] = [];
  const readingAt = (at: number): ReadNote => (known[at] ??= readingOf(others[at] ?? ''));
  const meant =
    others.find((_, at) => says(readingAt(at), /^(?:variety|batch)$/, (value) => names.has(value))) ??
    others.find((_, at) => says(readingAt(at), /^crop$/, () => true));
  return meant === undefined ? undefined : likened(meant.split(' '), words);
}

/** Whether an entry has such a value in such a slot, and not only because it was taken for granted. */
function says({ entries }: ReadNote, slots: RegExp, isMeant: (value: unknown) => boolean): boolean {
  return entries.some(({ entry, sources }) =>
    Object.entries(entry).some(
      ([slot, value]) => slots.test(slot) && sources[slot] === 'said' && isMeant(value),
    ),
  );
}

/** What two hearings have in common at their beginning and end keeps its posterior. */
export function likened(texts: readonly string[], words: readonly HeardWord[]): HeardWord[] {
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
