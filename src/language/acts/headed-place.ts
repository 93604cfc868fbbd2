/** "Tunnel 1 - 40 Salt Harrier dumped. Vents open": the place that heads a note is the one whose vents they are. */
import type { Piece } from '../pieces/pieces.js';

/** The last place before a token that stands at the head of a line or sentence with its mark behind it. */
export function headedPlace(pieces: readonly Piece[], before: number): string | undefined {
  let place: string | undefined;
  for (const [at, piece] of pieces.entries()) {
    if (piece.from >= before) break;
    const [lead, mark] = [pieces[at - 1], pieces[at + 1]];
    const opens = lead === undefined || (lead.is === 'break' && lead.hard);
    if (piece.is === 'place' && opens && mark?.is === 'break' && /^[:-]$/.test(mark.mark))
      place = piece.place;
  }
  return place;
}
