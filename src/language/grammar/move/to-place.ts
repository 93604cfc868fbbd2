/** Where something is carried or stands: a place, or in or out of doors. */
import type { Piece } from '../../pieces/pieces.js';
import { follows, followsWord } from '../rule.js';

export const OUTSIDE = /^(?:outside|indoors|inside|outdoors|under|upstairs|downstairs)$/;
export const toPlace = (pieces: readonly Piece[], _from: number, to: number): boolean =>
  follows(pieces, to, 'place') || followsWord(pieces, to, OUTSIDE);
