/** Doings of other people than the grower, and the places that are people: "Doreen's taken two", "to the school". */
import type { Piece } from '../pieces/pieces.js';
import { followsWord, wordAt } from './rule.js';

/** "Mr Abbery has kindly sent four rooted …": what somebody else sent comes in. */
export function sentByOthers(pieces: readonly Piece[], from: number, to: number): boolean {
  if (wordAt(pieces, from) !== 'sent' || followsWord(pieces, to, /^(?:to|off|out)$/)) return false;
  let at = from - 1;
  while (/^(?:has|have|had|kindly|very|just|also|now|already|again|then|by|post)$/.test(wordAt(pieces, at)))
    at--;
  const who = wordAt(pieces, at);
  return (
    who !== '' && !/^(?:i|we|i've|we've|and|then|been|were|was|are|is|be|got|they|all|that|it)$/.test(who)
  );
}

/** "Doreen's", who has done something; no "that's". */
export function isSomeones(word: string): boolean {
  return (
    /.'s$/.test(word) && !/^(?:it|that|this|there|what|here|who|where|how|when|let|she|he)'s$/.test(word)
  );
}

const RECEIVING = /\b(?:community|school|church|hospice|society|care home|food bank|village hall) ?/;

/** "The church basement", where plants stand. */
const STANDING =
  /\b(?:basement|cellar|windowsill|sill|greenhouse|glasshouse|polytunnel|tunnel|frame|bench|shelf|porch|shed|kitchen)$/;

/** Places that are people: what goes there leaves the collection. */
export function isReceiver(piece: Piece | undefined): boolean {
  return piece?.is === 'place' && RECEIVING.test(piece.place) && !STANDING.test(piece.place);
}

/** "Sal came for hers and took two more": somebody else's taking. */
export function cameAndTook(pieces: readonly Piece[], from: number): boolean {
  const before = pieces.slice(0, from);
  const came = before.findIndex(
    (piece) => piece.is === 'word' && /^(?:came|called|stopped|popped)$/.test(piece.text),
  );
  return came > 0 && !before.some((piece) => piece.is === 'word' && /^(?:i|we|i've|we've)$/.test(piece.text));
}
