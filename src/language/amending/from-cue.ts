/** The value behind the words that announce it: "make that 8", "should be the Tallow Bell". */
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';
import { plantsIn } from '../sentences/sentences.js';
import type { Utterance } from '../pieces/utterance.js';
import { type Amended, put, spelledAnew } from './amended.js';
import { cueEnd, relativeAt } from './cue.js';
import { countsSomethingElse } from './nothing-right.js';
import { upToReason } from './reason.js';
import { isSettable } from './settable.js';

/** What is set; undefined where no value is announced. `turns`: it stands behind the "but" of "I said 8 but it was 9". */
export function fromCue(
  pieces: readonly Piece[],
  line: string,
  turns: boolean,
  utterance: Utterance,
): Amended | undefined {
  const turn = turns ? pieces.findIndex((_, at) => /^(?:but|and)$/.test(wordAt(pieces, at))) : -1;
  const cue = turn >= 0 ? turn + 1 : (behindDenial(pieces) ?? cueEnd(pieces));
  // "I told you 10 but there are only 7 left now": both were true.
  if (cue < 0 || (turn >= 0 && /\b(?:now|left)\b/.test(line))) return undefined;
  const amended: Amended = { set: {} };
  const whole = upToReason(pieces.slice(cue), utterance);
  // "Six that went to the porch": what is told of the six says which entry is meant.
  const relative = relativeAt(whole);
  const behind = relative < 0 ? whole : whole.slice(0, relative);
  const told = behind.filter(
    (piece, at) => isSettable(piece) && !countsSomethingElse(behind, at) && !tellsLot(behind, at),
  );
  const onlyPlant = told.every(({ is }) => is === 'plant');
  // "I said 3 pots but it was 2", "it wasn't 3 pots I put them in, it was 2".
  const denies = turn >= 0 || /\b(?:wasn't|weren't|isn't|not)\b/.test(line);
  const isOfPots = denies && pieces.slice(0, cue).some(({ is }) => is === 'pots');
  for (const piece of told) {
    if (piece.is === 'plant' && !onlyPlant) amended.plant ??= piece.plant;
    else if (isOfPots && piece.is === 'count' && piece.quantity.value !== undefined)
      amended.set['pots'] = piece.quantity.value;
    else put(amended, piece, pieces, utterance);
  }
  // "Rusty Colinder should be Rusty Colander": both were taken for the one plant that is known.
  const old = plantsIn(pieces.slice(0, cue)).at(-1);
  const fresh = onlyPlant ? told[0] : undefined;
  if (old && fresh && old.plant.variety !== undefined && amended.set['variety'] === old.plant.variety) {
    const variety = spelledAnew(old, fresh, utterance);
    if (variety === undefined) return undefined;
    amended.set['variety'] = variety;
  }
  for (const piece of [...pieces.slice(0, cue), ...whole.slice(behind.length)]) {
    if (piece.is === 'plant') amended.plant ??= piece.plant;
    if (piece.is === 'when') amended.when ??= piece.when;
  }
  return amended;
}

/** "Actually it wasn't the Salt Harrier I took five of, it was the Tallow Bell": where what is said instead begins. */
function behindDenial(pieces: readonly Piece[]): number | undefined {
  const not = pieces.findIndex((_, at) => /^(?:wasn't|weren't|isn't)$/.test(wordAt(pieces, at)));
  if (not < 0 || not > 4) return undefined;
  const it = pieces.findIndex(
    (_, at) =>
      at > not &&
      /^(?:it|that|they)$/.test(wordAt(pieces, at)) &&
      /^(?:was|were|is)$/.test(wordAt(pieces, at + 1)),
  );
  return it < 0 ? undefined : it + 2;
}

/** "The 10 March batch", "from the Sunday lot", "lost one of the Salt Harrier from the 9th": which, and no other day. */
export function tellsLot(pieces: readonly Piece[], at: number): boolean {
  const day = pieces[at];
  if (day?.is !== 'when') return false;
  const isOfPlant =
    /^from\b/i.test(day.when.words) &&
    pieces[at - 1]?.is === 'plant' &&
    pieces.slice(0, at).some(({ is }) => is === 'count');
  return isOfPlant || /^(?:batch|lot|ones?|pots?|trays?)$/.test(wordAt(pieces, at + 1));
}
