/** Numbers in figures and words, and only numbers: what they count is decided elsewhere. */
import type { Token } from './tokens.js';

const UNITS: Readonly<Record<string, number>> = {
  zero: 0, nought: 0, nil: 0, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10,
  eleven: 11, twelve: 12, thirteen: 13, fourteen: 14, fifteen: 15, sixteen: 16, seventeen: 17, eighteen: 18, nineteen: 19,
}; // prettier-ignore
const TENS: Readonly<Record<string, number>> = {
  twenty: 20, thirty: 30, forty: 40, fourty: 40, fifty: 50, sixty: 60, seventy: 70, eighty: 80, ninety: 90,
}; // prettier-ignore
const COLLECTIVES: Readonly<Record<string, number>> = { couple: 2, pair: 2, dozen: 12, score: 20 };

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
const own = (record: Readonly<Record<string, number>>, key: string): number | undefined =>
  Object.hasOwn(record, key) ? record[key] : undefined;

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
  if (token.is !== 'word') return undefined;
  if (token.text === 'half') {
    const rest = collective(tokens, at + 1);
    if (rest && rest.value >= 12)
      return { value: rest.value / 2, to: rest.to, figures: false, collective: true };
    return undefined;
  }
  // "A baker's dozen".
  const bakers = word(tokens, at) === 'a' ? at + 1 : at;
  if (/^bakers?$|^baker's$/.test(word(tokens, bakers)) && word(tokens, bakers + 1) === 'dozen')
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
  const value = own(COLLECTIVES, word(tokens, noun));
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
      const dozens = own(COLLECTIVES, word(tokens, to));
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
  const unit = own(UNITS, word(tokens, at));
  if (unit !== undefined) return { value: unit, to: at + 1 };
  const tens = own(TENS, word(tokens, at));
  if (tens === undefined) return undefined;
  const hyphen = tokens[at + 1]?.text === '-' ? 1 : 0;
  const and = own(UNITS, word(tokens, at + 1 + hyphen));
  if (and !== undefined && and > 0 && and < 10) return { value: tens + and, to: at + 2 + hyphen };
  return { value: tens, to: at + 1 };
}
