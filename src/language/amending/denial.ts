/** What stands behind "not": the value, or the day, that was told or noted wrongly. */
import type { Note } from '../note.js';
import type { Piece } from '../pieces/pieces.js';
import { plantsIn } from '../sentences/sentences.js';
import { isSettable } from './settable.js';

/** "Potted on 10 May, not 9": a day denied by its number. */
export function deniesDay(pieces: readonly Piece[], not: number): boolean {
  const day = pieces[not - 1];
  return (
    not > 0 &&
    day?.is === 'when' &&
    /\d/.test(day.when.words) &&
    pieces[not + 1]?.is === 'count' &&
    pieces.length === not + 2 &&
    !pieces.slice(0, not).some(({ is }) => is === 'count')
  );
}

/** "Died on 28 February, not 1 March": nobody denies a day who has not told it. */
export function deniesDate(pieces: readonly Piece[], not: number): boolean {
  return not > 0 && pieces[not + 1]?.is === 'when' && pieces.slice(0, not).some(({ is }) => is === 'when');
}

/** "I took 11 Ember Fox, not 10": the number denied is what was noted of that plant, some of which may be gone. */
export function deniesTheLedger(pieces: readonly Piece[], not: number, { context }: Note): boolean {
  const denied = pieces.slice(not + 1, not + 3).find(({ is }) => is === 'count');
  // "Potted on 5 into 7cm pots, not 9": nine of the size.
  if (pieces[not - 1]?.is === 'size' || (pieces[not - 1]?.is === 'break' && pieces[not - 2]?.is === 'size'))
    return false;
  const [plant] = plantsIn(pieces);
  const variety = plant?.plant.variety?.toLowerCase();
  // "I took 13, not 12": so many are known.
  if (denied?.is === 'count' && plant === undefined)
    return (context?.batches ?? []).some(({ count }) => count === denied.quantity.value);
  return (
    denied?.is === 'count' &&
    variety !== undefined &&
    (context?.batches ?? []).some(
      (batch) =>
        batch.variety?.toLowerCase() === variety &&
        ((batch.count ?? Infinity) <= (denied.quantity.value ?? -1) ||
          (batch.rooted !== undefined && batch.rooted === denied.quantity.value)),
    )
  );
}

/** A piece before "not" of the same kind as the one behind it. */
export function contrasted(pieces: readonly Piece[], not: number): boolean {
  if (deniesDay(pieces, not)) return true;
  const denied = pieces.slice(not + 1, not + 4).find(isSettable);
  return denied !== undefined && pieces.slice(0, not).some((piece) => piece.is === denied.is);
}
