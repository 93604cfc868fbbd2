/** A number of a clause as the cases see it. */
import type { Quantity } from '../../pieces/quantities/quantity.js';
import type { Seen } from './case.js';
import { leadsToPlant } from './leads-to-plant.js';

export interface CountSeen extends Seen<'count'> {
  readonly count: Quantity;
  /** A plant follows close behind it. */
  readonly leads: boolean;
}

/** A number as its cases see it. */
export const countSeen = (seen: Seen<'count'>): CountSeen => ({
  count: seen.piece.quantity,
  leads: leadsToPlant(seen.pieces, seen.at, seen.clause.to),
  ...seen,
});

/** The number itself, in the cases that have asked for one. */
export const numberOf = (quantity: Quantity | undefined): number => quantity?.value ?? 0;
