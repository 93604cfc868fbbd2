/** A deed that no rule reads, before the one that is read: "brought all the Salt Harrier across, and gave 3 Tallow Bell to Pat". */
import { boundaryBefore, isBoundary } from './boundaries.js';
import { isKnown } from '../row/lexicon.js';
import type { Piece } from '../pieces/pieces.js';

const LEAD = /^(?:i|we|i've|we've|have|also|then|just|later|today|yesterday|finally|even|after|that)$/;

/** Where the clause of the head at `head` begins: behind another deed's verb and its variety, where only a joint and who did it stand between. */
export function behindOtherDeed(pieces: readonly Piece[], start: number, head: number): number {
  let at = head - 1;
  while (at > start && leads(pieces[at])) at--;
  if (at <= start || !isBoundary(pieces[at])) return start;
  const before = pieces.slice(start, boundaryBefore(pieces, start, at));
  const verb = before.findIndex(
    (piece) => piece.is === 'word' && (piece.verb?.form === 'past' || isDone(piece.text)),
  );
  const isOther =
    verb >= 0 &&
    before.slice(verb).some((piece) => piece.is === 'plant' && piece.plant.variety !== undefined) &&
    !before.slice(verb + 1).some(isBoundary);
  return isOther ? at + 1 : start;
}

/** "Tidied", of no verb that the word list has. */
const isDone = (word: string): boolean => /\p{L}{3}ed$/u.test(word) && !isKnown(word);

const leads = (piece: Piece | undefined): boolean =>
  piece?.is === 'when' || (piece?.is === 'word' && LEAD.test(piece.text));
