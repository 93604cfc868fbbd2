/** Where "rooted" tells which plants are meant and not what a look found: "six rooted plants", "the eight that had rooted". */
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, wordAt } from '../rule.js';

/** "Six rooted plants", "given a rooted westringia". */
export const rootedIsAdjective = (pieces: readonly Piece[], from: number, to: number): boolean => {
  let lead = from - 1;
  while (/^(?:well|already|little|young|small|tiny|nicely|fully)$/.test(wordAt(pieces, lead))) lead--;
  const before = wordAt(pieces, lead);
  // "Brought six little rooted plants", "ten young ones already well rooted in it": as they came.
  const came = pieces
    .slice(0, from)
    .some(
      (piece) =>
        piece.is === 'word' &&
        /^(?:came|received|arrived|bought|brought|delivered|given|sent)$/.test(piece.text) &&
        !/^(?:have|has|had|are|is)$/.test(wordAt(pieces, from - 1)),
    );
  if (came && lead < from - 1) return true;
  // "Bought three at the fair, rooted already, in 9cm pots".
  const isBought = pieces
    .slice(0, lead)
    .some((_, at) =>
      /^(?:bought|received|collected|picked up)/.test(`${wordAt(pieces, at)} ${wordAt(pieces, at + 1)}`),
    );
  if (
    isBought &&
    pieces[lead]?.is === 'break' &&
    (wordAt(pieces, to) === 'already' || pieces[to]?.is === 'break')
  )
    return true;
  const verbAround = (piece: Piece): boolean =>
    piece.is === 'word' &&
    piece.verb?.form === 'past' &&
    !/^(?:rooted|had|been|were|was|are|is|have|has)$/.test(piece.text);
  // "Eight rooted young plants".
  const noun = /^(?:young|little|small|tiny|healthy|strong|good|fine)$/.test(wordAt(pieces, to))
    ? to + 1
    : to;
  if (
    /^(?:plants?|plugs?|liners?|babies|starts|seedlings|cuttings|slips|bits|pieces|one|ones)$/.test(
      wordAt(pieces, noun),
    ) &&
    !/^(?:are|is|have|has)$/.test(before)
  )
    return true;
  if (
    /^(?:arrived|came|bought|received|delivered|already|come)$/.test(before) &&
    pieces.slice(0, from).some(verbAround)
  )
    return true;
  // "Given a rooted westringia".
  if (/^(?:a|an|another)$/.test(before) && pieces[to]?.is === 'plant') return true;
  // "4 flats of 50 rooted Salt Harrier came in".
  if (
    pieces[to]?.is === 'plant' &&
    pieces[lead]?.is !== 'word' &&
    pieces.slice(0, from).some(({ is }) => is === 'word') &&
    pieces
      .slice(0, from)
      .some(
        (piece) =>
          piece.is === 'word' &&
          /^(?:came|received|arrived|got|bought|bringing|brought|dropped|turned|given|(?:post|parcel)(?:'s)?)$/.test(
            piece.text,
          ),
      )
  )
    return true;
  const ofPlant =
    wordAt(pieces, to) === 'of' &&
    (pieces[to + 1]?.is === 'plant' ||
      (/^(?:the|my|those)$/.test(wordAt(pieces, to + 1)) && pieces[to + 2]?.is === 'plant'));
  // "The 4 rooted basement Salt Harrier".
  const isPlaced = pieces[to]?.is === 'place' && pieces[to + 1]?.is === 'plant';
  const adjective = pieces[to]?.is === 'plant' || isPlaced || ofPlant;
  // "The ten rooted Salt Harrier are in 3 inch pots".
  if (
    (pieces[from - 1]?.is === 'count' || /^(?:the|my|those|all)$/.test(before)) &&
    adjective &&
    pieces.slice(to).some(({ is }) => is === 'size')
  )
    return true;
  if (
    adjective &&
    (pieces[from - 1]?.is === 'count' || /^(?:the|my|those|these)$/.test(before)) &&
    // "4 rooted of the Salt Harrier I took on 20 March": the verb tells which.
    pieces.some(
      (piece, at) =>
        verbAround(piece) && !(pieces[at - 2]?.is === 'plant' && /^(?:i|we)$/.test(wordAt(pieces, at - 1))),
    )
  )
    return true;
  return closeBehind(pieces, to, 'medium') && closeBehind(pieces, to, 'plant');
};

const DEED = /^(?:pot|plant|move|give|sell|pinch|put|shift|send|swap)$/;

/** "Potted on the three with roots", "all of them that had roots": `from` is at the "with" or the "had". */
export const hadByThose = (pieces: readonly Piece[], from: number): boolean => {
  const at = wordAt(pieces, from) === 'with' ? from : from - 1;
  return (
    /^(?:with|that|which|that['’](?:s|ve|d))$/.test(wordAt(pieces, at)) &&
    pieces
      .slice(0, at)
      .some((piece) => piece.is === 'word' && piece.verb?.form === 'past' && DEED.test(piece.verb.lemma))
  );
};

/** "… the eight that had rooted" behind another act. */
export const tellsWhichOnes = (pieces: readonly Piece[], from: number): boolean => {
  let at = from - 1;
  // "Lost all those not rooted".
  if (wordAt(pieces, at) === 'not' && /^(?:those|them|ones|all|that|any)$/.test(wordAt(pieces, at - 1)))
    return pieces
      .slice(0, at)
      .some(
        (piece) =>
          piece.is === 'word' &&
          /^(?:lose|bin|chuck|throw|compost|give|sell|move)$/.test(piece.verb?.lemma ?? ''),
      );
  while (/^(?:had|have|has|already|all|never|not|hadn't|haven't|hasn't|didn't)$/.test(wordAt(pieces, at)))
    at--;
  return (
    /^(?:that|which|who|(?:that|which)['’](?:s|ve|d))$/.test(wordAt(pieces, at)) &&
    pieces
      .slice(0, at)
      .some(
        (piece) =>
          piece.is === 'word' &&
          piece.verb?.form === 'past' &&
          !/^(?:be|have|check|look)$/.test(piece.verb.lemma),
      )
  );
};
