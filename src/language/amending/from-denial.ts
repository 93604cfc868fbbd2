/** The value told beside what is denied: "8, not 9", "not the Salt Harrier, the Tallow Bell". */
import type { Piece, PieceOf } from '../pieces/pieces.js';
import { plantsIn } from '../sentences/sentences.js';
import type { Utterance } from '../pieces/utterance.js';
import { type Amended, put, spelledAnew } from './amended.js';
import { deniesDay } from './denial.js';
import { tellsLot } from './from-cue.js';
import { countsSomethingElse } from './nothing-right.js';
import { isSettable } from './settable.js';

/** Whether a value is denied there. */
export const deniesValue = (pieces: readonly Piece[], not: number): boolean =>
  deniesDay(pieces, not) || (not >= 0 && pieces.slice(not + 1).some(isSettable));

/** What is put in its place; undefined where that is the same. */
export function fromDenial(pieces: readonly Piece[], not: number, utterance: Utterance): Amended | undefined {
  const amended: Amended = { set: {} };
  const [named] = plantsIn(pieces);
  if (deniesDay(pieces, not)) {
    put(amended, pieces[not - 1], pieces, utterance);
    return named ? { ...amended, plant: named.plant } : amended;
  }
  const denied = pieces.slice(not + 1).find(isSettable);
  if (!denied) return undefined;
  const before = wantedBefore(pieces.slice(0, not), denied);
  const right = before ?? pieces.slice(pieces.indexOf(denied) + 1).find(({ is }) => is === denied.is);
  // "It was the 12 bus and not the 13".
  if ([right, denied].some((value) => value && countsSomethingElse(pieces, pieces.indexOf(value))))
    return undefined;
  put(amended, right, pieces, utterance);
  if (denied.is === 'plant') {
    amended.plant = denied.plant;
    if (right?.is === 'plant' && !setName(amended, denied, right, utterance)) return undefined;
  }
  for (const piece of pieces) {
    if (piece === before || piece === denied) continue;
    if (piece.is === 'plant' && denied.is !== 'plant') amended.plant ??= piece.plant;
    // "It was a Salt Harrier from 13 June": which lot.
    if (piece.is === 'when' && denied.is !== 'when' && !tellsLot(pieces, pieces.indexOf(piece)))
      amended.when ??= piece.when;
  }
  return amended;
}

/** What stands before "not" in the place of what is denied. */
function wantedBefore(before: readonly Piece[], denied: Piece): Piece | undefined {
  const same = before.findLast(({ is }) => is === denied.is);
  const pots = before.findLast(({ is }) => is === 'pots');
  // "Make that 7 pots not 6": six of what was told before it.
  const isOfPots =
    denied.is === 'count' &&
    pots?.is === 'pots' &&
    pots.pots !== undefined &&
    (same === undefined || pots === before.at(-1));
  return isOfPots ? pots : same;
}

/** The name as it is spelt now, where both were taken for one plant; whether that is another. */
function setName(
  { set }: Amended,
  denied: PieceOf<'plant'>,
  right: PieceOf<'plant'>,
  utterance: Utterance,
): boolean {
  const known = denied.plant.variety;
  if (known === undefined || set['variety'] !== known) return true;
  const variety = spelledAnew(denied, right, utterance);
  if (variety === undefined || variety === known) return false;
  set['variety'] = variety;
  return true;
}
