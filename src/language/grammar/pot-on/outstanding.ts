/** Potting on told as work that waits. */
import type { Piece } from '../../pieces/pieces.js';
import { followsWord, wordAt } from '../rule.js';

/** "Potting on of these to be done", "… not finished", "… overdue", up to the next break. */
export const isOutstanding = (pieces: readonly Piece[], from: number, to: number): boolean =>
  wordAt(pieces, from) === 'potting' &&
  (followsWord(pieces, to, /^(?:not|due|needs?|outstanding|overdue)$/) || isToBeDone(pieces, to));

function isToBeDone(pieces: readonly Piece[], from: number): boolean {
  for (let at = from; at < pieces.length && pieces[at]?.is !== 'break'; at++)
    if (wordAt(pieces, at) === 'to' && /^(?:be|do)$/.test(wordAt(pieces, at + 1))) return true;
  return false;
}
