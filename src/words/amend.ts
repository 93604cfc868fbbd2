/** What is said when a note is put right. */
import { listWords } from './speech.js';

export const nothingToAmend = 'I have no note that this would put right.';
export const changeQuestion =
  'What should it say? For example “make that four”, “it was Sunday” or “cold frame”.';
export const sameAlready = 'That is how it stands already.';
export const sayWhatBefell =
  'Some of those have gone since they began. Say what should read otherwise: how many were taken, lost or gone.';
export const whichQuestion = 'Which one do you mean?';

/** "Put right: EF1: 14 cuttings …" */
export function putRight(receipts: readonly string[]): string {
  return `Put right. ${receipts.join(' ')}`;
}

/** Why a correction is not made: what no longer follows. */
export function wouldNotFollow(reasons: readonly string[]): string {
  return `I’ve left it as it was, for then this would no longer hold: ${listWords(reasons)}. Put that right first, or undo it.`;
}

export function renameQuestion(from: string, to: string, label: string): string {
  return `Is only ${label} called ${to}, or everything that is called ${from}?`;
}

export const renameOne = (label: string): string => `Only ${label}`;
export const renameAll = (from: string): string => `All ${from}`;
export const editedAway = 'Your message no longer says anything done, so I’ve taken back what it logged.';
