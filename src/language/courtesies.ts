/** What a note opens and closes with and that tells nothing: "hi there", "fyi", "quick one", "… at last", "… thanks x". */
import { findNames } from './names.js';
import { normalise } from './normalise.js';
import type { NoteContext } from './note.js';
import { byFirstWord, type PhrasesByWord } from './phrases-by-word.js';
import { wordsOf } from './phrases.js';
import { type Token, tokenise } from './tokens.js';

/** One phrase a line, found by its first word; `backwards`: by its last, its words read from the end. */
const phrases = (rows: string, backwards = false): PhrasesByWord =>
  byFirstWord(
    rows
      .trim()
      .split('\n')
      .map((row) => (backwards ? row.trim().split(' ').reverse() : row.trim().split(' '))),
  );

const GREETINGS = new Set(wordsOf`hi hello hey hiya heya howdy gday g'day`);
const DAYTIMES = new Set(wordsOf`morning afternoon evening`);
const WHOM = new Set(
  wordsOf`there all both everyone everybody folks team lads guys bot slipnote mate love pet again you diary`,
);

/** "Ah no, only 2", "oh wait": a sigh before what takes something back. */
const SIGHS = new Set(wordsOf`ah oh ach och argh eh hm hmm`);
const TAKES_BACK = new Set(wordsOf`no wait sorry hang hold actually`);

/** They open a note whatever follows. */
const OPENINGS = phrases(`
  fyi
  btw
  by the way
  quick one
  quick note
  quick update
  a quick one
  just a quick one
  just a quick note
  just so you know
  just to let you know
  to let you know
  just to say
  for the record
  dear diary
  heads up
  sad day
  sad news
  bad news
  good news
  great news
  yay
  hooray
  woohoo
  phew
  haha
  lol
`);
/** They lean on what was said before, and matter where a talk goes on. */
const LEANS = phrases(`
  oh
  oh and
  oh also
  also
  and also
  anyway
  anyways
  one more thing
`);
/** They open one before a mark of writing. */
const HEADINGS = phrases(`
  update
  small update
  news
  latest
  log
  please log
  pls log
  quick question
  late entry
  ps
`);
/** "Well rooted", "well done": how, and no opening. */
const HOW =
  /^(?:rooted|watered|soaked|fed|drained|hardened|established|grown|fertilised|lit|mixed|insulated|done|away|over|up|out|gone|chuffed|pleased|happy|behind|ahead|past|before|after|as|on|in|into|under|below|above|worth|and|then)$/;
const CLOSINGS = phrases(
  `
  x
  xx
  xxx
  thanks
  thank you
  many thanks
  thanks a lot
  thanks very much
  ta
  ta very much
  thx
  cheers
  lol
  haha
  phew
  yay
  hooray
  hurrah
  woohoo
  at last
  finally
  by the way
  btw
  fyi
  as it happens
  tbh
  tbf
  imo
  ngl
  to be honest
  to be fair
  i'm afraid
  im afraid
  i am afraid
  sadly
  alas
  honestly
  that's me
  that is me
  that's me done
  that is me done
  that's me done for the day
  that is me done for the day
  that's me for the day
  that's it for now
  that's it for today
  that's all for now
  that's all for today
  done for the day
  pleased with that
  happy with that
  chuffed with that
  pleased with those
  happy with those
  pleased with them
  happy with them
  well pleased
  well chuffed
  over and out
`,
  true,
);
/** What may lead to a closing and goes with it. */
const LEADS_TO = new Set(wordsOf`and so i'm im am we're very really quite`);

/**
 * The tokens between, unless nothing would be left of them; `isName` tells which tokens are of a known name, `talk` that
 * the words stand in one, so that "also" and "oh and" say something.
 */
export function withoutCourtesies(
  tokens: readonly Token[],
  isName: (at: number) => boolean,
  talk = false,
): readonly Token[] {
  const from = pastOpenings(tokens, isName, talk);
  const to = beforeClosings(tokens, from, isName);
  return from === 0 && to === tokens.length ? tokens : tokens.slice(from, to);
}

/** What a grower says in a talk without them, as written. */
export function withoutCourtesy(text: string, context: NoteContext): string {
  const normal = normalise(text);
  const tokens = tokenise(normal);
  const names = findNames(tokens, context);
  const rest = withoutCourtesies(tokens, (at) => names.some(({ from, to }) => from <= at && at < to), true);
  return rest === tokens ? text : normal.slice(rest[0]?.start, rest.at(-1)?.end);
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

const ASKING = new Set(
  wordsOf`what what's what've where where's where've when when's how how's how're how've which who who's remind`,
);
const ASKS_WHETHER = new Set(wordsOf`is are has have do does did can could am was were`);
const ASKED_OF = new Set(wordsOf`i we you the it there they any my`);

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
