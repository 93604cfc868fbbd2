/** What stands around receipts: what was taken for granted, what is still open, more pages. */
import { listWords } from './speech.js';

export const moreLabel = 'More';

export function assumedWords(labels: readonly string[]): string {
  return `You didn’t say which; I took ${listWords(labels)}.`;
}

export function stillOpen(question: string): string {
  return `Still open: ${question}`;
}
