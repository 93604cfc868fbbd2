/** Words of striking that tell which cuttings are meant: "the ones I took on 5 March". */
import type { Piece } from '../../pieces/pieces.js';
import { sourceBefore } from '../../clauses/source-led.js';
import { wordAt } from '../rule.js';

/** "The ones I took on 5 March", "the Salt Harrier struck in April": the words tell which, nothing new was struck. */
export function isRelative(pieces: readonly Piece[], from: number): boolean {
  if (tellsWhichLot(pieces, from)) return true;
  let at = from - 1;
  while (/^(?:have|had|just|only|last|first|did|all)$/.test(wordAt(pieces, at))) at--;
  if (!/^(?:i|we)$/.test(wordAt(pieces, at))) return false;
  const before = wordAt(pieces, at - 1);
  return (
    /^(?:ones|those|that|which|lot|batch|plants|one|what)$/.test(before) ||
    (pieces[at - 1]?.is === 'plant' &&
      at > 1 &&
      !/^of$/.test(wordAt(pieces, at - 2)) &&
      // "From the Tallow Bell I took six".
      !(pieces[from + 1]?.is === 'count' && sourceBefore(pieces, at - 1) !== undefined)) ||
    (/^cuttings$/.test(before) && wordAt(pieces, at - 2) !== '')
  );
}

/** A day behind plants that have an article, or on which such plants were struck, beside something done to them. */
function tellsWhichLot(pieces: readonly Piece[], from: number): boolean {
  const day = pieces[from + 1];
  const isKnown = day?.is === 'when' && day.struck === true;
  // "The younger Salt Harrier, struck 16 March, have four with roots".
  const named = pieces[isKnown && pieces[from - 1]?.is === 'break' ? from - 2 : from - 1];
  const isNamed =
    named?.is === 'plant' || /^(?:ones|those|lot|batch|cuttings)$/.test(wordAt(pieces, from - 1));
  const article = named?.is === 'word' && named.text === 'those' ? from - 1 : from - 2;
  // "The ones struck on 16 March", with nothing else told: which.
  const isAlone =
    /^(?:ones|those|lot|batch)$/.test(wordAt(pieces, from - 1)) &&
    !pieces.some(({ is }) => is === 'count' || is === 'plant' || is === 'pots');
  return (
    isNamed &&
    day?.is === 'when' &&
    (isKnown || /^(?:the|those|these|my|of)$/.test(wordAt(pieces, article))) &&
    (isAlone ||
      pieces.some(
        (piece, at) =>
          at !== from &&
          piece.is === 'word' &&
          (piece.verb?.form === 'past' || /^(?:roots|dead)$/.test(piece.text)) &&
          !/^(?:be|have|take|strike|stick)$/.test(piece.verb?.lemma ?? ''),
      ))
  );
}
