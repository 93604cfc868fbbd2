/** The slot of a draft that a piece fills by itself: a pot size, a place, a medium, a day. */
import type { Piece } from '../../pieces/pieces.js';
import type { Draft } from './draft.js';
import { currentDraft, noteSlot, type ToldSoFar } from './told-so-far.js';

/** Puts what the piece tells into the current draft, where the slot is still empty. */
export function fillSlot(piece: Piece, told: ToldSoFar): void {
  const draft = currentDraft(told);
  // "In the ground, bottom garden": the ground is anywhere.
  if (piece.is === 'place' && isGround(draft.place)) delete draft.place;
  for (const [slot, value] of Object.entries(slotsOf(piece)) as [keyof Draft, unknown][])
    if (value !== undefined && draft[slot] === undefined) {
      (draft as Record<string, unknown>)[slot] = value;
      noteSlot(told, slot);
    }
}

/** Whether a place is no more than the ground. */
export const isGround = (place: string | undefined): boolean =>
  place !== undefined && /^(?:open )?ground$/.test(place);

function slotsOf(piece: Piece): Partial<Record<keyof Draft, unknown>> {
  switch (piece.is) {
    case 'pots':
      return { pots: piece.pots, each: piece.each, potsVague: piece.vague };
    case 'size':
      return { size: piece.size };
    case 'place':
      return { [piece.prep === 'from' || piece.prep === 'off' ? 'fromPlace' : 'place']: piece.place };
    case 'medium':
      return { medium: piece.medium };
    case 'cutting':
      return { cutting: piece.cutting };
    case 'when':
      return { when: piece.when };
    case 'celsius':
      return { celsius: piece.celsius };
    default:
      return {};
  }
}
