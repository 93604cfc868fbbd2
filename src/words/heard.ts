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
/** Says why a voice note was not heard and what to do; the note itself is lost to no one, it stands in the chat. */
export function unheardWords(why: string): string {
  switch (why) {
    case 'tooLong':
      return 'That voice note is too long for me: two minutes at most. Say it in pieces, or type it.';
    case 'tooLarge':
      return 'That file is too large for me. Say it in pieces, or type it.';
    case 'notAudio':
      return 'I can’t play that file: send it as a voice note, or type it.';
    case 'engineMissing':
      return 'I can’t hear voice notes: no speech engine is installed where I run. `npm run -s doctor` there says what to install. Type it for me, please.';
    case 'timedOut':
      return 'That took me too long to make out. Say it shorter, or type it.';
    case 'notFetched':
      return 'That voice note did not reach me. Send it again, or type it.';
    default:
      return 'I could not make that out: the speech engine failed. Send it again, or type it.';
  }
}

export const heardAgain = 'All right, noted nothing. Say it again or type it.';
