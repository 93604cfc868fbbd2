/** Where something is carried or stands: a place, or in or out of doors. */
import type { Piece } from '../../pieces/pieces.js';
import { follows, followsWord, wordAt } from '../rule.js';

export const OUTSIDE = /^(?:outside|indoors|inside|outdoors|under|upstairs|downstairs)$/;
export const toPlace = (pieces: readonly Piece[], _from: number, to: number): boolean =>
  (follows(pieces, to, 'place') && !isForPlace(pieces, to)) || followsWord(pieces, to, OUTSIDE);

/** "To Dilys for her balcony": whoever has them, and what for. */
export function isForPlace(pieces: readonly Piece[], to: number): boolean {
  const place = pieces.findIndex(({ is }, at) => at >= to && is === 'place');
  const lead = /^(?:the|her|his|their)$/.test(wordAt(pieces, place - 1)) ? place - 2 : place - 1;
  return lead > to && wordAt(pieces, lead) === 'for';
}
