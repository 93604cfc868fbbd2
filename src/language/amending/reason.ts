/** Where the value of an amendment ends and its reason begins. */
import { wordAt } from '../grammar/rule.js';
import { anyOf, opening } from '../phrases.js';
import { lineOf } from '../sentences/sentences.js';
import type { Piece } from '../pieces/pieces.js';
import type { Utterance } from '../pieces/utterance.js';
import { isSettable } from './settable.js';

/** A clause with a subject of its own. */
const CLAUSE = opening`
  (and |but |as |for |because |cos )?${anyOf`
    i|we|i'd|it|they|there|the|one|two|some|someone|another
  `}( \S*){0,3} ${anyOf`
    was|wasn't|were|weren't|is|are|had|hadn't|has|hasn't|have|did|didn't
    got|forgot|ran|found|missed|spotted|fell|broke|looked|needed|turned|came|perked|rallied|recovered|survived
  `}
  (and |i )?(found|spotted|missed|overlooked|forgot|dropped|lost) (one|two|three|another|some|a few|a couple)\b
  (just |i('ve| have) )?(just )?found (it|them|the) 
`;

const FOUND = /^(?:found|spotted|missed|overlooked)$/;

/** "… ten, the last two hadn't the roots for it": what a clause of its own adds behind the value tells why. */
export function upToReason(pieces: readonly Piece[], utterance: Utterance): readonly Piece[] {
  const value = pieces.findIndex(isSettable);
  const end = pieces.findIndex(
    ({ is }, at) =>
      at > value &&
      (((is === 'break' || wordAt(pieces, at) === 'and') &&
        CLAUSE.test(lineOf(pieces.slice(at + 1), utterance))) ||
        // "Make that nine found another one on the bench".
        (FOUND.test(wordAt(pieces, at)) && CLAUSE.test(lineOf(pieces.slice(at), utterance)))),
  );
  return value < 0 || end < 0 ? pieces : pieces.slice(0, end);
}

/** The words between the marks beside a piece: what follows them is a reason. */
export function partOf(piece: Piece, pieces: readonly Piece[], utterance: Utterance): string {
  const at = pieces.indexOf(piece);
  const from = pieces.slice(0, at).findLastIndex(({ is }) => is === 'break') + 1;
  const to = pieces.findIndex(({ is }, n) => n > at && is === 'break');
  return lineOf(pieces.slice(from, to < 0 ? undefined : to), utterance);
}
