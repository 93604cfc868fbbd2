/** Words that tell of what is still to come: "still to be potted on", "on order", "is taking six on Saturday", "soon, I hope". */
import type { Clause } from '../clauses/clauses.js';
import { isSomeones } from '../grammar/other-people.js';
import { wordAt } from '../grammar/rule.js';
import { leading } from '../grammar/runs.js';
import type { Piece, PieceOf } from '../pieces/pieces.js';

/** A day that no deed can have: "tomorrow", "next week". */
export const isToCome = (piece: Piece | undefined): piece is PieceOf<'when'> =>
  piece?.is === 'when' &&
  piece.when.past === 'ask' &&
  piece.when.future !== undefined &&
  piece.when.future !== 'ask';

/** "Still to be potted on", "due to be moved", "can be planted out"; no "had to be binned", "turned out to be dead". */
export function isToBe(before: readonly string[]): boolean {
  if (before.at(-1) !== 'be') return false;
  // "Crying out to be potted on".
  const out = before.at(-3) === 'out' && !/^turn/.test(before.at(-4) ?? '');
  if (out || /^(?:can|cannot|can't|may)$/.test(before.at(-2) ?? '')) return true;
  return (
    before.at(-2) === 'to' &&
    !/^(?:had|turned|turn|turns|out|seem|seems|seemed|appear|appears|appeared|found|look|looks|proved|got)$/.test(
      before.at(-3) ?? '',
    )
  );
}

/** "Jim is taking six on Saturday": a day to come. */
export function isArranged(pieces: readonly Piece[], { hit, from: start, to }: Clause): boolean {
  const from = hit?.from ?? to;
  // "Tomorrow I'm taking six".
  if (
    /^(?:i'm|we're)$/.test(wordAt(pieces, from - 1)) &&
    pieces.slice(start, from).some((piece) => isToCome(piece))
  )
    return true;
  return (
    (/^(?:am|is|are|i'm|we're|he's|she's|they're)$/.test(wordAt(pieces, from - 1)) ||
      isSomeones(wordAt(pieces, from - 1))) &&
    pieces
      .slice(from, to)
      .some(
        (piece) =>
          piece.is === 'when' &&
          piece.when.future !== undefined &&
          JSON.stringify(piece.when.past) !== JSON.stringify(piece.when.future),
      )
  );
}

/** "Ember Fox getting moved next Monday": a day to come. */
export const isBeingDone = (pieces: readonly Piece[], { hit, to }: Clause): boolean =>
  /^(?:getting|being)$/.test(wordAt(pieces, (hit?.from ?? to) - 1)) &&
  pieces.slice(hit?.to ?? to, to).some(isToCome);

const TIME_FOR = new RegExp(
  `^${leading("and|but|well|it's|its|it is|is")}(?:about |high |past |over |really )?time (?:(?:i|we|you|he|she|they|it|somebody|someone|the|my|our|those|these|that|them|were) |(?:got |was )?$)`,
);

/** "Time the Salt Harrier were potted on", "about time somebody watered the greenhouse"; no "time flies, potted on six". */
export const isTimeFor = (before: readonly string[]): boolean =>
  // "High time the Salt Harrier learned about weather, so two of them are out": done, and why.
  TIME_FOR.test(`${before.join(' ')} `) && before.lastIndexOf('so') < 3;

const ON_ORDER = /^(?:ordered|reordered|preordered|due|coming|expected|expecting|promised|awaiting|awaited)$/;
const COME_IN =
  /^(?:came|come|arrived|here|in|delivered|turned|landed|collected|picked|got|bought|received|given|gave)$/;

/** "Ordered 20 plugs", "36 plugs coming next week": not here yet. */
export function isOnOrder(pieces: readonly Piece[], { from, to }: Clause): boolean {
  const words = pieces.slice(from, to).flatMap((piece) => (piece.is === 'word' ? [piece.text] : []));
  return words.some((word) => ON_ORDER.test(word)) && !words.some((word) => COME_IN.test(word));
}

/** "Into the cold frame for hardening off": there already. */
export const isPutSomewhere = (pieces: readonly Piece[], { from }: Clause, to: number): boolean =>
  pieces.slice(from, to).some(({ is }) => is === 'plant') &&
  pieces
    .slice(from, to)
    .some((piece) => piece.is === 'place' && /^(?:into|in|to|onto|on|under)$/.test(piece.prep ?? ''));
