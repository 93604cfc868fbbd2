/** None of what there is: "none", "nothing rooted", "not one of them", "divil a one". */
import { CONTAINERS } from '../sizes.js';
import { type FoundQuantity, pastOf } from './quantity.js';
import { isPhraseAt, textAt, type Token } from '../../row/tokens.js';

const none = (tokens: readonly Token[], to: number): FoundQuantity => ({
  quantity: { value: 0 },
  to: pastOf(tokens, to),
});

export const noneAt = (tokens: readonly Token[], at: number): FoundQuantity => none(tokens, at + 1);

/** "Nothing rooted yet", "nothing has rooted". */
export function nothingAt(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  const did = /^(?:has|have|had|is|are)$/.test(textAt(tokens, at + 1)) ? at + 2 : at + 1;
  return /^(?:rooted|rooting)$/.test(textAt(tokens, did)) ? none(tokens, at + 1) : undefined;
}

/** "Took 40, not one rooted". */
const BEHIND_NONE =
  /^(?:yet|and|so|has|have|had|is|was|rooted|rooting|took|struck|survived|made|came|died|with|showing|left)$/;

const NOT_ONE: readonly (readonly string[])[] = [
  ['not', 'one', 'of'],
  ['not', 'a', 'single'],
  ['not', 'any', 'of'],
];

export function notOneAt(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  if (isPhraseAt(tokens, at, ['not', 'a', 'single', 'one'])) return none(tokens, at + 4);
  if (NOT_ONE.some((words) => isPhraseAt(tokens, at, words))) return none(tokens, at + 3);
  const behind = tokens[at + 2];
  const ends = behind === undefined || behind.is === 'mark' || BEHIND_NONE.test(behind.text);
  // "Two pots not one": one denied.
  return textAt(tokens, at + 1) === 'one' && ends && !CONTAINERS.has(textAt(tokens, at - 1))
    ? none(tokens, at + 2)
    : undefined;
}

/** "Divil a one", "sorra the root". */
export function divilAt(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  if (!/^(?:a|the)$/.test(textAt(tokens, at + 1))) return undefined;
  return none(tokens, textAt(tokens, at + 2) === 'one' ? at + 3 : at + 2);
}
