/** The pieces that an amendment may set anew. */
import type { Piece } from '../pieces/pieces.js';

const SETTABLE: ReadonlySet<Piece['is']> = new Set<Piece['is']>([
  'count',
  'pots',
  'when',
  'place',
  'size',
  'plant',
  'celsius',
  'cutting',
  'medium',
]);

/** Whether an entry has a place for what the piece says. */
export function isSettable(piece: Piece | undefined): boolean {
  return piece !== undefined && SETTABLE.has(piece.is);
}
