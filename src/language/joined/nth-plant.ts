/** "The third Salt Harrier never rooted": one of them, told off by its place in the row. */
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';

const NTH = /^(?:second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth)$/;

/** What becomes of one of them; "the third has rooted" counts them all. */
const GONE =
  /^(?:died|dead|never|lost|threw|thrown|binned|chucked|tossed|dumped|rotted|wilted|collapsed|gave|given|sold|snapped)$/;
const LOT = /^(?:lots?|batch|batches|ones?|pots?|trays?|cuttings)$/;

/** The row with a one for such a word between "the" and a plant. */
export function withNthPlants(pieces: readonly Piece[]): readonly Piece[] {
  if (!pieces.some((piece) => piece.is === 'word' && GONE.test(piece.text))) return pieces;
  return pieces.map((piece, at) =>
    piece.is === 'word' &&
    NTH.test(piece.text) &&
    wordAt(pieces, at - 1) === 'the' &&
    pieces[at + 1]?.is === 'plant' &&
    !LOT.test(wordAt(pieces, at + 2))
      ? { is: 'count', quantity: { value: 1 }, from: piece.from, to: piece.to }
      : piece,
  );
}
