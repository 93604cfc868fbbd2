/** How many: exact, by the lot, vague, all, the rest, all but some, half, more than before. */
import { anotherOne, exactly } from './quantities/exact.js';
import { inLots } from './quantities/lots.js';
import type { FoundQuantity } from './quantities/quantity.js';
import { beyond, vaguely } from './quantities/vague.js';
import { wholly } from './quantities/whole.js';
import type { Token } from './tokens.js';

/** The quantity that begins at token `at`. */
export function quantityAt(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  return (
    beyond(tokens, at) ??
    wholly(tokens, at) ??
    inLots(tokens, at) ??
    exactly(tokens, at) ??
    vaguely(tokens, at) ??
    anotherOne(tokens, at)
  );
}
