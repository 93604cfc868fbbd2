/** What a piece says as the new value of a slot, where an entry is put right. */
import type { Piece } from './pieces.js';

/** The slots that the piece sets; undefined where it says nothing certain. */
export function valueSaid(piece: Piece): Readonly<Record<string, unknown>> | undefined {
  switch (piece.is) {
    case 'count': {
      const { value, vague, negative, allBut, outOf, more, weak } = piece.quantity;
      // "The other one" counts nothing.
      if (weak && piece.to - piece.from > 1) return undefined;
      const exact =
        value !== undefined && !vague && !negative && !more && allBut === undefined && outOf === undefined;
      return exact && value > 0 ? { count: value } : undefined;
    }
    case 'pots':
      return piece.pots === undefined || piece.vague ? undefined : { pots: piece.pots };
    case 'when':
      return piece.when.past === undefined || piece.when.past === 'ask'
        ? undefined
        : { date: piece.when.past };
    case 'place':
      return { place: piece.place };
    case 'size':
      return { potSize: piece.size };
    case 'cutting':
      return { cutting: piece.cutting };
    case 'medium':
      return { medium: piece.medium };
    case 'plant':
      return { ...piece.plant };
    default:
      return undefined;
  }
}
