/** What is left of what there is: "the rest", "others composted", "the remaining four", "the other two". */
import { verbSense } from '../../row/lexicon.js';
import { numberAt } from '../numbers.js';
import { type FoundQuantity, pastOf } from './quantity.js';
import { isPhraseAt, textAt, type Token } from '../../row/tokens.js';

/** A name stands masked. */
const NAME = '\u0000';

export function restAt(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  const left = whatIsLeft(tokens, at);
  if (left > at) return { quantity: { whole: 'rest' }, to: left };
  const hasThe = textAt(tokens, at) === 'the';
  const the = hasThe ? at + 1 : at;
  const word = textAt(tokens, the);
  if (/^(?:remaining|other)$/.test(word)) return othersCounted(tokens, the);
  if (hasThe && word === 'last' && isOfNamed(tokens, the + 1))
    return { quantity: { whole: 'all' }, to: the + 2 };
  if (/^(?:last|final)$/.test(word)) return lastCounted(tokens, the);
  return isTheRest(tokens, at, word, hasThe)
    ? { quantity: { whole: 'rest' }, to: pastOf(tokens, the + 1) }
    : undefined;
}

/** "Brought what was left over to the bench": where the words end; `at` where they are none. */
function whatIsLeft(tokens: readonly Token[], at: number): number {
  if (textAt(tokens, at) !== 'what' && textAt(tokens, at) !== "what's") return at;
  const left = textAt(tokens, at) === "what's" ? at + 1 : at + 2;
  const isSo = left === at + 1 || /^(?:was|is|are|were)$/.test(textAt(tokens, at + 1));
  // "What was left behind", "what's left to do?": no plants.
  return isSo && textAt(tokens, left) === 'left' && verbSense(textAt(tokens, at - 1))?.form === 'past'
    ? left + 1
    : at;
}

/** "Lost the last of the Ember Fox": all that were left of them; a name stands masked. */
function isOfNamed(tokens: readonly Token[], at: number): boolean {
  if (textAt(tokens, at) !== 'of') return false;
  return textAt(tokens, /^(?:the|my|our)$/.test(textAt(tokens, at + 1)) ? at + 2 : at + 1) === NAME;
}

function isTheRest(tokens: readonly Token[], at: number, word: string, hasThe: boolean): boolean {
  if (!/^(?:rest|remainder|balance|others)$/.test(word)) return false;
  // "Two of the others rotted" are two.
  if (hasThe && word === 'others' && textAt(tokens, at - 1) === 'of' && numberAt(tokens, at - 2))
    return false;
  if (hasThe && word !== 'balance') return true;
  const before = textAt(tokens, at - 1);
  const isBehindDeed = verbSense(before)?.form === 'past';
  const opens = opensTelling(tokens, at);
  const behind = at + (hasThe ? 2 : 1);
  // "200 rooted, rest binned", "others composted", "balance to Ken".
  if (
    (opens || before === 'and') &&
    (verbSense(textAt(tokens, behind))?.form === 'past' || isOnward(tokens, behind))
  )
    return true;
  // "Remainder of Salt Harrier potted into 9cm": a name stands masked.
  if (textAt(tokens, behind) === 'of' && word !== 'others' && (opens || hasThe)) {
    const named = /^(?:the|my|our)$/.test(textAt(tokens, behind + 1)) ? behind + 2 : behind + 1;
    if (textAt(tokens, named) === NAME) return true;
  }
  if (word !== 'rest') return false;
  // "Sold 4 at the market rest went in the rockery", with no mark.
  if (
    verbSense(textAt(tokens, behind))?.form === 'past' &&
    !/^(?:a|little|good|no|well|my|some|bed)$/.test(before)
  )
    return true;
  if (isPhraseAt(tokens, behind, ['of', 'the']) && (opens || isBehindDeed)) return true;
  // "Moved rest to the frame", "binned rest".
  return isBehindDeed && !/^(?:had|got|let|needed|wanted|did|was|were|been|lay|laid)$/.test(before);
}

const FATE = /^(?:die|rot|root|collapse|snap|wilt|damp)$/;
const PLIGHT = /^(?:dead|mush|mushy|slime|mouldy|black|rotten|gone|shrivelled|dying)$/;

/** "The other is dead", "the other rotted": one. */
function isTheOther(tokens: readonly Token[], at: number): boolean {
  if (textAt(tokens, at) !== 'other' || textAt(tokens, at - 1) !== 'the') return false;
  const plight = /^(?:is|has|was)$/.test(textAt(tokens, at + 1))
    ? textAt(tokens, at + 2)
    : textAt(tokens, at + 1);
  return PLIGHT.test(plight) || FATE.test(verbSense(plight)?.lemma ?? '');
}

/** "The remaining four", "other two", "the remaining". */
function othersCounted(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  if (isTheOther(tokens, at)) return { quantity: { value: 1, besides: true }, to: at + 1 };
  const found = numberAt(tokens, at + 1);
  if (!found)
    return textAt(tokens, at) === 'remaining'
      ? { quantity: { whole: 'rest' }, to: pastOf(tokens, at + 1) }
      : undefined;
  const weak = textAt(tokens, at + 1) === 'one' ? { weak: true as const } : {};
  return { quantity: { value: found.value, besides: true, ...weak }, to: pastOf(tokens, found.to) };
}

const SPAN_OR_LOT =
  /^(?:second|minute|hour|day|night|evening|weekend|week|fortnight|month|season|year|time|lot|batch|tray|pot|row|note|entry|message|in|on)(?:e?s)?$/;

/** "The last two have rooted too": beside those before them; "the last two weeks", "the last two lots" count no plants. */
function lastCounted(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  const found = numberAt(tokens, at + 1);
  if (!found || SPAN_OR_LOT.test(textAt(tokens, found.to)) || /^of$/.test(textAt(tokens, at - 1)))
    return undefined;
  const isOne = textAt(tokens, at + 1) === 'one';
  // "Four in each bar the last one": a pot.
  if (isOne && textAt(tokens, found.to) !== NAME && !/^(?:of|has)$/.test(textAt(tokens, found.to)))
    return undefined;
  const weak = isOne ? { weak: true as const } : {};
  return { quantity: { value: found.value, last: true, ...weak }, to: pastOf(tokens, found.to) };
}

/** Nothing stands before it, or a mark or a new line. */
const opensTelling = (tokens: readonly Token[], at: number): boolean =>
  /^(?:mark|line)$/.test(tokens[at - 1]?.is ?? 'mark');

/** "To Ken", "into the bin": where the rest went. */
const isOnward = (tokens: readonly Token[], at: number): boolean =>
  /^(?:to|into)$/.test(textAt(tokens, at)) &&
  // What is found stands masked.
  (tokens[at + 1]?.is === 'word' || textAt(tokens, at + 1) === NAME || textAt(tokens, at + 1) === 'the');
