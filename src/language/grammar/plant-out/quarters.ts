/** Final quarters: beds, borders, tubs and the ground. */
import type { Piece } from '../../pieces/pieces.js';
import { followsWord, wordAt } from '../rule.js';

export const GARDEN =
  /^(?:bed|beds|border|borders|ground|garden|flowerbed|flowerbeds|rockery|urn|urns|planter|planters|tubs|tub|trough|troughs|barrel|barrels|container|containers|basket|baskets|windowbox|windowboxes|patch|plot|allotment|verge|bank|lawn|soil|rows|row|hedge|orchard|basket|baskets|boxes|box|avenue|sundial|flowerpots)$/;
/** "In a trough on the windowsill": indoors, however it is planted. */
const isIndoors = (pieces: readonly Piece[], to: number): boolean =>
  pieces
    .slice(to, to + 8)
    .some(
      (piece) =>
        piece.is === 'place' &&
        piece.prep === 'on' &&
        /\b(?:windowsill|windowledge|window ledge|sill|bench|shelf|staging|table|heat mat|landing|mantelpiece)\b/.test(
          piece.place,
        ),
    );
/** The row up to "so the bed can be scrubbed", "because the border floods": what is told for a reason goes nowhere. */
export function withoutReason(pieces: readonly Piece[], to: number): readonly Piece[] {
  const at = pieces.findIndex(
    (_, n) =>
      n >= to &&
      /^(?:so|because|cos|coz|since|while|whilst)$/.test(wordAt(pieces, n)) &&
      /^(?:i|we|he|she|they|it|you|that|there|the|this|my|our)$/.test(wordAt(pieces, n + 1)),
  );
  return at < 0 ? pieces : pieces.slice(0, at);
}

export const garden = (row: readonly Piece[], _from: number, to: number): boolean =>
  plantedIn(withoutReason(row, to), to);

/** A garden's word before the next mark; no "Thurlow Garden Society", no "plot party". */
function gardenFollows(pieces: readonly Piece[], from: number): boolean {
  for (let at = from; at < pieces.length && pieces[at]?.is !== 'break'; at++)
    if (GARDEN.test(wordAt(pieces, at)) && !PEOPLE.test(wordAt(pieces, at + 1))) return true;
  return false;
}

const PEOPLE =
  /^(?:society|club|centre|center|association|shop|show|party|committee|people|folk|ladies|lads|neighbou?rs?|holders?|raffle|sale|fair|open)$/;

const plantedIn = (pieces: readonly Piece[], to: number): boolean =>
  // "In the honesty box": for sale.
  !followsWord(pieces, to, /^(?:honesty|stall|shop)$/) &&
  !isIndoors(pieces, to) &&
  (gardenFollows(pieces, to) ||
    pieces.slice(to, to + 8).some(
      (piece) =>
        piece.is === 'place' &&
        // "Brought in from the garden".
        piece.prep !== 'from' &&
        !/^(?:standing|heated|heat|hot|mist|misting|weaning|propagating|propagation|rooting|winter (?=garden))\b/.test(
          piece.place,
        ) &&
        piece.place.split(' ').some((word) => GARDEN.test(word)),
    ));

/** Cuttings, which root where they stand: "five cuttings put in the long bed". */
export const areCuttings = (pieces: readonly Piece[]): boolean =>
  pieces.some(
    (piece) =>
      piece.is === 'cutting' ||
      (piece.is === 'word' &&
        /^(?:cuttings?|slips?|shoots?|tips|snippets?|snips|sprigs?|twigs?|stems?|wands?|basals)$/.test(
          piece.text,
        )),
  );

/** "The Salt Harrier that were living in the front bed": where they stood. */
export function tellsWhich(pieces: readonly Piece[], from: number): boolean {
  const verb = wordAt(pieces, from) === 'living' ? from - 1 : from;
  return (
    /^(?:that|which|who)$/.test(wordAt(pieces, verb - 1)) &&
    /^(?:is|are|was|were|had)$/.test(wordAt(pieces, verb))
  );
}

/** "In the ground", as a word or as a place. */
export const groundAt = (pieces: readonly Piece[], at: number): boolean => {
  const piece = pieces[at];
  return wordAt(pieces, at) === 'ground' || (piece?.is === 'place' && /^(?:open )?ground$/.test(piece.place));
};

/** "In the far bed": for good; no sand bed, and none where pots stand. */
export const bedAt = (pieces: readonly Piece[], at: number): boolean => {
  const piece = pieces[at];
  return (
    piece?.is === 'place' &&
    /(?<!\b(?:hot|heat|heated|sand|mist|misting|rooting|prop|water|standing|nursery|holding|stock|propagating) )\b(?:bed|border|flowerbed|rockery)$/.test(
      piece.place,
    )
  );
};
