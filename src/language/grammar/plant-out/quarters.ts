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

const plantedIn = (pieces: readonly Piece[], to: number): boolean =>
  // "In the honesty box": for sale.
  !followsWord(pieces, to, /^(?:honesty|stall|shop)$/) &&
  !isIndoors(pieces, to) &&
  (followsWord(pieces, to, GARDEN) ||
    pieces.slice(to, to + 8).some(
      (piece) =>
        piece.is === 'place' &&
        // "Brought in from the garden".
        piece.prep !== 'from' &&
        !/^(?:standing|heated|hot|mist|misting|propagating|propagation|rooting|winter (?=garden))\b/.test(
          piece.place,
        ) &&
        piece.place.split(' ').some((word) => GARDEN.test(word)),
    ));

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
    /(?<!\b(?:hot|heated|sand|mist|misting|rooting|prop|water|standing|nursery|holding|stock|propagating) )\b(?:bed|border|flowerbed|rockery)$/.test(
      piece.place,
    )
  );
};
