/** "One of the Ember Fox (the 15 March lot) has gone": brackets around words that only tell which lot are left out. */
import { wordAt } from '../grammar/rule.js';
import { SEVERAL } from './lot-words.js';
import type { Piece } from '../pieces/pieces.js';

/** No longer words tell which lot: an article, a day or an age, the noun, and where it stands. */
const MOST_PIECES = 6;

/** The row without such brackets; what is told in others stays apart. */
export function withoutLotBrackets(pieces: readonly Piece[]): readonly Piece[] {
  const opens = pieces.findIndex(
    (piece, at) => isMark(piece, '(') && /^(?:plant|word)$/.test(pieces[at - 1]?.is ?? ''),
  );
  if (opens < 0) return pieces;
  const closes = pieces.findIndex((piece, at) => at > opens && isMark(piece, ')'));
  const inside = pieces.slice(opens + 1, closes);
  const isLot =
    closes > opens + 2 &&
    inside.length <= MOST_PIECES &&
    (wordAt(inside, 0) === 'the' || (inside[0]?.is === 'when' && /^the /i.test(inside[0].when.words))) &&
    inside.some((_, at) => SEVERAL.test(wordAt(inside, at))) &&
    // Something done to them, or their number, is a telling of its own.
    inside.every((piece) => /^(?:when|place|word)$/.test(piece.is) && !(piece.is === 'word' && piece.verb));
  return isLot ? [...pieces.slice(0, opens), ...inside, ...pieces.slice(closes + 1)] : pieces;
}

const isMark = (piece: Piece | undefined, mark: string): boolean =>
  piece?.is === 'break' && piece.mark === mark;
