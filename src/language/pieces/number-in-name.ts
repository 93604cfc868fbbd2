/** "24 Nine Bob Duchess", "Half Moon Hal": a number in words that begins a name nobody knows yet. */
import { verbSense } from '../row/lexicon.js';
import { textAt, type Token } from '../row/tokens.js';

const isWrittenLarge = (token: Token | undefined): boolean => token?.is === 'word' && token.capital === true;

/** What a half may be of, or be told of, wherever a text has capitals. */
const HALVED = /^(?:a|an|the|my|our|of|them|those|these|dozen|all|are|is|and|i|we)$/;

/** Behind a number in figures one written large begins a name; "Half" beside another such word does anywhere. */
export function beginsName(tokens: readonly Token[], at: number): boolean {
  const next = tokens[at + 1];
  if (!isWrittenLarge(tokens[at]) || !isWrittenLarge(next)) return false;
  if (tokens[at - 1]?.is === 'number') return true;
  const isTitle = /^\p{Lu}\p{Ll}/u.test(next?.raw ?? '');
  const text = textAt(tokens, at + 1);
  return textAt(tokens, at) === 'half' && isTitle && !HALVED.test(text) && verbSense(text) === undefined;
}
