/** Runs of small phrases before and behind what a pattern is about ("oh no wait, sorry, …"), so written that matching stays linear. */
import { alternatives, type Listed } from '../phrases.js';

/** The alternatives of a pattern, without those inside its groups. */
function divided(source: string): readonly string[] {
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

/** A family of phrases said one by one: of "(can|could) you tell me", "can you tell me" and "could you tell me". */
function spelled(family: string): readonly string[] {
  const [, before, group, optional, behind] =
    /^([^(]*)\(\?:([^()]*)\)(\??)(?![*+{?])(.*)$/.exec(family) ?? [];
  if (before === undefined || group === undefined || behind === undefined) return [family];
  return [...group.split('|'), ...(optional ? [''] : [])].flatMap((word) => spelled(before + word + behind));
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

/** The phrases of a run, listed as in `phrases.ts` or divided by `|`. */
function run(phrases: Phrases): string {
  const [listed] = phrases;
  const source = typeof listed === 'string' ? listed : alternatives(...(phrases as Listed));
  return `(?:${simple(divided(source).flatMap(spelled)).join('|')})`;
}

type Phrases = readonly [divided: string] | Listed;

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
