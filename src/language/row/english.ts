/** Whether a word is plain English, so that spelling repair leaves it alone. */
import { readFileSync } from 'node:fs';
import wordListPath from 'word-list';

/** Some 270,000 words of plain letters, sorted, one a line; as bytes, since a text made of them takes megabytes more. */
let sorted: Buffer | undefined;
const LINE_FEED = 10;

/** Looks a lower-case word up in the sorted list by halving; the list is read at the first call. */
export function isEnglish(word: string): boolean {
  sorted ??= readFileSync(wordListPath);
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    const start = middle === 0 ? 0 : sorted.lastIndexOf(LINE_FEED, middle - 1) + 1;
    const feed = sorted.indexOf(LINE_FEED, middle);
    const end = feed < 0 ? sorted.length : feed;
    const found = sorted.toString('latin1', start, end);
    if (found === word) return true;
    if (found < word) low = end + 1;
    else high = start - 1;
  }
  return false;
}
