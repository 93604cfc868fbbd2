/** Whether cuttings are what a verb is about. */
import type { Piece } from '../../pieces/pieces.js';
import { CUTTINGS } from '../taken-away.js';
import { follows, followsWord, wordAt } from '../rule.js';
import { isRelative } from './told-before.js';
import { isWayThere } from './way-there.js';

/** No powder is told of farther behind. */
const LONGEST_TELLING = 60;

/** Whether cuttings stand behind the verb. */
export const mentionsCuttings = (pieces: readonly Piece[], to: number): boolean =>
  followsWord(pieces, to, CUTTINGS) || follows(pieces, to, 'cutting');

/** Whether cuttings stand anywhere behind, breaks or no breaks. */
export const namesCuttings = (pieces: readonly Piece[], to: number): boolean =>
  pieces
    .slice(to)
    .some((piece) => piece.is === 'cutting' || (piece.is === 'word' && CUTTINGS.test(piece.text)));

/** "So no Salt Harrier cuttings today": none are told of. */
const deniesCuttings = (pieces: readonly Piece[], from: number): boolean => {
  const named = pieces.findIndex(({ is }, at) => at >= from && (is === 'plant' || is === 'count'));
  return /^(?:no|without)$/.test(wordAt(pieces, named - 1));
};

/** Cuttings, or the powder for them, with a plant or a number, behind a verb that tells of more than cuttings. */
export const spoken = (pieces: readonly Piece[], from: number, to: number): boolean =>
  follows(pieces, to, 'count', 'plant') &&
  !deniesCuttings(pieces, to) &&
  (mentionsCuttings(pieces, to) ||
    pieces
      .slice(to, to + LONGEST_TELLING)
      .some((piece) => piece.is === 'word' && /^(?:hormone|clonex)$/.test(piece.text))) &&
  !isWayThere(pieces, from, to) &&
  !isRelative(pieces, from);
