/** Whether a word is plain English, so that spelling repair leaves it alone. */
import { readFileSync } from 'node:fs';
import wordListPath from 'word-list';

/** Some 270,000 words, sorted, one a line, each between line feeds. */
let sorted: string | undefined;

/** Looks a lower-case word up in the sorted list by halving; the list is read at the first call. */
export function isEnglish(word: string): boolean {
  sorted ??= `\n${readFileSync(wordListPath, 'utf8').trim()}\n`;
  let low = 0;
  let high = sorted.length - 1;
  while (low < high) {
    const start = sorted.lastIndexOf('\n', Math.floor((low + high) / 2)) + 1;
    const end = sorted.indexOf('\n', start);
    const found = sorted.slice(start, end);
    if (found === word) return true;
    if (end < 0 || start > high) return false;
    if (found < word) low = end;
    else high = start - 1;
  }
  return false;
}
