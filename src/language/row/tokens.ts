/** The second stage: words, numbers and marks, each with its place in the text and its word as the trade spells it. */
import { placeNouns, spelling } from './lexicon.js';
import { respell } from './spelling.js';

export interface Token {
  /** Lower case, spelt out and repaired. */
  readonly text: string;
  /** As written. */
  readonly raw: string;
  /** Where `raw` stands in the normalised text. */
  readonly start: number;
  readonly end: number;
  readonly is: 'word' | 'number' | 'ordinal' | 'mark' | 'line';
  readonly capital: boolean;
  /** No space stands before it. */
  readonly glued: boolean;
}

/** A mark that nobody wrote, in the place of what is said from `start` to `end`. */
export const mark = (text: string, start: number, end = start): Token => ({
  text,
  raw: text,
  start,
  end,
  is: 'mark',
  capital: false,
  glued: true,
});

// Order matters: machines' numbers, which no grower writes and which are no count; phone spellings with digits, abbreviations with a stroke, ordinals, numbers, words, any other mark.
const TOKEN =
  /0x[\da-f]+|\d{1,9}e\d+|x(?=\d)|->|=>|2day|2moro|2nite|[a-z]\/[a-z]+|y'day|\d+(?:,\d{3})*(?:\.\d+)?(?:(?:st|nd|rd|th)(?![\p{L}\d]))?|\.\d+|\p{L}[\p{L}\p{M}\d]*(?:'\p{L}+)*|\n|\S/giu;

const MARKS_OF_SPEECH = new Set(['um', 'er', 'erm', 'uh', 'umm', 'err', 'ah', 'hmm', 'mm']);

/** Behind a place's "'s" that is a verb ("the propagator's at 20"), not an owner ("the propagator's lid"). */
const STATE = /^(?:at|been|sitting|showing|reading|up|down|on|hit|dropped|gone|now|hovering|running)$/;

/** Behind "the other one's", which is as often "one has": how a plant is. */
const PLIGHT = /^(?:mush|mushy|slime|soup|toast|dead|dying|rotten|mouldy|black|brown|soft|fine|not|still)$/;

/** "Propagator's at" is "propagator is at", so that the place is found; "one's mush" is "one is mush". */
function withVerbs(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some(({ raw }) => /['’]s$/.test(raw))) return tokens;
  return tokens.flatMap((token, at) => {
    const next = textAt(tokens, at + 1);
    if (token.text === 'has' && token.raw !== 'has' && PLIGHT.test(next)) return [{ ...token, text: 'is' }];
    const owner = token.text.replace(/'s$/, '');
    const noun = spelling(owner) ?? owner;
    if (owner === token.text || !placeNouns.has(noun) || !STATE.test(next)) return [token];
    const cut = token.end - 2;
    return [
      { ...token, text: noun, raw: token.raw.slice(0, -2), end: cut },
      { ...token, text: 'is', raw: token.raw.slice(-2), start: cut, glued: true, capital: false },
    ];
  });
}

const SMALL = new Set('with without and the for to are you of in on my off'.split(' '));

/** Splits a normalised text; fillers are dropped, abbreviations that stand for two words give two tokens. */
export function tokenise(text: string): readonly Token[] {
  const tokens: Token[] = [];
  const shouted = !/\p{Ll}/u.test(text);
  let last = 0;
  for (const match of text.matchAll(TOKEN)) {
    const raw = match[0];
    const start = match.index;
    const end = start + raw.length;
    const glued = start === last && start > 0;
    last = end;
    const figures = /^[\d.]/.test(raw);
    const begins = /^\p{Lu}/u.test(raw);
    // Each property by name: a copy that gains properties is a hundred times as slow to make.
    const add = (text: string, is: Token['is'], capital = begins): void => {
      tokens.push({ text, raw, start, end, is, capital, glued });
    };
    const lower = raw.toLowerCase();
    // A hyphen inside a word ("semi-ripe", "72-cell") is a space; between numbers it means "to".
    if (
      raw === '-' &&
      glued &&
      /[\p{L}\d]/u.test(text.charAt(start - 1)) &&
      /\p{L}/u.test(text.charAt(end))
    ) {
      last = -1;
      continue;
    }
    if (raw === '\n') add('\n', 'line');
    else if (figures && /^\d+(?:st|nd|rd|th)$/.test(lower)) add(lower, 'ordinal');
    else if (figures && /\d/.test(lower) && !/[a-z]/.test(lower)) add(lower.replaceAll(',', ''), 'number');
    else if (/^[\p{L}\d]/u.test(raw)) {
      if (MARKS_OF_SPEECH.has(lower) && !(glued && tokens.at(-1)?.is === 'number')) continue;
      const before = tokens.at(-1);
      const midway = before !== undefined && before.is === 'word' && raw !== raw.toUpperCase();
      // A capital inside a sentence is likely a name, which only a habitual spelling may change.
      // "The WI" is no Scots "with".
      const initials = begins && /^\p{Lu}{2,4}$/u.test(raw) && SMALL.has(spelling(lower) ?? '') && !shouted;
      const meant = initials
        ? lower
        : begins && midway && raw.length < 9
          ? (spelling(lower) ?? lower)
          : respell(lower, !begins || shouted);
      // "P/on 120": what stands for two words is no name, however it is written.
      const named = begins && !meant.includes(' ');
      for (const text of meant.split(' ')) add(text, 'word', named);
    } else if (raw === '->' || raw === '=>' || (raw === '>' && !glued)) add('to', 'word');
    else if (raw === '&' || (raw === '+' && !glued)) add('and', 'word');
    else add(raw, 'mark');
  }
  return withVerbs(tokens);
}

/** Whether it is a number or an ordinal in figures, or a word that opens with one. */
export function startsWithFigure({ is, text }: Token): boolean {
  if (is === 'number' || is === 'ordinal') return true;
  const first = text.charCodeAt(0);
  return first >= 48 && first <= 57;
}

/** The text at a place in a row of tokens; empty beyond its ends. */
export function textAt(tokens: readonly Token[], at: number): string {
  return tokens[at]?.text ?? '';
}

/** Whether these words stand at a place in a row of tokens. */
export function isPhraseAt(tokens: readonly Token[], at: number, words: readonly string[]): boolean {
  for (let n = 0; n < words.length; n++) if (textAt(tokens, at + n) !== words[n]) return false;
  return true;
}
