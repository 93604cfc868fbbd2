/** Marks that dictation spelt out: "all in one pot comma propagator full stop" is "all in one pot, propagator." */
import { withoutHesitation } from './hesitations.js';
import { listed } from './lists/listed.js';
import { findNames } from './names.js';
import type { NoteContext } from '../note.js';
import { mark, textAt, type Token, tokenise } from './tokens.js';

interface SpokenMark {
  readonly words: readonly string[];
  readonly mark: string;
  /** Behind which it is the thing itself. */
  readonly unlessNext?: RegExp;
  /** Only where another such mark shows that marks are spoken. */
  readonly besideOthers?: true;
}

const marks: readonly SpokenMark[] = [
  { words: ['comma'], mark: ',', unlessNext: /^(?:butterfly|butterflies|caterpillars?)$/ },
  { words: ['full', 'stop'], mark: '.', unlessNext: /^(?:to|with|on|in)$/ },
  { words: ['fullstop'], mark: '.' },
  { words: ['question', 'mark'], mark: '?' },
  { words: ['exclamation', 'mark'], mark: '!' },
  { words: ['exclamation', 'point'], mark: '!' },
  { words: ['semicolon'], mark: ';' },
  { words: ['semi', 'colon'], mark: ';' },
  { words: ['new', 'line'], mark: '.', unlessNext: /^of$/, besideOthers: true },
  { words: ['new', 'paragraph'], mark: '.' },
  { words: ['colon'], mark: ':', besideOthers: true },
  { words: ['period'], mark: '.', besideOthers: true },
];

const FIRST_WORDS: ReadonlySet<string> = new Set(marks.map(({ words }) => words[0] ?? ''));

/** "Came to a full stop", "saw a comma", "a cold period". */
const THING = /^(?:a|an|the|this|that|one|my|first|short|long|cold|hot|dry|wet|warm|of|whole|missing)$/;

/** The tokens of a normalised text, hesitations left out, lists and spoken marks as they are meant. */
export const rowOf = (text: string, context: NoteContext): readonly Token[] =>
  withSpokenMarks(listed(withoutHesitation(tokenise(text), context)), context);

/** The row with the marks that were meant; inside a known name the words stand. */
function withSpokenMarks(tokens: readonly Token[], context: NoteContext): readonly Token[] {
  if (!tokens.some(({ text }) => FIRST_WORDS.has(text))) return tokens;
  const names = findNames(tokens, context);
  const isFree = (from: number, to: number): boolean =>
    !names.some((name) => name.from < to && name.to > from);
  const spokenAt = (at: number, areSpoken: boolean): SpokenMark | undefined =>
    marks.find(
      ({ words, unlessNext, besideOthers }) =>
        (areSpoken || besideOthers !== true) &&
        words.every((word, n) => textAt(tokens, at + n) === word) &&
        at > 0 &&
        !THING.test(textAt(tokens, at - 1)) &&
        unlessNext?.test(textAt(tokens, at + words.length)) !== true &&
        isFree(at, at + words.length),
    );
  const areSpoken = tokens.some((_, at) => spokenAt(at, false) !== undefined);
  if (!areSpoken) return tokens;
  const row: Token[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    const spoken = spokenAt(at, true);
    if (!token) continue;
    if (!spoken) {
      row.push(token);
      continue;
    }
    const last = tokens[at + spoken.words.length - 1] ?? token;
    row.push(mark(spoken.mark, token.start, last.end));
    at += spoken.words.length - 1;
  }
  return row;
}
