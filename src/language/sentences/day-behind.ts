/** The day of what was told, in a sentence of its own: "lost 3 Salt Harrier. Raging. Yesterday.", "misted it all. That was Sunday.", "I've got 10 cuttings of Salt Harrier. Took them on Saturday." */
import { MONTH } from '../pieces/no-days.js';
import type { Piece } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import type { Sentence } from './sentences.js';

const DEED =
  /^(?:strike|loss|check|potOn|pinch|move|hardenOff|plantOut|dispatch|receive|stock|tend|reading)$/;
const AROUND =
  /^(?:that|this|it|i|we|they|them|these|those|was|were|is|all|both|done|did|happened|on|back|only|just)$/;

/** Of cuttings, how they were come by is told once more. */
const TAKEN = /^(?:took|taken|struck|stuck|i've|we've|have)$/;

/** "That was", "both on"; of cuttings (`isStruck`) "I took them". */
const isAround = (piece: Piece, isStruck: boolean): boolean =>
  piece.is === 'break' ||
  (piece.is === 'word' && (AROUND.test(piece.text) || (isStruck && TAKEN.test(piece.text)))) ||
  (piece.is === 'count' && (piece.quantity.both === true || piece.quantity.whole === 'all'));

const THEM = /^(?:that|this|it|they|them|these|those)$/;

/** What was told, with its day; undefined where the sentence says anything else, or all has a day already. */
export function datedBy(
  told: readonly Proposal[],
  { pieces, asked }: Sentence,
): readonly Proposal[] | undefined {
  const isTaking = pieces.some((piece) => piece.is === 'word' && TAKEN.test(piece.text));
  const isOfThem = pieces.some((piece) => piece.is === 'word' && THEM.test(piece.text));
  const isStruck = isTaking && isOfThem && told.every(({ kind }) => kind === 'strike');
  const [when, more] = pieces.filter((piece) => !isAround(piece, isStruck));
  if (asked || more || when?.is !== 'when' || when.when.past === undefined || when.when.past === 'ask')
    return undefined;
  // "38F on the fire escape. In May!": told of today, and a wonder.
  if (MONTH.test(when.when.words) && told.every(({ kind }) => kind === 'reading')) return told;
  const isOpen = ({ kind, draft }: Proposal): boolean => DEED.test(kind) && draft.when === undefined;
  if (!told.every(({ kind }) => DEED.test(kind) || kind === 'remark') || !told.some(isOpen)) return undefined;
  return told.map((each) => (isOpen(each) ? { ...each, draft: { ...each.draft, when: when.when } } : each));
}

/** Told of another time than the heading's. */
const ANOTHER_TIME = /^(?:now|since|still|later|already|yet)$/;

/** "Yesterday: watered the greenhouse. Vented the tunnel.": the day that heads a note is of every sentence, where no other is told. */
export function underDay(told: readonly Proposal[], sentences: readonly Sentence[]): readonly Proposal[] {
  const [day, mark] = sentences[0]?.pieces ?? [];
  const isHeading =
    day?.is === 'when' &&
    (mark === undefined || (mark.is === 'break' && /^[:\u2013\u2014\n-]$/.test(mark.mark)));
  const others = sentences.flatMap(({ pieces }) => pieces).slice(1);
  if (!isHeading || typeof day.when.past !== 'string' || day.when.past === 'ask' || sentences.length < 2)
    return told;
  if (others.some((piece) => piece.is === 'when' || (piece.is === 'word' && ANOTHER_TIME.test(piece.text))))
    return told;
  // "Monday: pot these on. Water the porch.": a plan.
  if (told.some(({ future }) => future)) return told;
  return told.map((each) =>
    DEED.test(each.kind) && !each.draft.when ? { ...each, draft: { ...each.draft, when: day.when } } : each,
  );
}
