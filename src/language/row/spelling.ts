/** Bounded spelling repair: an unknown word becomes the one word of the trade that lies a slip or two away. */
import { isEnglish } from './english.js';
import { isKnown, spelling, verbSense } from './lexicon.js';
import { slipped } from './spelling/slipped.js';
import { targets } from './spelling/targets.js';
import { vowelled } from './spelling/vowels-left-out.js';

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

const MOST_SLIPS = 2;

/** How many slips a word of that length may carry. */
export function slipsAllowed(length: number): number {
  return length < 5 ? 0 : length < 8 ? 1 : MOST_SLIPS;
}

/** The word meant by a lower-case word: itself where it is known or nothing lies near, or where two lie equally near. */
export function respell(word: string, isSmall = true): string {
  const meant = spelling(word) ?? withoutStress(word);
  if (meant !== undefined) return meant;
  if (word.length < 3 || word.length > 20 || isKnown(word) || /[^a-z]/.test(word) || isEnglish(word))
    return word;
  const unslipped = slipped(word, isSmall);
  if (unslipped !== undefined) return unslipped ?? vowelled(word) ?? word;
  if (word.endsWith('in') && verbSense(`${word}g`)?.form === 'ing') return `${word}g`;
  if (word.length < 5) return vowelled(word) ?? word;
  let best = word;
  let bestCost = slipsAllowed(word.length) + 1;
  let tied = false;
  for (const target of targets.get(word.charAt(0)) ?? []) {
    if (Math.abs(word.length - target.length) > MOST_SLIPS) continue;
    const allowed = slipsAllowed(Math.min(word.length, target.length));
    const cost = distance(word, target, Math.min(bestCost, allowed));
    if (cost > allowed) continue;
    if (cost < bestCost) {
      best = target;
      bestCost = cost;
      tied = false;
    } else if (cost === bestCost && !samePlural(best, target)) tied = true;
  }
  if (best === word || (tied && bestCost > 1)) return vowelled(word) ?? word;
  // "Propagatr" lies as near to "propagate".
  return tied ? (vowelled(word) ?? best) : best;
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

function samePlural(a: string, b: string): boolean {
  return a === `${b}s` || b === `${a}s`;
}
