/** Where a plant's name may stand: behind a count, "cuttings of" or a verb of taking. */
import { wordAt } from '../grammar/rule.js';
import type { Piece, PieceOf } from '../pieces.js';

const LINK =
  /^(?:of|the|my|some|new|more|fresh|another|those|these|called|named|lovely|good|nice|extra|little|old|big|cuttings|cutting|plugs|plug|liners|slips|pieces|bits|divisions|crowns|crown|tubers|tuber|stools|from|off|our|her|his)$/;

/** A crop, and no variety of it. */
export const isCrop = (piece: Piece | undefined): piece is PieceOf<'plant'> =>
  piece?.is === 'plant' && piece.plant.crop !== undefined && piece.plant.variety === undefined;

/** Behind a count, or behind "cuttings of", or straight behind a verb of taking. */
export function inPlantPosition(before: readonly Piece[]): boolean {
  let at = before.length - 1;
  let of = false;
  while (at >= 0 && LINK.test(wordAt(before, at))) {
    if (/^(?:cuttings|cutting|of)$/.test(wordAt(before, at))) of = true;
    at--;
  }
  const piece = before[at];
  if (!piece) return of;
  if (piece.is === 'count' || piece.is === 'cutting' || piece.is === 'pots') return true;
  if (of && wordAt(before, before.length - 1) !== 'cuttings')
    return piece.is === 'word' && piece.verb !== undefined;
  if (piece.is !== 'word' || !piece.verb) return false;
  return (
    /^(?:take|strike|insert|propagate|lose|sell|receive|buy|pinch|pot|plant|bin|check)$/.test(
      piece.verb.lemma,
    ) && piece.verb.form === 'past'
  );
}
