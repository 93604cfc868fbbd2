/** What a note opens and closes with and that tells nothing: "hi there", "fyi", "quick one", "… at last", "… thanks x". */
import {
  ASKED_OF,
  ASKING,
  ASKS_WHETHER,
  CLOSINGS,
  DAYTIMES,
  DEARS,
  GOES_ON,
  GREETINGS,
  HEADINGS,
  HOW,
  LEADS_TO,
  LEANS,
  OPENINGS,
  SAYS_NO,
  SIGHS,
  TAKES_BACK,
  WHOM,
} from './courtesy-phrases.js';
import { findNames } from './names.js';
import { normalise } from './normalise.js';
import type { NoteContext } from '../note.js';
import type { PhrasesByWord } from '../phrases-by-word.js';
import { type Token, tokenise } from './tokens.js';

/**
 * The tokens between, unless nothing would be left of them; `isName` tells which tokens are of a known name, `talk` that
 * the words stand in one, so that "also" and "oh and" say something.
 */
export function withoutCourtesies(
  tokens: readonly Token[],
  isName: (at: number) => boolean,
  talk = false,
): readonly Token[] {
  const stretches = stretchesSaid(tokens, isName, talk);
  const [only] = stretches;
  return stretches.length === 1 && only?.length === tokens.length ? tokens : stretches.flat();
}

/** What a grower says in a talk without them, as written. */
export function withoutCourtesy(text: string, context: NoteContext): string {
  const normal = normalise(text);
  const tokens = tokenise(normal);
  const names = findNames(tokens, context);
  const isName = (at: number): boolean => names.some(({ from, to }) => from <= at && at < to);
  const stretches = stretchesSaid(tokens, isName, true);
  if (stretches[0]?.length === tokens.length) return text;
  return stretches.map((said) => normal.slice(said[0]?.start, said.at(-1)?.end)).join(' ');
}

/** What is said: one stretch, or two around whom it is said to. */
function stretchesSaid(
  tokens: readonly Token[],
  isName: (at: number) => boolean,
  talk: boolean,
): readonly (readonly Token[])[] {
  const from = pastOpenings(tokens, isName, talk);
  const to = beforeClosings(tokens, from, isName);
  const dear = dearAt(tokens, from, isName);
  return dear === undefined || dear + 1 >= to
    ? [tokens.slice(from, to)]
    : [tokens.slice(from, dear), tokens.slice(dear + 1, to)];
}

/** Where one is spoken to behind the opening "no": "no love, it was three"; no "no love for these". */
function dearAt(tokens: readonly Token[], from: number, isName: (at: number) => boolean): number | undefined {
  const at = isMark(tokens[from + 1]) ? from + 2 : from + 1;
  const isSaidTo =
    SAYS_NO.has(writtenAt(tokens, from)) &&
    DEARS.has(writtenAt(tokens, at)) &&
    !isName(at) &&
    tokens[at + 1] !== undefined &&
    (isMark(tokens[at + 1]) || GOES_ON.has(writtenAt(tokens, at + 1)));
  return isSaidTo ? at : undefined;
}

function pastOpenings(tokens: readonly Token[], isName: (at: number) => boolean, talk: boolean): number {
  let from = 0;
  for (;;) {
    const to = isName(from) ? from : openingFrom(tokens, from, talk);
    if (to === from) return from;
    let next = to;
    while (isMark(tokens[next])) next++;
    if (next >= tokens.length) return from;
    from = next;
  }
}

/** Where an opening at `from` ends; `from` where none is. */
function openingFrom(tokens: readonly Token[], from: number, talk: boolean): number {
  const first = writtenAt(tokens, from);
  if (GREETINGS.has(first)) {
    const whom = WHOM.has(writtenAt(tokens, from + 1));
    return whom ? from + 2 : isMark(tokens[from + 1]) ? from + 1 : from;
  }
  if (SIGHS.has(first) && TAKES_BACK.has(writtenAt(tokens, from + 1))) return from + 1;
  if (first === 'actually' && asksFrom(tokens, from + 1)) return from + 1;
  if (first === 'well' && !talk) return HOW.test(writtenAt(tokens, from + 1)) ? from : from + 1;
  const part = first === 'good' ? from + 1 : from;
  if (DAYTIMES.has(writtenAt(tokens, part))) {
    const to = WHOM.has(writtenAt(tokens, part + 1)) ? part + 2 : part + 1;
    return isMark(tokens[to]) ? to : from;
  }
  const opening = Math.max(longest(OPENINGS, tokens, from), talk ? 0 : longest(LEANS, tokens, from));
  if (opening > 0) return from + opening;
  const heading = longest(HEADINGS, tokens, from);
  return heading > 0 && isMark(tokens[from + heading]) ? from + heading : from;
}

/** "Actually, how many …", "actually is it time to …": nothing is put right by it. */
function asksFrom(tokens: readonly Token[], from: number): boolean {
  const at = isMark(tokens[from]) ? from + 1 : from;
  const word = writtenAt(tokens, at);
  return ASKING.has(word) || (ASKS_WHETHER.has(word) && ASKED_OF.has(writtenAt(tokens, at + 1)));
}

function beforeClosings(tokens: readonly Token[], from: number, isName: (at: number) => boolean): number {
  let to = tokens.length;
  for (;;) {
    let end = to;
    while (end > from && isMark(tokens[end - 1])) end--;
    // "Have they rooted at last?": asked.
    const asks = tokens.slice(end, to).some(({ raw }) => raw === '?');
    const long = asks || isName(end - 1) ? 0 : longestBack(tokens, end);
    if (long === 0) return to;
    let rest = end - long;
    while (
      rest > from &&
      (SOFT.has(tokens[rest - 1]?.raw ?? '') || LEADS_TO.has(writtenAt(tokens, rest - 1)))
    )
      rest--;
    if (rest <= from) return to;
    to = rest;
  }
}

const SOFT = new Set([',', '-', '–', ':', '(', '.', '!', '\n']);

const isMark = (token: Token | undefined): boolean => token?.is === 'mark' || token?.is === 'line';

/** As written, in small letters: spelling repair makes other words of "fyi" and "btw". */
const writtenAt = (tokens: readonly Token[], at: number): string => tokens[at]?.raw.toLowerCase() ?? '';

function longest(phrases: PhrasesByWord, tokens: readonly Token[], from: number): number {
  let long = 0;
  for (const words of phrases.get(writtenAt(tokens, from)) ?? [])
    if (words.length > long && words.every((word, n) => writtenAt(tokens, from + n) === word))
      long = words.length;
  return long;
}

function longestBack(tokens: readonly Token[], end: number): number {
  let long = 0;
  for (const words of CLOSINGS.get(writtenAt(tokens, end - 1)) ?? [])
    if (words.length > long && words.every((word, n) => writtenAt(tokens, end - 1 - n) === word))
      long = words.length;
  return long;
}
