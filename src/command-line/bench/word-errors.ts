/** Counts how many words of what was said were heard wrongly, by the usual measure of speech recognition. */

/** Substitutions, insertions and deletions on the cheapest way from one row of words to the other (Levenshtein). */
export function wordErrors(said: readonly string[], heard: readonly string[]): number {
  let row = heard.map((_, at) => at + 1);
  row.unshift(0);
  said.forEach((word, line) => {
    const next = [line + 1];
    heard.forEach((other, at) => {
      const changed = (row[at] ?? 0) + (word === other ? 0 : 1);
      next.push(Math.min(changed, (row[at + 1] ?? 0) + 1, (next[at] ?? 0) + 1));
    });
    row = next;
  });
  return row.at(-1) ?? 0;
}
