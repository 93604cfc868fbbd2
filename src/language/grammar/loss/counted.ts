/** Whether what was lost stands by the words that tell of it. */
import type { Piece } from '../../pieces.js';
import { closeBehind, follows, precedes } from '../rule.js';

/** Whether the words are followed by what they were done to. */
export const needsPlantOrCount = (pieces: readonly Piece[], _from: number, to: number): boolean =>
  follows(pieces, to, 'plant', 'count');

/** Whether a number stands close before or behind the words. */
export const counted = (pieces: readonly Piece[], from: number, to: number): boolean =>
  precedes(pieces, from, 7, 'count') || closeBehind(pieces, to, 'count');
