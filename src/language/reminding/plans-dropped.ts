/** Plans that came to nothing, or were put off: "was going to pot them on but the compost ran out", "… but will do it tomorrow". */
import { wordAt } from '../grammar/rule.js';
import type { Piece, When } from '../pieces/pieces.js';

export interface DroppedPlan {
  /** Where what came between begins. */
  readonly at: number;
  /** The day for which it is planned now, if any. */
  readonly instead?: When;
}

const WAS = /^(?:was|were)$/;
const BESIDE = /^(?:just|only|all|really|also|actually|originally|still|always)$/;
const TURN = /^(?:but|so|only|except|although|though|instead)$/;
const NOW_PLANNED =
  /^(?:will|i'll|we'll|it'll|they'll|that'll|doing|do|leave|leaving|left|wait|waiting|gonna|going|make|making|moved|put|pushed|shifted)$/;

/** What became of a plan whose words begin at `from` and end at `to`; undefined where it still stands. */
export function droppedPlan(pieces: readonly Piece[], from: number, to: number): DroppedPlan | undefined {
  let was = from - 1;
  while (BESIDE.test(wordAt(pieces, was))) was--;
  if (!WAS.test(wordAt(pieces, was))) return undefined;
  const at = pieces.findIndex(
    (piece, n) =>
      n >= to && (TURN.test(wordAt(pieces, n)) || (piece.is === 'break' && isTurn(pieces, n + 1))),
  );
  if (at < 0) return undefined;
  const behind = pieces.slice(at);
  const isPutOff = behind.some((piece) => piece.is === 'word' && NOW_PLANNED.test(piece.text));
  const day = behind.find((piece) => piece.is === 'when' && piece.when.future !== undefined);
  return isPutOff && day?.is === 'when' && isStillAbout(behind) ? { at, instead: day.when } : { at };
}

/** "…, doing it Saturday instead". */
const isTurn = (pieces: readonly Piece[], from: number): boolean =>
  pieces.slice(from).some((_, n) => wordAt(pieces, from + n) === 'instead');

/** "Will do it tomorrow", "it'll have to be Saturday", "leaving that till Sunday": of the same thing; no "it will rain tomorrow". */
const isStillAbout = (behind: readonly Piece[]): boolean =>
  behind.some(
    (_, n) =>
      (/^(?:it|that|them|those|so)$/.test(wordAt(behind, n)) &&
        /^(?:do|doing|leave|leaving|left|make|making|moved|put|pushed|shifted)$/.test(
          wordAt(behind, n - 1),
        )) ||
      (wordAt(behind, n) === 'be' && /^(?:to|will|it'll|that'll)$/.test(wordAt(behind, n - 1))) ||
      /^(?:wait|waiting)$/.test(wordAt(behind, n)),
  );
