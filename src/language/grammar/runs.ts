/** Runs of small phrases before and behind what a pattern is about ("oh no wait, sorry, …"), so written that matching stays linear. */
import { divided, type Phrases, sourceOf, spelled } from '../phrases.js';

/**
 * The families without phrases that are said twice or that others make up in a row: with "no" and "wait", "no wait" adds
 * nothing, and a run of them could be taken apart in twice as many ways with each. Phrases are words and single spaces;
 * any other sign of a pattern is kept as it stands.
 */
function simple(families: readonly string[]): readonly string[] {
  const all = new Set(families.flatMap(spelled));
  const isRow = (words: readonly string[], from: number, parts: number): boolean => {
    if (from === words.length) return parts > 1;
    for (let to = from + 1; to <= words.length; to++)
      if (all.has(words.slice(from, to).join(' ')) && isRow(words, to, parts + 1)) return true;
    return false;
  };
  const said = new Set<string>();
  return families.flatMap((family) => {
    const phrases = spelled(family);
    const needed = phrases.filter((phrase) => !said.has(phrase) && !isRow(phrase.split(' '), 0, 0));
    for (const phrase of needed) said.add(phrase);
    return needed.length === phrases.length ? [family] : needed;
  });
}

const run = (phrases: Phrases): string => `(?:${simple(divided(sourceOf(phrases))).join('|')})`;

/** The source of a pattern for any number of these phrases, each with a space behind it. */
export function leading(...phrases: Phrases): string {
  return `(?:${run(phrases)} )*`;
}

/** The same with a space before each. */
export function trailing(...phrases: Phrases): string {
  return `(?: ${run(phrases)})*`;
}

/** The same as `leading`, one of them at least. */
export function leadingSome(...phrases: Phrases): string {
  return `(?:${run(phrases)} )+`;
}
