/** "Got" before another deed: what befell plants, or what was got done with them. */
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import { wordAt } from '../rule.js';

const SPOIL = whole`
  cook|bake|fry|frazzle|scorch|roast|crisp|burn|dry|wilt|freeze|frost|drown|soak
  squash|crush|knock|snap|break|eat|munch|nip|trample
`;

/** "Got cooked in the sun room": what befell them there. */
export const gotSpoilt = (pieces: readonly Piece[], from: number, to: number): boolean => {
  const befell = pieces[to];
  return (
    wordAt(pieces, from) === 'got' &&
    befell?.is === 'word' &&
    befell.verb?.form === 'past' &&
    SPOIL.test(befell.verb.lemma)
  );
};

/** "Got the lot shifted out to the shed": what was got is what was done, which speaks for itself. */
export function gotDone(pieces: readonly Piece[], from: number, to: number): boolean {
  if (wordAt(pieces, from) !== 'got') return false;
  for (let at = to; at < to + 6; at++) {
    const piece = pieces[at];
    if (piece === undefined || piece.is === 'break' || /^(?:and|then)$/.test(wordAt(pieces, at)))
      return false;
    if (piece.is === 'word' && CARRIED.test(piece.verb?.form === 'past' ? piece.verb.lemma : '')) return true;
  }
  return false;
}
const CARRIED =
  /^(?:move|shift|carry|transfer|relocate|lug|haul|drag|cart|wheel|trolley|ferry|rehouse|hump|bring)$/;
