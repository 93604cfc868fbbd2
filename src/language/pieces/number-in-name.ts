/** "24 Nine Bob Duchess", "Half Moon Hal": a number in words that begins a name nobody knows yet. */
import { crops, phraseAt, verbSense } from '../row/lexicon.js';
import { numberAt } from './numbers.js';
import { textAt, type Token } from '../row/tokens.js';

const isWrittenLarge = (token: Token | undefined): boolean => token?.is === 'word' && token.capital === true;

/** What a half may be of, or be told of, wherever a text has capitals. */
const HALVED = /^(?:a|an|the|my|our|of|them|those|these|dozen|all|are|is|and|i|we)$/;

/** Behind a number in figures one written large begins a name; "Half" beside another such word does anywhere. */
export function beginsName(tokens: readonly Token[], at: number): boolean {
  const next = tokens[at + 1];
  if (isBehindCounted(tokens, at)) return true;
  if (!isWrittenLarge(tokens[at]) || !isWrittenLarge(next)) return false;
  if (tokens[at - 1]?.is === 'number') return true;
  const isTitle = /^\p{Lu}\p{Ll}/u.test(next?.raw ?? '');
  const text = textAt(tokens, at + 1);
  return textAt(tokens, at) === 'half' && isTitle && !HALVED.test(text) && verbSense(text) === undefined;
}

/** "Fifteen cuttings of ten cent rodeo": how many has been said. */
export function isBehindCounted(tokens: readonly Token[], at: number): boolean {
  if (
    !isNumber(tokens, at) ||
    textAt(tokens, at - 1) !== 'of' ||
    !/^(?:cuttings|slips)$/.test(textAt(tokens, at - 2))
  )
    return false;
  const next = tokens[at + 1];
  return (
    [3, 4].some((back) => at >= back && isNumber(tokens, at - back)) &&
    next?.is === 'word' &&
    !isNumber(tokens, at + 1) &&
    !NO_NAME.test(next.text) &&
    phraseAt(crops, [next.text], 0) === undefined
  );
}

const isNumber = (tokens: readonly Token[], at: number): boolean => numberAt(tokens, at) !== undefined;

/** What so many are of, and no name: "of two sorts", "of three of them". */
const NO_NAME =
  /^(?:of|or|and|different|sorts?|kinds?|types?|varieties|plants?|pots?|trays?|new|more|other)$/;
