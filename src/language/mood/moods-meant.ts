/** The moods by which the clauses of a row are meant, each by its own words and by what stands around it. */
import type { Clause } from '../clauses/clauses.js';
import { moodsOnCondition } from './conditions.js';
import { asHeardOf } from './hearsay.js';
import type { Mood } from './case.js';
import { moodOf } from './mood.js';
import type { Piece } from '../pieces/pieces.js';
import { sharedMoods } from './side-by-side.js';

export function moodsMeant(pieces: readonly Piece[], clauses: readonly Clause[]): readonly Mood[] {
  const own = clauses.map((clause) => moodOf(pieces, clause));
  const heardOf = asHeardOf(pieces, clauses, sharedMoods(pieces, clauses, own));
  return moodsOnCondition(pieces, clauses, heardOf);
}
