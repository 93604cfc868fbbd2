/** Numbers in figures and words, and only numbers: what they count is decided elsewhere. */
import { SMALL_NUMBERS, TENS_NUMBERS } from './number-names.js';
import type { Token } from '../row/tokens.js';

const UNITS: ReadonlyMap<string, number> = new Map([...SMALL_NUMBERS, ['nought', 0], ['nil', 0]]);
const TENS: ReadonlyMap<string, number> = new Map([...TENS_NUMBERS, ['fourty', 40]]);
const COLLECTIVES: ReadonlyMap<string, number> = new Map([
  ['couple', 2],
  ['pair', 2],
  ['dozen', 12],
  ['score', 20],
]);

/** The words that a number may begin with. */
export const NUMBER_WORDS: ReadonlySet<string> = new Set([
  ...['half', 'a', 'baker', 'bakers', "baker's"],
  ...COLLECTIVES.keys(),
  ...UNITS.keys(),
  ...TENS.keys(),
]);

export interface FoundNumber {
  readonly value: number;
  /** Index past its last token. */
  readonly to: number;
  /** Written in figures. */
  readonly figures: boolean;
  /** A collective noun ("a couple"), which may be followed by "of". */
  readonly collective: boolean;
}

const word = (tokens: readonly Token[], at: number): string => tokens[at]?.text ?? '';

/** The number that begins at token `at`: "5", "1,200", "twenty five", "two dozen", "half a dozen", "a hundred and ten". */
export function numberAt(tokens: readonly Token[], at: number): FoundNumber | undefined {
  const token = tokens[at];
  if (token === undefined) return undefined;
  if (token.is === 'number') {
    const value = Number(token.text);
    const dozens = collective(tokens, at + 1);
    if (dozens && dozens.value >= 12 && !dozens.article)
      return { value: value * dozens.value, to: dozens.to, figures: true, collective: true };
    return { value, to: at + 1, figures: true, collective: false };
  }
  if (token.is !== 'word' || !NUMBER_WORDS.has(token.text)) return undefined;
  if (token.text === 'half') {
    const rest = collective(tokens, at + 1);
    if (rest && rest.value >= 12)
      return { value: rest.value / 2, to: rest.to, figures: false, collective: true };
    return undefined;
  }
  // "A baker's dozen".
  const bakers = word(tokens, at) === 'a' ? at + 1 : at;
  if (word(tokens, bakers + 1) === 'dozen' && /^bakers?$|^baker's$/.test(word(tokens, bakers)))
    return { value: 13, to: bakers + 2, figures: false, collective: true };
  const alone = collective(tokens, at);
  if (alone) {
    if (
      alone.value === 12 &&
      word(tokens, alone.to) === 'and' &&
      word(tokens, alone.to + 1) === 'a' &&
      word(tokens, alone.to + 2) === 'half'
    )
      return { value: 18, to: alone.to + 3, figures: false, collective: true };
    if (alone.value === 2 && word(tokens, alone.to) === 'dozen')
      return { value: 24, to: alone.to + 1, figures: false, collective: true };
    if (alone.value === 2 && word(tokens, alone.to) === 'of' && word(tokens, alone.to + 1) === 'dozen')
      return { value: 24, to: alone.to + 2, figures: false, collective: true };
    return { ...alone, figures: false, collective: true };
  }
  return spelt(tokens, at);
}

function collective(
  tokens: readonly Token[],
  at: number,
): { value: number; to: number; article: boolean } | undefined {
  const article = word(tokens, at) === 'a';
  // "A round dozen".
  const noun =
    at + (article ? (/^(?:round|full|whole|straight|cool)$/.test(word(tokens, at + 1)) ? 2 : 1) : 0);
  const value = COLLECTIVES.get(word(tokens, noun));
  return value === undefined ? undefined : { value, to: noun + 1, article };
}

function spelt(tokens: readonly Token[], at: number): FoundNumber | undefined {
  let to = at;
  let total: number;
  if (word(tokens, to) === 'a' && /^(?:hundred|thousand)$/.test(word(tokens, to + 1))) {
    total = word(tokens, to + 1) === 'hundred' ? 100 : 1000;
    to += 2;
  } else {
    const small = belowHundred(tokens, to);
    if (!small) return undefined;
    total = small.value;
    to = small.to;
    if (word(tokens, to) === 'hundred') {
      total *= 100;
      to++;
    } else if (word(tokens, to) === 'thousand') {
      total *= 1000;
      to++;
    } else {
      const dozens = COLLECTIVES.get(word(tokens, to));
      if (dozens !== undefined && dozens >= 12)
        return { value: total * dozens, to: to + 1, figures: false, collective: true };
      return { value: total, to, figures: false, collective: false };
    }
  }
  const join = word(tokens, to) === 'and' ? 1 : 0;
  const more = belowHundred(tokens, to + join);
  if (more && more.value > 0)
    return { value: total + more.value, to: more.to, figures: false, collective: false };
  return { value: total, to, figures: false, collective: false };
}

function belowHundred(tokens: readonly Token[], at: number): { value: number; to: number } | undefined {
  const unit = UNITS.get(word(tokens, at));
  if (unit !== undefined) return { value: unit, to: at + 1 };
  const tens = TENS.get(word(tokens, at));
  if (tens === undefined) return undefined;
  const hyphen = tokens[at + 1]?.text === '-' ? 1 : 0;
  const and = UNITS.get(word(tokens, at + 1 + hyphen));
  if (and !== undefined && and > 0 && and < 10) return { value: tens + and, to: at + 2 + hyphen };
  return { value: tens, to: at + 1 };
}
