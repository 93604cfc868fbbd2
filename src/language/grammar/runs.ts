/** Runs of small phrases before and behind what a pattern is about ("oh no wait, sorry, …"), so written that matching stays linear. */

/** The alternatives of a pattern, without those inside its groups. */
function alternatives(source: string): readonly string[] {
  const found = [''];
  let depth = 0;
  for (const sign of source) {
    if (sign === '(') depth++;
    else if (sign === ')') depth--;
    if (sign === '|' && depth === 0) found.push('');
    else found[found.length - 1] += sign;
  }
  return found;
}

/**
 * The phrases that no others make up in a row: with "no" and "wait", "no wait" adds nothing, and a run of them could be
 * taken apart in twice as many ways with each. Phrases are words and single spaces; any other sign of a pattern is kept
 * as it stands.
 */
export function simple(phrases: readonly string[]): readonly string[] {
  const all = new Set(phrases);
  const isRow = (words: readonly string[], from: number, parts: number): boolean => {
    if (from === words.length) return parts > 1;
    for (let to = from + 1; to <= words.length; to++)
      if (all.has(words.slice(from, to).join(' ')) && isRow(words, to, parts + 1)) return true;
    return false;
  };
  return [...all].filter((phrase) => !isRow(phrase.split(' '), 0, 0));
}

/** The source of a pattern for any number of these phrases, each with a space behind it. `phrases` are divided by `|`. */
export function leading(phrases: string): string {
  return `(?:(?:${simple(alternatives(phrases)).join('|')}) )*`;
}

/** The same with a space before each. */
export function trailing(phrases: string): string {
  return `(?: (?:${simple(alternatives(phrases)).join('|')}))*`;
}

/** The same as `leading`, one of them at least. */
export function leadingSome(phrases: string): string {
  return `(?:(?:${simple(alternatives(phrases)).join('|')}) )+`;
}
