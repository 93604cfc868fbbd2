/** Names that a note itself tells to be names: "a dahlia called brown paper duchess", "Ragged Sunday by name". */
import { verbSense } from '../../row/lexicon.js';
import { numberAt } from '../numbers.js';
import { textAt, type Token } from '../../row/tokens.js';
import { announcements } from './announcements.js';
import { nameAt } from './name-piece.js';
import type { Search } from '../../joined/new-names/search.js';

/** A name of more words than this is none. */
const MOST = 5;

/** What follows an announcement is the name, whatever its words; what stands before "by name" as well. */
export function namedNames({ text, tokens, free, claim }: Search): void {
  for (let at = 1; at < tokens.length; at++) {
    const named = namedBefore(tokens, at, free) ?? namedBehind(tokens, at, free);
    if (named) claim(nameAt(text, tokens, named.from, named.to));
  }
}

interface Extent {
  readonly from: number;
  readonly to: number;
}
type Free = Search['free'];

/** "Two crowns, Ragged Sunday by name". */
function namedBefore(tokens: readonly Token[], at: number, free: Free): Extent | undefined {
  if (textAt(tokens, at) !== 'name' || textAt(tokens, at - 1) !== 'by' || textAt(tokens, at + 1) === 'of')
    return undefined;
  const to = at - 1;
  let from = to;
  while (from > 0 && to - from < MOST - 1 && free(from - 1) && tokens[from - 1]?.capital === true) from--;
  return from < to ? { from, to } : undefined;
}

function namedBehind(tokens: readonly Token[], at: number, free: Free): Extent | undefined {
  if (!announcements.some(({ endsAt }) => endsAt(tokens, at))) return undefined;
  let from = at + 1;
  while (/^(?:the|it|them|this|["':])$/.test(textAt(tokens, from))) from++;
  const capital = tokens[from]?.capital === true || opensNumbered(tokens, from);
  if (!capital && VISITS.test(textAt(tokens, from))) return undefined;
  let to = from;
  while (to - from < MOST && free(to) && belongs(tokens, at, from, to, capital)) to++;
  while (to > from && SMALL.test(textAt(tokens, to - 1))) to--;
  if (to === from || (to === from + 1 && tokens[from]?.is === 'number')) return undefined;
  return { from, to };
}

/** "Called over with six". */
const VISITS = /^(?:over|round|up|in|by|back|out|off|for|at|here|me|us|with)$/;
/** What may stand within a name written with capitals, and not at its end. */
const SMALL = /^(?:of|the|de|la|and|on|in)$/;
/** What ends a name in small letters. */
const ENDS = /^(?:in|into|on|at|from|today|yesterday|this|for|with|to|by|and|which|that|last|please|now|so)$/;

/** Whether the word at `n` goes on with the name from `from`, announced at `at`. */
function belongs(tokens: readonly Token[], at: number, from: number, n: number, capital: boolean): boolean {
  const token = tokens[n];
  // "Should be called 3 Sisters".
  const isNumbered =
    n === from && /^(?:called|named|christened)$/.test(textAt(tokens, at)) && opensNumbered(tokens, n);
  if (token?.is !== 'word' && !isNumbered) return false;
  // "Called tin whistler eight semi ripe cuttings".
  if (n > from && countsCuttings(tokens, n)) return false;
  if (token?.capital === true) return true;
  // "Name of tat n tails".
  if (token?.raw.toLowerCase() === 'n' && n > from) return true;
  const word = textAt(tokens, n);
  if (capital && n > from && !SMALL.test(word)) return false;
  // "Called salmon alibi its a dahlia": what is said of it next.
  const isSaidOf =
    n > from && IT_IS.test(word) && /^(?:an?|the|my|our|from|not|for)$/.test(textAt(tokens, n + 1));
  return !ENDS.test(word) && !isSaidOf && !(n - from >= 2 && goesOn(word));
}

const IT_IS = /^(?:its|it's|thats|that's|theyre|they're|hes|he's|shes|she's)$/;

/** Whether a number stands there, with cuttings a few words behind it. */
function countsCuttings(tokens: readonly Token[], at: number): boolean {
  const to = numberAt(tokens, at)?.to;
  return (
    to !== undefined &&
    [0, 1, 2, 3].some((n) => /^(?:cuttings|tips|slips|plugs|pots?|trays?)$/.test(textAt(tokens, to + n)))
  );
}

/** What goes on behind a name in small letters: "one called tin whistler pinched from Joan's hedge". */
const goesOn = (word: string): boolean =>
  verbSense(word)?.form === 'past' ||
  /^(?:all|come|a|an|off|out|i|we|they|they're|it's|that's|it'll|they'll|i've|i'd|i'll|we've|they've|she's|he's)$/.test(
    word,
  );

/** A number before a word with a capital, which is no month. */
const opensNumbered = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.is === 'number' && tokens[at + 1]?.is === 'word' && tokens[at + 1]?.capital === true;
