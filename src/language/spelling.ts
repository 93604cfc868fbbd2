/** Bounded spelling repair: an unknown word becomes the one word of the trade that lies a slip or two away. */
import { isEnglish } from './english.js';
import { crops, isKnown, lists, spelling, verbSense } from './lexicon.js';

/** Words worth repairing towards: long enough that one slip leaves them recognisable. */
const targets: ReadonlyMap<string, readonly string[]> = (() => {
  const words = new Set<string>([
    ...[...crops.values()].flatMap((phrases) => phrases.flatMap(({ words }) => words)),
    ...Object.keys(lists.verbs).flatMap((lemma) => verbForms(lemma)),
    ...lists.placeNouns,
    ...'cuttings cutting compost perlite vermiculite yesterday tomorrow morning afternoon evening weekend fortnight monday tuesday wednesday thursday friday saturday sunday january february april august september october november december propagator windowsill temperature celsius botrytis hormone internodal semi hardwood softwood remember remind several couple dozen hundred twenty thirty forty fifty twelve eleven seven eight three because everything greenhouse kitchen geraniums another should'.split(
      ' ',
    ),
  ]);
  const index = new Map<string, string[]>();
  for (const word of words) {
    if (word.length < 5) continue;
    const key = word.charAt(0);
    index.set(key, [...(index.get(key) ?? []), word]);
  }
  return index;
})();

function verbForms(lemma: string): readonly string[] {
  return [
    lemma,
    `${lemma}ed`,
    `${lemma}d`,
    `${lemma}${lemma.at(-1)}ed`,
    `${lemma}ing`,
    ...(lists.verbs[lemma] ?? []),
  ].filter((word) => verbSense(word) !== undefined);
}

/** The rows of the table that `distance` fills, made once: it is asked for many words of every note. */
const rows: readonly [number[], number[], number[]] = [[], [], []];

/**
 * Optimal-string-alignment distance (insert, delete, replace, swap of neighbours), cut off above `most`, where it
 * answers `most + 1`.
 */
export function distance(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let [before, above, row] = rows;
  for (let j = 0; j <= b.length; j++) above[j] = j;
  for (let i = 1; i <= a.length; i++) {
    row[0] = i;
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a.charCodeAt(i - 1) === b.charCodeAt(j - 1);
      let cost = Math.min((above[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (above[j - 1] ?? 0) + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        cost = Math.min(cost, (before[j - 2] ?? 0) + 1);
      row[j] = cost;
      if (cost < least) least = cost;
    }
    if (least > most) return most + 1;
    [before, above, row] = [above, row, before];
  }
  return above[b.length] ?? most + 1;
}

/** How many slips a word of that length may carry. */
export function slipsAllowed(length: number): number {
  return length < 5 ? 0 : length < 8 ? 1 : 2;
}

/** The word meant by a lower-case word: itself where it is known or nothing lies near, or where two lie equally near. */
export function respell(word: string): string {
  const meant = spelling(word) ?? withoutStress(word);
  if (meant !== undefined) return meant;
  if (word.length < 4 || word.length > 20 || isKnown(word) || /[^a-z]/.test(word)) return word;
  if (word.endsWith('in') && verbSense(`${word}g`)?.form === 'ing' && !isEnglish(word)) return `${word}g`;
  if (word.length < 5) return isEnglish(word) ? word : (vowelled(word) ?? word);
  let best = word;
  let bestCost = slipsAllowed(word.length) + 1;
  let tied = false;
  for (const target of targets.get(word.charAt(0)) ?? []) {
    const cost = distance(
      word,
      target,
      Math.min(bestCost, slipsAllowed(Math.min(word.length, target.length))),
    );
    if (cost > slipsAllowed(Math.min(word.length, target.length))) continue;
    if (cost < bestCost) {
      best = target;
      bestCost = cost;
      tied = false;
    } else if (cost === bestCost && !samePlural(best, target)) tied = true;
  }
  if (best === word || (tied && bestCost > 1)) return isEnglish(word) ? word : (vowelled(word) ?? word);
  return isEnglish(word) ? word : best;
}

/** "Nahhh", "sooo", "potts": the word of ours with a letter fewer where one was leant on or hit twice. */
function withoutStress(word: string): string | undefined {
  if (word.length > 20 || isKnown(word) || !/([a-z])\1/.test(word)) return undefined;
  const stretched = /([a-z])\1{2,}/g;
  if (stretched.test(word))
    return [word.replace(stretched, '$1'), word.replace(stretched, '$1$1')].find(isKnown);
  const once = word.replace(/([a-z])\1/, '$1');
  return once.length >= 4 && isKnown(once) && !isEnglish(word) ? once : undefined;
}

const VOWELS = /(?!^)[aeiou]/g;

/** Words of the trade by their consonants; none where several share them. */
const byConsonants: ReadonlyMap<string, string | null> = (() => {
  const index = new Map<string, string | null>();
  for (const words of targets.values())
    for (const word of words) {
      const key = word.replace(VOWELS, '');
      const other = index.get(key);
      index.set(key, other === undefined || other === word ? word : null);
    }
  return index;
})();

/** "Opnd", "grnhouse": the one word of the trade that these letters are of, with vowels left out. */
function vowelled(word: string): string | undefined {
  const target = byConsonants.get(word.replace(VOWELS, ''));
  if (target == null || target.length <= word.length) return undefined;
  let at = 0;
  for (const letter of target) if (letter === word[at]) at++;
  return at === word.length ? target : undefined;
}

function samePlural(a: string, b: string): boolean {
  return a === `${b}s` || b === `${a}s`;
}
