/** Words that stand for plants spoken of before. */
import type { Piece } from '../pieces/pieces.js';

/** "Them", "everything", "the trays". */
export const THEM =
  /^(?:them|em|those|they|everything|it|these|batch|lot|cuttings|pots|tray|trays|all|both)$/;

/** "Everything", "all of them", "the rest". */
export const isWhole = (piece: Piece | undefined): boolean =>
  piece?.is === 'count' && piece.quantity.whole !== undefined;
