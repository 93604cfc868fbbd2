/** Quantities by their number: "about ten", "two more", "three out of eight"; and what makes a number doubtful. */
import { numberAt } from '../numbers.js';
import { wordsOf } from '../../phrases.js';
import { type FoundQuantity, pastOf } from './quantity.js';
import { isPhraseAt, textAt, type Token } from '../../row/tokens.js';

const ABOUT = new Set([
  'about',
  'around',
  'roughly',
  'circa',
  'approximately',
  'approx',
  'exactly',
  'precisely',
  'just',
  'only',
  'maybe',
  'say',
  'like',
]);
const ORDINAL =
  /^(?:second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth|\d{1,2}(?:nd|rd|th))$/;

/** The words that may open it, beside numbers. */
export const exactWords: readonly string[] = [
  ...ABOUT,
  ...wordsOf`some another extra further additional last final first minus -`,
  ...wordsOf`second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth`,
];

/** The number at token `at`, with what stands around it. */
export function exactly(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  let from = at;
  const isSay = textAt(tokens, at) === 'say';
  while (ABOUT.has(textAt(tokens, from)) || (textAt(tokens, from) === 'some' && numberAt(tokens, from + 1)))
    from++;
  let lead: 'more' | undefined;
  if (/^(?:another|extra|further|additional)$/.test(textAt(tokens, from)) && numberAt(tokens, from + 1)) {
    lead = 'more';
    from++;
  }
  if (isOnTop(tokens, from)) {
    lead = 'more';
    from++;
  }
  if (/^(?:last|final|first)$/.test(textAt(tokens, from)) && from === at && numberAt(tokens, from + 1))
    from++;
  // "The ninth one had rotted".
  if (ORDINAL.test(textAt(tokens, from)) && from === at && textAt(tokens, from + 1) === 'one') from++;
  const negative =
    textAt(tokens, from) === 'minus' ||
    (textAt(tokens, from) === '-' &&
      tokens[from + 1]?.is === 'number' &&
      tokens[from + 1]?.glued === true &&
      tokens[from]?.glued === false);
  if (negative) from++;
  const found = numberAt(tokens, from);
  if (!found || isWhichOne(tokens, from) || isInPieces(tokens, from)) return undefined;
  let { to } = found;
  if (negative) return { quantity: { negative: true, value: -found.value }, to };
  if (!Number.isInteger(found.value)) return undefined;
  const next = textAt(tokens, to);
  // "three or four", "3-4", "3 to 4" (but "3 to Mary" and "2 - 3 rooted" with spaces are something else)
  const dash = next === '-' && tokens[to]?.glued === true;
  // "Change that last one to 3": no range.
  const isEntry = textAt(tokens, from) === 'one' && /^(?:last|that|previous)$/.test(textAt(tokens, from - 1));
  if (next === 'or' || dash || (next === 'to' && !isEntry)) {
    const upper = numberAt(tokens, to + 1);
    if (
      upper &&
      upper.value > found.value &&
      (next === 'or' || upper.value - found.value <= Math.max(5, found.value)) &&
      !(dash && tokens[to + 1]?.glued === false)
    )
      return { quantity: { vague: true }, to: pastOf(tokens, upper.to) };
  }
  // "Two handfuls of cuttings".
  if (/^(?:handfuls?|armfuls?|fistfuls?|bagfuls?|clumps)$/.test(next))
    return { quantity: { vague: true }, to: pastOf(tokens, to + 1) };
  const doubted = doubtedTo(tokens, to, found.value);
  if (doubted !== undefined) return { quantity: { vague: true }, to: doubted };
  if (
    next === 'odd' ||
    (next === '-' && textAt(tokens, to + 1) === 'odd') ||
    (next === '+' && tokens[to]?.glued) ||
    next === 'plus'
  )
    return { quantity: { vague: true }, to: pastOf(tokens, next === '-' ? to + 2 : to + 1) };
  if (isPhraseAt(tokens, to, ['or', 'so']) || isPhraseAt(tokens, to, ['or', 'thereabouts'])) to += 2;
  else if (next === 'ish') to += 1;
  else if (next === '-' && textAt(tokens, to + 1) === 'ish') to += 2;
  else if (isPhraseAt(tokens, to, ['or', 'more'])) return { quantity: { vague: true }, to: to + 2 };
  let more = lead === 'more';
  if (/^(?:more|extra)$/.test(textAt(tokens, to)) && textAt(tokens, to + 1) !== 'than') {
    more = true;
    to++;
  }
  const outOf = partOf(tokens, to, found.value);
  if (outOf)
    return {
      quantity: { value: found.value, outOf: outOf.value, ...(more ? { more } : {}) },
      to: pastOf(tokens, outOf.to),
    };
  return {
    quantity: {
      value: found.value,
      ...(more ? { more } : {}),
      ...(isSay ? { settles: true as const } : {}),
      ...(textAt(tokens, from) === 'one' ? { weak: true as const } : {}),
    },
    to: pastOf(tokens, to),
  };
}

/** "+4 rooted": so many more than before; no "3 +4 Salt Harrier". */
export const isOnTop = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.raw === '+' &&
  tokens[at].glued === false &&
  tokens[at + 1]?.is === 'number' &&
  tokens[at + 1]?.glued === true &&
  /^(?:rooted|roots|rooting|more)$/.test(textAt(tokens, at + 2));

/** "Snapped clean in two": broken, and no number of plants. */
const isInPieces = (tokens: readonly Token[], at: number): boolean =>
  textAt(tokens, at) === 'two' &&
  textAt(tokens, at - 1) === 'in' &&
  /^(?:snapped|snap|broke|broken|torn|tore|clean|bent|cracked|right|sliced)$/.test(textAt(tokens, at - 2)) &&
  (tokens[at + 1] === undefined ||
    tokens[at + 1]?.is === 'mark' ||
    /^(?:and|by|when|so|but|today|yesterday)$/.test(textAt(tokens, at + 1)));

/** "Six of that pink one": which, and no number. */
const isWhichOne = (tokens: readonly Token[], at: number): boolean =>
  textAt(tokens, at) === 'one' &&
  /^(?:that|this|the)$/.test(textAt(tokens, at - 2)) &&
  textAt(tokens, at - 3) === 'of' &&
  !numberAt(tokens, at - 1);

/** "14, maybe 15", with nothing of its own behind the second number. */
function doubtedTo(tokens: readonly Token[], at: number, value: number): number | undefined {
  let to = /^[,-]$/.test(textAt(tokens, at)) ? at + 1 : at;
  if (textAt(tokens, to) === 'or') to++;
  if (!/^(?:maybe|perhaps|possibly)$/.test(textAt(tokens, to))) return undefined;
  const upper = numberAt(tokens, to + 1);
  const behind = upper && tokens[upper.to];
  const ends =
    behind === undefined ||
    behind.is === 'mark' ||
    behind.is === 'line' ||
    /^(?:of|in|cuttings|i|now)$/.test(behind.text);
  return upper && ends && upper.value !== value && upper.value <= 2 * value + 1 ? upper.to : undefined;
}

/** "Out of eight", "of the 8", "from 8", "/8" behind a smaller number. */
function partOf(
  tokens: readonly Token[],
  at: number,
  part: number,
): { value: number; to: number } | undefined {
  let from = at;
  if (textAt(tokens, from) === 'out' && textAt(tokens, from + 1) === 'of') from += 2;
  else if (textAt(tokens, from) === 'of' || textAt(tokens, from) === 'from') from += 1;
  else if (textAt(tokens, from) === '/' && tokens[from + 1]?.is === 'number') from += 1;
  else return undefined;
  if (/^(?:the|my|those|these)$/.test(textAt(tokens, from))) from++;
  const whole = numberAt(tokens, from);
  return whole && whole.value >= part && Number.isInteger(whole.value) ? whole : undefined;
}

/** "Lost another", "another gone": one more, where no noun follows that it could be another of. */
export function anotherOne(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  if (textAt(tokens, at) !== 'another' || /^(?:in|into|on|at|for|from|one)$/.test(textAt(tokens, at - 1)))
    return undefined;
  const next = tokens[at + 1];
  const isAlone = next === undefined || next.is === 'mark' || next.is === 'line';
  return isAlone || /^(?:gone|dead|died|rotted|rotten|lost|has|of|from|off|today|yesterday)$/.test(next.text)
    ? { quantity: { value: 1, more: true, weak: true }, to: at + 1 }
    : undefined;
}
