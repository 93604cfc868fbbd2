/** How many, as the words tell it. */
import { textAt, type Token } from '../../row/tokens.js';

export interface Quantity {
  readonly value?: number;
  readonly whole?: 'all' | 'rest';
  /** No number can be had from the words ("a few", "nearly a dozen", "three or four"). */
  readonly vague?: true;
  /** "All but two". */
  readonly allBut?: number;
  /** "Half", "three quarters": a part of what there is, numerator and denominator. */
  readonly share?: readonly [number, number];
  /** "Two more": on top of what was there. */
  readonly more?: true;
  /** "The other two": beside those that were told before. */
  readonly besides?: true;
  /** "The last two": in a look beside those that had rooted. */
  readonly last?: true;
  /** "Say six": the number to go by, where another was left open. */
  readonly settles?: true;
  /** "Three out of eight": the eight. */
  readonly outOf?: number;
  /** "Both": two, or each of two plants named. */
  readonly both?: true;
  /** "Some", which a check may be answered with. */
  readonly some?: true;
  /** "… so that's three gone": what was lost before comes to it; `bare` where nothing but its place says so. */
  readonly sum?: 'led' | 'bare';
  readonly negative?: true;
  /** A pronoun-like "one", which may count nothing. */
  readonly weak?: true;
}

export interface FoundQuantity {
  readonly quantity: Quantity;
  readonly to: number;
}

/** Behind the "of" that may follow a quantity. */
export function pastOf(tokens: readonly Token[], at: number): number {
  return textAt(tokens, at) === 'of' ? at + 1 : at;
}
