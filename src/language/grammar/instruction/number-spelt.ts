/** Numbers as an instruction spells them: "in two weeks", "two lots of six". */
const NUMBERS = 'a one two three four five six seven eight nine ten eleven twelve'.split(' ');

/** The number that a word or its digits stand for. */
export function numberOf(word: string | undefined): number | undefined {
  if (word === undefined) return undefined;
  const at = NUMBERS.indexOf(word);
  return at < 0 ? Number(word) : Math.max(1, at);
}
