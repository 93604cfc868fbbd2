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
import { closesWithTalk, LONGEST_TALK, opensWithTalk } from './small-talk.js';
import type { NoteContext } from '../note.js';
import { wordsOf } from '../phrases.js';
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
    const to = isName(from)
      ? from
      : Math.max(openingFrom(tokens, from, talk), talkFrom(tokens, from, isName));
    if (to === from) return from;
    let next = to;
    while (isMark(tokens[next]) && !isMinus(tokens, next)) next++;
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

/** Where talk that tells nothing ends, with the "so" or "but" that leads on; `from` where there is none. */
function talkFrom(tokens: readonly Token[], from: number, isName: (at: number) => boolean): number {
  for (let at = from; at <= from + LONGEST_TALK && at < tokens.length; at++) {
    const leadsOn = LEADS_ON.has(writtenAt(tokens, at));
    if ((leadsOn || ENDS_TALK.has(tokens[at]?.raw ?? '')) && opensWithTalk(saidIn(tokens, from, at)))
      return leadsOn ? at + 1 : at;
    if (isName(at) || isMark(tokens[at])) return from;
  }
  return from;
}

/** Where talk that closes a note begins, behind a mark; `end` where there is none. */
function talkBefore(
  tokens: readonly Token[],
  from: number,
  end: number,
  isName: (at: number) => boolean,
): number {
  for (let at = end - 1; at > from && at >= end - LONGEST_TALK; at--)
    if (isName(at)) return end;
    else if (isMark(tokens[at])) return closesWithTalk(saidIn(tokens, at + 1, end)) ? at + 1 : end;
  return end;
}

const saidIn = (tokens: readonly Token[], from: number, to: number): string =>
  tokens
    .slice(from, to)
    .map(({ raw }) => raw.toLowerCase())
    .join(' ');

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
    const long =
      asks || isName(end - 1) || isGift(tokens, end)
        ? 0
        : Math.max(longestBack(tokens, end), end - talkBefore(tokens, from, end, isName));
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

/** "Dropped three round as a little thank you": what they were. */
const isGift = (tokens: readonly Token[], end: number): boolean =>
  /^(?:you|thanks)$/.test(writtenAt(tokens, end - 1)) &&
  [2, 3].some((n) => /^(?:a|little|small|wee|big)$/.test(writtenAt(tokens, end - n)));

/** What leads on from talk to the matter, and the marks that end it. */
const LEADS_ON = new Set(wordsOf`so but and then`);
const ENDS_TALK = new Set([',', '.', '!', ':', ';', '-', '–', '\n']);
const SOFT = new Set([',', '-', '–', ':', '(', '.', '!', '\n']);

const isMark = (token: Token | undefined): boolean => token?.is === 'mark' || token?.is === 'line';

/** "Phew. -5 in the frame". */
const isMinus = (tokens: readonly Token[], at: number): boolean =>
  /^[-–]$/.test(tokens[at]?.raw ?? '') && tokens[at + 1]?.is === 'number' && tokens[at + 1]?.glued === true;

/** As written, in small letters: spelling repair makes other words of "fyi" and "btw". */
const writtenAt = (tokens: readonly Token[], at: number): string => tokens[at]?.raw.toLowerCase() ?? '';

/** The same without its apostrophe: "thats all for now". */
const thumbedAt = (tokens: readonly Token[], at: number): string => writtenAt(tokens, at).replaceAll("'", '');

function longest(phrases: PhrasesByWord, tokens: readonly Token[], from: number): number {
  let long = 0;
  for (const words of phrases.get(writtenAt(tokens, from)) ?? [])
    if (words.length > long && words.every((word, n) => writtenAt(tokens, from + n) === word))
      long = words.length;
  return long;
}

function longestBack(tokens: readonly Token[], end: number): number {
  let long = 0;
  for (const words of CLOSINGS.get(thumbedAt(tokens, end - 1)) ?? [])
    if (words.length > long && words.every((word, n) => thumbedAt(tokens, end - 1 - n) === word))
      long = words.length;
  return long;
}
