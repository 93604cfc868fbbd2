/** The words that dictation writes for a number. */

/** Small words of every sentence: "took for cuttings", "had won rooted". */
export const SMALL_WORDS: Readonly<Record<string, string>> = {
  for: 'four',
  fore: 'four',
  to: 'two',
  too: 'two',
  won: 'one',
  wan: 'one',
  ate: 'eight',
};

/** Words with a sense of their own that often stands beside a plant ("a free Salt Harrier", "tree cuttings"). */
export const TREE_AND_FREE: Readonly<Record<string, string>> = { tree: 'three', free: 'three' };

/** Words that have no other business in a note. */
export const STRANGE_WORDS: Readonly<Record<string, string>> = {
  sicks: 'six',
  sex: 'six',
  fife: 'five',
  ait: 'eight',
};

export const NUMBERS: Readonly<Record<string, string>> = {
  ...SMALL_WORDS,
  ...TREE_AND_FREE,
  ...STRANGE_WORDS,
};
