/**
 * Which words stand beside which in growers' notes, so that a slip of the pen is told by the words around it: "lost thee
 * of the" is three, "moved to thee frame" is the.
 */

/** How often each word was seen, and how often each two in a row. */
export interface Neighbours {
  readonly words: ReadonlyMap<string, number>;
  /** `first second` to how often. */
  readonly pairs: ReadonlyMap<string, number>;
  /** Of all words together. */
  readonly total: number;
}

export const START = '^';
export const END = '$';
/** Any name of a plant, person or place that the note gives. */
export const NAME = '§';
/** Any number in figures. */
export const NUMBER = '#';
/** Any word seen but once. */
export const SELDOM = '?';

/** A word of one note alone says nothing of its neighbours. */
const LEAST_SEEN = 2;

/** Counts the rows of words of many notes; the same rows always give the same. */
export function learnNeighbours(rows: readonly (readonly string[])[]): Neighbours {
  const whole = rows.map((row) => [
    START,
    ...row.filter((word, at) => word !== NAME || row[at - 1] !== NAME),
    END,
  ]);
  const seen = tally(whole.flat());
  const common = whole.map((row) =>
    row.map((word) => ((seen.get(word) ?? 0) < LEAST_SEEN && /^[a-z]/.test(word) ? SELDOM : word)),
  );
  const words = tally(common.flat());
  const pairs = tally(common.flatMap((row) => row.slice(1).map((word, at) => `${row[at] ?? ''} ${word}`)));
  return { words, pairs, total: common.flat().length };
}

function tally(all: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const one of all) counts.set(one, (counts.get(one) ?? 0) + 1);
  return counts;
}

/** Of a hundred words how many to weigh as if unseen pairs had been seen as often as their words; judgement, by notes held back. */
const UNSEEN = 20;

/** The logarithm of how likely a word is between two others, by its pairs and, where these are few, by itself. */
export function likelihood(known: Neighbours, before: string, word: string, after: string): number {
  return Math.log(follows(known, before, word)) + Math.log(follows(known, word, after));
}

function follows({ words, pairs, total }: Neighbours, first: string, second: string): number {
  const alone = (words.get(second) ?? 0.2) / total;
  return ((pairs.get(`${first} ${second}`) ?? 0) + UNSEEN * alone) / ((words.get(first) ?? 0) + UNSEEN);
}
