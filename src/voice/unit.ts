/** Names of several words as one unit of the recogniser, so that what follows a name is learnt from what stands before it. */
import type { Pronunciations } from './pronunciation.js';

/** More ways of saying a name than this only make it like others. */
const mostWays = 24;

/** "marble wren" → marble_wren. */
export function unitOf(words: string): string {
  return words.replaceAll(' ', '_');
}

/** The words that a unit stands for; a word alone stands for itself. */
export function wordsOfUnit(unit: string): string[] {
  return unit.split('_');
}

/** Every way of saying the words one after the other, the likeliest of each first. */
export function waysOfUnit(unit: string, known: Pronunciations): string[] {
  let ways = [''];
  for (const word of wordsOfUnit(unit)) {
    const next = known.get(word) ?? [];
    ways = ways.flatMap((way) => next.map((phones) => (way === '' ? phones : `${way} ${phones}`)));
  }
  return ways.slice(0, mostWays);
}
