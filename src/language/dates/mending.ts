/** Mends one slip of the pen in a long word: a letter missing, added, changed, or two swapped. */

/** Ordinary words that lie one slip from a word of time. */
const innocent = new Set([
  'sundry',
  'sunday',
  'sundae',
  'easter',
  'eastern',
  'weekday',
  'weekdays',
  'mundane',
  'decembers',
  'fridge',
  'tomorrow',
  'remember',
]);

/**
 * Answers a reader of words that are at most one slip away from exactly one of `words`: same first letter, and
 * lengths within one of each other. Looks up the word with each letter left out, as each of `words` is stored.
 */
export function mended(words: readonly string[]): (word: string) => string | undefined {
  const byGap = new Map<string, string>();
  for (const word of words) for (const gap of gapsOf(word)) byGap.set(gap, word);
  const longest = Math.max(...words.map((word) => word.length)) + 1;
  return (word) => {
    if (word.length > longest || innocent.has(word)) return undefined;
    for (let at = -1; at < word.length; at++) {
      const candidate = byGap.get(at < 0 ? word : word.slice(0, at) + word.slice(at + 1));
      if (candidate !== undefined && candidate[0] === word[0] && isOneSlip(word, candidate)) return candidate;
    }
    return undefined;
  };
}

function gapsOf(word: string): string[] {
  return [word, ...Array.from(word, (_, at) => word.slice(0, at) + word.slice(at + 1))];
}

function isOneSlip(a: string, b: string): boolean {
  let start = 0;
  while (start < a.length && a[start] === b[start]) start++;
  let enough = 0;
  while (enough < Math.min(a.length, b.length) - start && a.at(-1 - enough) === b.at(-1 - enough)) enough++;
  const leftOfA = a.slice(start, a.length - enough);
  const leftOfB = b.slice(start, b.length - enough);
  if (leftOfA.length <= 1 && leftOfB.length <= 1) return true;
  return (
    leftOfA.length === 2 && leftOfA[0] === leftOfB[1] && leftOfA[1] === leftOfB[0] && leftOfB.length === 2
  );
}
