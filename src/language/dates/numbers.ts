/** Numbers in phrases of time: counts, ordinals, days of the month, years. */
import { SMALL_NUMBERS, TENS_NUMBERS } from '../pieces/number-names.js';
import type { Token } from './token.js';
import type { Alternative } from './alternative.js';

/** How many; `exact` false where the words give no one number ("a few"). */
export interface Count {
  readonly number: number;
  readonly exact: boolean;
  /** One, told by its article alone: a week, and no hour. */
  readonly article?: true;
}

const ordinals = new Map<string, number>(
  (
    'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth ' +
    'sixteenth seventeenth eighteenth nineteenth twentieth'
  )
    .split(' ')
    .map((word, index) => [word, index + 1]),
);
for (const [word, number] of [
  ['thirtieth', 30],
  ['forth', 4],
  ['frist', 1],
  ['fisrt', 1],
  ['frst', 1],
  ['fith', 5],
  ['fifht', 5],
  ['eigth', 8],
  ['eighth', 8],
  ['nineth', 9],
  ['twelth', 12],
  ['twelvth', 12],
  ['twentyth', 20],
] as const)
  ordinals.set(word, number);

const suffixes = new Set(['st', 'nd', 'rd', 'th']);

const one = (end: number, value: unknown): readonly Alternative[] => [{ end, value, rule: '' }];
const none: readonly Alternative[] = [];

/** Whether number words or digits may begin with this token. */
export function beginsNumber(token: Token): boolean {
  return (
    token.digits || SMALL_NUMBERS.has(token.word) || TENS_NUMBERS.has(token.word) || ordinals.has(token.word)
  );
}

/** Digits that stand for themselves: no decimal part, no letters but those of an ordinal or a month behind. */
function standsAlone(tokens: readonly Token[], at: number): boolean {
  const next = tokens[at + 1];
  if (!next?.glued) return true;
  if ('£$€#%°'.includes(next.word)) return false;
  return true;
}

function digitsAt(tokens: readonly Token[], at: number, longest: number): number | undefined {
  const token = tokens[at];
  if (!token?.digits || token.word.length > longest || !standsAlone(tokens, at)) return undefined;
  const before = tokens[at - 1];
  if (before && token.glued && '£$€#'.includes(before.word)) return undefined;
  return Number(token.word);
}

/** "3", "03", "12". */
export function readInt(tokens: readonly Token[], at: number): readonly Alternative[] {
  const number = digitsAt(tokens, at, 2);
  return number === undefined ? none : one(at + 1, number);
}

/** "1st", "third", "twenty second". */
export function readOrdinal(tokens: readonly Token[], at: number): readonly Alternative[] {
  const number = digitsAt(tokens, at, 2);
  const next = tokens[at + 1];
  if (number !== undefined) return next?.glued && suffixes.has(next.word) ? one(at + 2, number) : none;
  const word = tokens[at]?.word ?? '';
  const whole = ordinals.get(word);
  if (whole !== undefined) return one(at + 1, whole);
  const ten = TENS_NUMBERS.get(word);
  const unit = ordinals.get(next?.word ?? '');
  return ten !== undefined && unit !== undefined && unit < 10 ? one(at + 2, ten + unit) : none;
}

/** A day of the month as an ordinal. */
export function readOrdinalDay(tokens: readonly Token[], at: number): readonly Alternative[] {
  return readOrdinal(tokens, at).filter(({ value }) => (value as number) <= 39 && (value as number) > 0);
}

/** A day of the month as digits with their suffix. */
export function readDigitOrdinal(tokens: readonly Token[], at: number): readonly Alternative[] {
  return tokens[at]?.digits === true ? readOrdinalDay(tokens, at) : none;
}

/** A day of the month: "3", "3rd", "third", "twenty five". */
export function readDayOfMonth(tokens: readonly Token[], at: number): readonly Alternative[] {
  const ordinal = readOrdinalDay(tokens, at);
  if (ordinal.length > 0) return ordinal;
  const number = digitsAt(tokens, at, 2);
  if (number !== undefined) return number >= 1 && number <= 31 ? one(at + 1, number) : none;
  return readWords(tokens, at).filter(({ value }) => (value as number) >= 1 && (value as number) <= 31);
}

function readWords(tokens: readonly Token[], at: number): readonly Alternative[] {
  const word = tokens[at]?.word ?? '';
  const simple = SMALL_NUMBERS.get(word);
  if (simple !== undefined) return one(at + 1, simple);
  const ten = TENS_NUMBERS.get(word);
  if (ten === undefined) return none;
  const unit = SMALL_NUMBERS.get(tokens[at + 1]?.word ?? '');
  return unit !== undefined && unit > 0 && unit < 10 ? one(at + 2, ten + unit) : one(at + 1, ten);
}

const exactly = (end: number, number: number) => one(end, { number, exact: true } satisfies Count);
const vaguely = (end: number, number: number) => one(end, { number, exact: false } satisfies Count);

/** "3", "a", "twenty one", "a couple of", "a few". */
export function readCount(tokens: readonly Token[], at: number): readonly Alternative[] {
  const word = tokens[at]?.word ?? '';
  const number = digitsAt(tokens, at, 4);
  if (number !== undefined) return exactly(at + 1, number);
  if (word === 'a' || word === 'an' || word === 'couple' || word === 'few' || word === 'several') {
    const after = word === 'a' || word === 'an' ? at + 1 : at;
    const noun = tokens[after]?.word ?? '';
    const withOf = tokens[after + 1]?.word === 'of' ? after + 2 : after + 1;
    if (noun === 'couple') return exactly(withOf, 2);
    if (noun === 'few') return vaguely(withOf, 3);
    if (noun === 'several') return vaguely(after + 1, 5);
    if (noun === 'dozen') return exactly(after + 1, 12);
    if (word === 'a' || word === 'an')
      return one(at + 1, { number: 1, exact: true, article: true } satisfies Count);
    return none;
  }
  if (word === 'some' || word === 'many') return vaguely(at + 1, 5);
  return readWords(tokens, at).flatMap(({ end, value }) => exactly(end, value as number));
}

/** Four digits from 1900 to 2099, "nineteen ninety six", "two thousand and eighteen", "'26". */
export function readYear(tokens: readonly Token[], at: number): readonly Alternative[] {
  const token = tokens[at];
  if (!token) return none;
  if (token.digits) {
    const year = Number(token.word);
    return token.word.length === 4 && year >= 1900 && year <= 2099 ? one(at + 1, year) : none;
  }
  return readYearWords(tokens, at);
}

function readYearWords(tokens: readonly Token[], at: number): readonly Alternative[] {
  const word = (index: number) => tokens[index]?.word ?? '';
  if (SMALL_NUMBERS.get(word(at)) === 2 && word(at + 1) === 'thousand') {
    const after = word(at + 2) === 'and' ? at + 3 : at + 2;
    const rest = readWords(tokens, after)[0];
    return rest ? one(rest.end, 2000 + (rest.value as number)) : one(at + 2, 2000);
  }
  const century = word(at) === 'nineteen' ? 1900 : word(at) === 'twenty' ? 2000 : undefined;
  if (century === undefined) return none;
  if (word(at + 1) === 'zero' || word(at + 1) === 'o' || word(at + 1) === 'oh') {
    const digit = SMALL_NUMBERS.get(word(at + 2));
    return digit !== undefined && digit > 0 && digit < 10 ? one(at + 3, century + digit) : none;
  }
  const rest = readWords(tokens, at + 1)[0];
  return rest && (rest.value as number) >= 10 ? one(rest.end, century + (rest.value as number)) : none;
}

/** Two digits that stand for a year. */
export function readShortYear(tokens: readonly Token[], at: number): readonly Alternative[] {
  const token = tokens[at];
  return token?.digits && token.word.length === 2 ? one(at + 1, Number(token.word)) : none;
}

/** The year that two digits mean: leaning back the latest not to come, leaning on the next, fifty years at most either way. */
export function fullYear(short: number, thisYear: number): number {
  const century = Math.floor(thisYear / 100) * 100;
  const candidates = [century - 100 + short, century + short, century + 100 + short];
  return candidates.reduce((best, each) =>
    Math.abs(each - thisYear) < Math.abs(best - thisYear) ? each : best,
  );
}

/** Whether a count may begin with this token. */
export function beginsCount(token: Token): boolean {
  return beginsNumber(token) || ['a', 'an', 'couple', 'few', 'several', 'some', 'many'].includes(token.word);
}

/** "1730" */
export function readFourDigits(tokens: readonly Token[], at: number): readonly Alternative[] {
  const token = tokens[at];
  return token?.digits && token.word.length === 4 ? one(at + 1, Number(token.word)) : none;
}
