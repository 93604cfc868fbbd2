/** What is said to a spoken note: what was heard, its doubtful words and every number marked. */
import type { HeardWord } from '../language/note.js';

/** Below this posterior a word is marked as doubtful. */
const DOUBTFUL_BELOW = 0.5;

const numberWord =
  /^(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|dozen|half|(?:thir|four|fif|six|seven|eigh|nine)teen|(?:twen|thir|for|fif|six|seven|eigh|nine)ty|hundred|score|couple|all|none|both)$/;

export const heardButtons = ['Yes, note it', 'No'] as const;

/** "I heard: took *four* cuttings of (ember?) fox. Is that right?" */
export function heardQuestion(words: readonly HeardWord[]): string {
  return `I heard: ${heardWords(words)}. Is that right?`;
}

/** Before the receipt of a note that needed no yes. */
export function heardSurely(words: readonly HeardWord[]): string {
  return `I heard: ${heardWords(words)}.`;
}

export function heardWords(words: readonly HeardWord[]): string {
  return words
    .map(({ word, p }) => (p < DOUBTFUL_BELOW ? `(${word}?)` : numberWord.test(word) ? `*${word}*` : word))
    .join(' ');
}

export const heardNothing = 'I heard no words in that. Say it again, closer, or type it.';
export const heardAgain = 'All right, noted nothing. Say it again or type it.';
