/** How many: exact, by the lot, vague, all, the rest, all but some, half, more than before. */
import { NUMBER_WORDS } from './numbers.js';
import { anotherOne, exactly, exactWords, isOnTop } from './quantities/exact.js';
import { inLots } from './quantities/lots.js';
import type { FoundQuantity } from './quantities/quantity.js';
import { beyond, vaguely, vagueWords } from './quantities/vague.js';
import { wholeWords, wholly } from './quantities/whole.js';
import { startsWithFigure, type Token } from '../row/tokens.js';

/** What a quantity may begin with, beside figures: most words begin none. */
const OPENING: ReadonlySet<string> = new Set([...NUMBER_WORDS, ...exactWords, ...vagueWords, ...wholeWords]);

/** The quantity that begins at token `at`. */
export function quantityAt(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  const token = tokens[at];
  if (!token || !(OPENING.has(token.text) || startsWithFigure(token) || isOnTop(tokens, at)))
    return undefined;
  return (
    beyond(tokens, at) ??
    wholly(tokens, at) ??
    inLots(tokens, at) ??
    exactly(tokens, at) ??
    vaguely(tokens, at) ??
    anotherOne(tokens, at)
  );
}
