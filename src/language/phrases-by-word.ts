/** Phrases of a list by their first word, so that most words of a note ask none of them. */

export type PhrasesByWord = ReadonlyMap<string, readonly (readonly string[])[]>;

/** Those of one word in the order of the list. */
export function byFirstWord(phrases: readonly (readonly string[])[]): PhrasesByWord {
  const index = new Map<string, (readonly string[])[]>();
  for (const words of phrases) {
    const first = words[0] ?? '';
    const others = index.get(first);
    if (others) others.push(words);
    else index.set(first, [words]);
  }
  return index;
}
