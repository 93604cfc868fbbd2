/** How small numbers are spelt. */

/** From nought on. */
export const SMALL: readonly string[] =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );

/** From twenty on. */
export const TENS: readonly string[] = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/** Each with its number. */
export const SMALL_NUMBERS: ReadonlyMap<string, number> = new Map(
  SMALL.map((word, number) => [word, number]),
);
export const TENS_NUMBERS: ReadonlyMap<string, number> = new Map(
  TENS.map((word, at) => [word, 20 + 10 * at]),
);

/** The number that a word or its digits stand for; "a" is one. */
export const numberOf = (word: string | undefined): number | undefined =>
  word === 'a' ? 1 : word === undefined ? undefined : (SMALL_NUMBERS.get(word) ?? Number(word));
