/** How many: exact, vague, all, the rest, all but some, half, more than before; and containers with what each holds. */
import { verbSense } from './lexicon.js';
import { numberAt } from './numbers.js';
import type { Token } from './tokens.js';

export interface Quantity {
  readonly value?: number;
  readonly whole?: 'all' | 'rest';
  /** No number can be had from the words ("a few", "nearly a dozen", "three or four"). */
  readonly vague?: true;
  /** "All but two". */
  readonly allBut?: number;
  /** "Half", "three quarters": a part of what there is, numerator and denominator. */
  readonly share?: readonly [number, number];
  /** "Two more": on top of what was there. */
  readonly more?: true;
  /** "Three out of eight": the eight. */
  readonly outOf?: number;
  /** "Both": two, or each of two plants named. */
  readonly both?: true;
  /** "Some", which a check may be answered with. */
  readonly some?: true;
  readonly negative?: true;
  /** A pronoun-like "one", which may count nothing. */
  readonly weak?: true;
}

export interface FoundQuantity {
  readonly quantity: Quantity;
  readonly to: number;
}

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
const BEYOND: readonly (readonly string[])[] = [
  ['at', 'least'], ['at', 'most'], ['more', 'than'], ['less', 'than'], ['fewer', 'than'], ['not', 'quite'], ['just', 'over'],
  ['just', 'under'], ['well', 'over'], ['close', 'to'], ['up', 'to'], ['upwards', 'of'], ['getting', 'on', 'for'],
  ['nearly'], ['almost'], ['over'], ['under'], ['nigh', 'on'], ['no', 'more', 'than'], ['a', 'good'], ['best', 'part', 'of'],
]; // prettier-ignore
const VAGUE: readonly (readonly string[])[] = [
  ['a', 'good', 'few'], ['quite', 'a', 'few'], ['a', 'few'], ['few'], ['some'], ['several'], ['a', 'handful'], ['handful'], ['loads'],
  ['a', 'load'], ['a', 'bunch'], ['bunch'], ['lots'], ['a', 'lot'], ['plenty'], ['tons'], ['heaps'], ['most'], ['many'], ['umpteen'],
  ['oodles'], ['masses'], ['a', 'number'], ['a', 'good', 'many'], ['various'], ['a', 'whole', 'load'], ['a', 'fair', 'few'], ['stacks'],
  ['quite', 'a', 'lot'], ['the', 'odd'], ['a', 'whole', 'bunch'], ['a', 'ton'], ['a', 'fair', 'whack'], ['a', 'batch'], ['a', 'wheen'], ['dozens'], ['hundreds'], ['one', 'or', 'two'],
  ['the', 'majority'],
]; // prettier-ignore

const text = (tokens: readonly Token[], at: number): string => tokens[at]?.text ?? '';
const starts = (tokens: readonly Token[], at: number, words: readonly string[]): boolean =>
  words.every((word, n) => text(tokens, at + n) === word);

/** The quantity that begins at token `at`. */
export function quantityAt(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  return beyond(tokens, at) ?? wholes(tokens, at) ?? exact(tokens, at) ?? vague(tokens, at);
}

function beyond(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  if (text(tokens, at) === 'between') {
    const low = numberAt(tokens, at + 1);
    const high = low && text(tokens, low.to) === 'and' ? numberAt(tokens, low.to + 1) : undefined;
    if (high) return { quantity: { vague: true }, to: skipOf(tokens, high.to) };
  }
  for (const words of BEYOND) {
    if (!starts(tokens, at, words)) continue;
    // "Handed over six", "brought up to": the word is the verb's.
    if (
      /^(?:over|under|up|close)$/.test(words[0] ?? '') &&
      /^(?:hand|turn|pass|bring|go|come|put|carry|move|send|knock|keel)$/.test(
        verbSense(text(tokens, at - 1))?.lemma ?? '',
      )
    )
      continue;
    // "Back up to 20": as warm as that.
    if (
      words[0] === 'up' &&
      /^(?:back|right|now|got|went|gone|climbed|shot|rose)$/.test(text(tokens, at - 1))
    )
      continue;
    const found = numberAt(tokens, at + words.length);
    if (text(tokens, at + words.length) === 'half')
      return { quantity: { vague: true }, to: skipOf(tokens, at + words.length + 1) };
    if (found && Number.isInteger(found.value))
      return { quantity: { vague: true }, to: skipOf(tokens, found.to) };
  }
  return undefined;
}

function wholes(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  const first = text(tokens, at);
  const result = (quantity: Quantity, to: number): FoundQuantity => ({ quantity, to: skipOf(tokens, to) });
  if (first === 'all') {
    let next = at + 1;
    if (/^(?:but|bar|except|save)$/.test(text(tokens, next))) {
      if (text(tokens, next + 1) === 'for') next++;
      const found = numberAt(tokens, next + 1);
      if (found) return result({ allBut: found.value }, found.to);
    }
    if (text(tokens, next) === 'the') next++;
    const found = numberAt(tokens, next);
    if (found && found.value > 0 && tokens[found.to]?.is !== 'mark')
      return result({ value: found.value }, found.to);
    if (found && found.value > 0) return result({ value: found.value }, found.to);
    if (starts(tokens, at + 1, ['of', 'them', 'but'])) {
      const but = numberAt(tokens, at + 4);
      if (but) return result({ allBut: but.value }, but.to);
    }
    // "Gone all mouldy".
    if (
      /^(?:gone|went|going|looking|is|are|it's|they're)$/.test(text(tokens, at - 1)) &&
      /^(?:mouldy|moldy|black|brown|soft|slimy|limp|floppy|yellow|leggy|mushy|soggy|crispy|droopy|wilted|furry)$/.test(
        text(tokens, at + 1),
      )
    )
      return undefined;
    // "all" as an adverb ("all in one pot", "all done") still names the whole.
    return result({ whole: 'all' }, at + 1);
  }
  if (/^(?:everything|both)$/.test(first))
    return result(first === 'both' ? { value: 2, both: true } : { whole: 'all' }, at + 1);
  if (/^(?:none|neither|zilch)$/.test(first)) return result({ value: 0 }, at + 1);
  if (
    starts(tokens, at, ['not', 'one', 'of']) ||
    starts(tokens, at, ['not', 'a', 'single']) ||
    starts(tokens, at, ['not', 'any', 'of'])
  )
    return result({ value: 0 }, at + 3);
  if (
    starts(tokens, at, ['not', 'one']) &&
    (tokens[at + 2] === undefined ||
      tokens[at + 2]?.is === 'mark' ||
      /^(?:yet|and|so|has|have)$/.test(text(tokens, at + 2)))
  )
    return result({ value: 0 }, at + 2);
  if (starts(tokens, at, ['divil', 'a'])) return result({ value: 0 }, at + 2);
  if (first === 'every') {
    if (text(tokens, at + 1) === 'last' && text(tokens, at + 2) !== 'one')
      return result({ whole: 'all' }, at + 2);
    if (text(tokens, at + 1) === 'last') return result({ whole: 'all' }, at + 3);
    if (text(tokens, at + 1) === '\u0000') return result({ whole: 'all' }, at + 1);
    if (text(tokens, at + 1) === 'one' || text(tokens, at + 1) === 'single') {
      const one = text(tokens, at + 2) === 'one' ? 3 : 2;
      const end = at + one;
      if (/^(?:but|bar|except)$/.test(text(tokens, end))) {
        const found = numberAt(tokens, end + 1);
        if (found) return result({ allBut: found.value }, found.to);
      }
      return result({ whole: 'all' }, end);
    }
    return undefined;
  }
  if (starts(tokens, at, ['the', 'whole', 'lot']) || starts(tokens, at, ['the', 'entire', 'lot']))
    return result({ whole: 'all' }, at + 3);
  if (starts(tokens, at, ['the', 'lot'])) return result({ whole: 'all' }, at + 2);
  if (starts(tokens, at, ['rest', 'of', 'the']) && verbSense(text(tokens, at - 1))?.form === 'past')
    return result({ whole: 'rest' }, at + 2);
  if (starts(tokens, at, ['the', 'whole', 'of'])) return result({ whole: 'all' }, at + 3);
  if (starts(tokens, at, ['whole', 'of', 'the'])) return result({ whole: 'all' }, at + 2);
  if (starts(tokens, at, ['whole', 'lot'])) return result({ whole: 'all' }, at + 2);
  const the = first === 'the' ? at + 1 : at;
  const word = text(tokens, the);
  if (/^(?:rest|remainder)$/.test(word) && first === 'the') return result({ whole: 'rest' }, the + 1);
  // "200 rooted, rest binned".
  if (
    word === 'rest' &&
    (tokens[at - 1]?.is === 'mark' || text(tokens, at - 1) === 'and') &&
    verbSense(text(tokens, at + 1))?.form === 'past'
  )
    return result({ whole: 'rest' }, at + 1);
  if (word === 'others' && first === 'the') return result({ whole: 'rest' }, the + 1);
  if (/^(?:remaining|other)$/.test(word)) {
    const found = numberAt(tokens, the + 1);
    if (found)
      return result(
        { value: found.value, ...(text(tokens, the + 1) === 'one' ? { weak: true as const } : {}) },
        found.to,
      );
    if (word === 'remaining') return result({ whole: 'rest' }, the + 1);
    return undefined;
  }
  const share = shareAt(tokens, at);
  if (share) return result({ share: share.share }, share.to);
  if (word === 'half' || starts(tokens, at, ['a', 'half'])) {
    const half = word === 'half' ? the : at + 1;
    if (numberAt(tokens, half)) return undefined;
    if (
      /^(?:way|ripe|hour|an|past|hardened|hardy|litre|liter|term|inch|dead|tray|trays|day|a|price|asleep|full|empty|wood|baked|hearted|decent|open|time|pint|barrel)$/.test(
        text(tokens, half + 1),
      )
    )
      return undefined;
    if (text(tokens, half + 1) === '' || /^[.,!?-]$/.test(text(tokens, half + 1))) return undefined;
    return result({ share: [1, 2] }, half + 1);
  }
  return undefined;
}

/** "14, maybe 15", with nothing of its own behind the second number. */
function doubtedTo(tokens: readonly Token[], at: number, value: number): number | undefined {
  let to = /^[,-]$/.test(text(tokens, at)) ? at + 1 : at;
  if (text(tokens, to) === 'or') to++;
  if (!/^(?:maybe|perhaps|possibly)$/.test(text(tokens, to))) return undefined;
  const upper = numberAt(tokens, to + 1);
  const behind = upper && tokens[upper.to];
  const ends =
    behind === undefined ||
    behind.is === 'mark' ||
    behind.is === 'line' ||
    /^(?:of|in|cuttings|i|now)$/.test(behind.text);
  return upper && ends && upper.value !== value && upper.value <= 2 * value + 1 ? upper.to : undefined;
}

const PARTS: Readonly<Record<string, number>> = {
  third: 3,
  thirds: 3,
  quarter: 4,
  quarters: 4,
  fifth: 5,
  fifths: 5,
};

/** "Three quarters of the", "a third of them": nothing of the clock or the calendar. */
function shareAt(
  tokens: readonly Token[],
  at: number,
): { share: readonly [number, number]; to: number } | undefined {
  const one = /^(?:a|one)$/.test(text(tokens, at));
  const many = one ? undefined : numberAt(tokens, at);
  const to = one ? at + 1 : (many?.to ?? at);
  const part = text(tokens, to);
  if (to === at || !Object.hasOwn(PARTS, part)) return undefined;
  const whole = PARTS[part] ?? 1;
  const times = one ? 1 : (many?.value ?? 0);
  const ofThem = text(tokens, to + 1) === 'of' || tokens[to + 1] === undefined;
  return ofThem && times < whole ? { share: [times, whole], to: to + 1 } : undefined;
}

/** So many of `alive`, where that is a whole number of plants. */
export function shareOf(
  alive: number | undefined,
  [times, whole]: readonly [number, number],
): number | undefined {
  const value = alive === undefined ? NaN : (alive * times) / whole;
  return Number.isInteger(value) ? value : undefined;
}

function exact(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  let from = at;
  while (ABOUT.has(text(tokens, from)) || (text(tokens, from) === 'some' && numberAt(tokens, from + 1)))
    from++;
  let lead: 'more' | undefined;
  if (/^(?:another|extra|further|additional)$/.test(text(tokens, from)) && numberAt(tokens, from + 1)) {
    lead = 'more';
    from++;
  }
  if (/^(?:last|final|first)$/.test(text(tokens, from)) && from === at && numberAt(tokens, from + 1)) from++;
  const negative =
    text(tokens, from) === 'minus' ||
    (text(tokens, from) === '-' &&
      tokens[from + 1]?.is === 'number' &&
      tokens[from + 1]?.glued === true &&
      tokens[from]?.glued === false);
  if (negative) from++;
  const found = numberAt(tokens, from);
  if (!found) return undefined;
  let { to } = found;
  if (negative) return { quantity: { negative: true, value: -found.value }, to };
  if (!Number.isInteger(found.value)) return undefined;
  const next = text(tokens, to);
  // "three or four", "3-4", "3 to 4" (but "3 to Mary" and "2 - 3 rooted" with spaces are something else)
  const dash = next === '-' && tokens[to]?.glued === true;
  if (next === 'or' || dash || next === 'to') {
    const upper = numberAt(tokens, to + 1);
    if (
      upper &&
      upper.value > found.value &&
      (next === 'or' || upper.value - found.value <= Math.max(5, found.value)) &&
      !(dash && tokens[to + 1]?.glued === false)
    )
      return { quantity: { vague: true }, to: skipOf(tokens, upper.to) };
  }
  const doubted = doubtedTo(tokens, to, found.value);
  if (doubted !== undefined) return { quantity: { vague: true }, to: doubted };
  if (
    next === 'odd' ||
    (next === '-' && text(tokens, to + 1) === 'odd') ||
    (next === '+' && tokens[to]?.glued) ||
    next === 'plus'
  )
    return { quantity: { vague: true }, to: skipOf(tokens, next === '-' ? to + 2 : to + 1) };
  if (starts(tokens, to, ['or', 'so']) || starts(tokens, to, ['or', 'thereabouts'])) to += 2;
  else if (next === 'ish') to += 1;
  else if (next === '-' && text(tokens, to + 1) === 'ish') to += 2;
  else if (starts(tokens, to, ['or', 'more'])) return { quantity: { vague: true }, to: to + 2 };
  let more = lead === 'more';
  if (/^(?:more|extra)$/.test(text(tokens, to)) && text(tokens, to + 1) !== 'than') {
    more = true;
    to++;
  }
  const outOf = partOf(tokens, to, found.value);
  if (outOf)
    return {
      quantity: { value: found.value, outOf: outOf.value, ...(more ? { more } : {}) },
      to: skipOf(tokens, outOf.to),
    };
  return {
    quantity: {
      value: found.value,
      ...(more ? { more } : {}),
      ...(text(tokens, from) === 'one' ? { weak: true as const } : {}),
    },
    to: skipOf(tokens, to),
  };
}

/** "Out of eight", "of the 8", "from 8", "/8" behind a smaller number. */
function partOf(
  tokens: readonly Token[],
  at: number,
  part: number,
): { value: number; to: number } | undefined {
  let from = at;
  if (text(tokens, from) === 'out' && text(tokens, from + 1) === 'of') from += 2;
  else if (text(tokens, from) === 'of' || text(tokens, from) === 'from') from += 1;
  else if (text(tokens, from) === '/' && tokens[from + 1]?.is === 'number') from += 1;
  else return undefined;
  if (/^(?:the|my|those|these)$/.test(text(tokens, from))) from++;
  const whole = numberAt(tokens, from);
  return whole && whole.value >= part && Number.isInteger(whole.value) ? whole : undefined;
}

function vague(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  for (const words of VAGUE) {
    if (!starts(tokens, at, words)) continue;
    let to = at + words.length;
    if (words[0] === 'most' && !/^(?:of|have|are|had|rooted|\0|my)$/.test(text(tokens, to))) return undefined;
    if (text(tokens, to) === 'more') to++;
    return {
      quantity: { vague: true, ...(words[0] === 'some' ? { some: true as const } : {}) },
      to: skipOf(tokens, to),
    };
  }
  return undefined;
}

function skipOf(tokens: readonly Token[], at: number): number {
  return text(tokens, at) === 'of' ? at + 1 : at;
}
