/** Rows of letters that lie one slip of the pen from a word. */
export const LETTERS = 'abcdefghijklmnopqrstuvwxyz';

/** All that one letter left out, put in, put for another or swapped with its neighbour makes of a lower-case word; some 54 for each letter. */
export function aSlipAway(word: string): readonly string[] {
  const near = new Set<string>();
  for (let at = 0; at <= word.length; at++) {
    const before = word.slice(0, at);
    const behind = word.slice(at);
    const [here = '', next = ''] = behind;
    if (here !== '') near.add(before + behind.slice(1));
    if (next !== '') near.add(before + next + here + behind.slice(2));
    for (const letter of LETTERS) {
      near.add(before + letter + behind);
      if (here !== '') near.add(before + letter + behind.slice(1));
    }
  }
  near.delete(word);
  return [...near];
}
