/** Places that the ledger knows, however they are written. */
import { isKnown } from '../../row/lexicon.js';
import { oncePerLedger } from '../../row/once-per-ledger.js';
import { SMALL } from '../number-names.js';
import { soundsLike } from '../../row/sounds.js';
import { distance, slipsAllowed } from '../../row/spelling.js';
import { isThinned } from '../../row/spelling/vowels-left-out.js';
import type { Token } from '../../row/tokens.js';

export interface PlaceName {
  readonly place: string;
  /** In lower case, without apostrophes. */
  readonly words: readonly string[];
  /** The words run together. */
  readonly joined: string;
  /** "pt2" of "polytunnel 2"; only of places that carry a number. */
  readonly initials: string | undefined;
}

/** Places of a ledger, those of most words first. */
export const placeNamesOf = oncePerLedger(({ places = [], batches = [] }): readonly PlaceName[] =>
  [...new Set([...places, ...batches.flatMap(({ place }) => place ?? [])])]
    .map((place) => {
      const words = place
        .toLowerCase()
        .replace(/'/g, '')
        .split(/[\s-]+/);
      return { place, words, joined: words.join(''), initials: initialsOf(words) };
    })
    .sort((a, b) => b.words.length - a.words.length),
);

/** A place of the ledger that begins at token `at`, of which `plain` are the words; of several the longest, "glasshouse 2" before "glass house". */
export function knownAt(
  plain: readonly string[],
  tokens: readonly Token[],
  at: number,
  names: readonly PlaceName[],
  free: (at: number) => boolean,
): { readonly from: number; readonly to: number; readonly place: string } | undefined {
  let end = at;
  let known: string | undefined;
  for (const name of names) {
    const to = endAt(plain, tokens, at, name, free);
    if (to <= end) continue;
    end = to;
    known = name.place;
  }
  return known === undefined ? undefined : { from: at, to: end, place: known };
}

/** Where this place ends if it stands at `at`, in whichever way it is written; else 0. */
function endAt(
  plain: readonly string[],
  tokens: readonly Token[],
  at: number,
  { words, joined, initials }: PlaceName,
  free: (at: number) => boolean,
): number {
  const first = plain[at] ?? '';
  const to = endOfName(plain, tokens, at, words, free);
  if (to > 0 && !(words.length > 1 && first.length === 1 && to - at < 2)) return to;
  if (!free(at)) return 0;
  if (initials === first) return at + 1;
  if (!joined.startsWith(first)) return 0;
  if (words.length > 1 && first === joined) return at + 1;
  // "Kitchen window sill" of the kitchen windowsill.
  const parted = words.length + 1;
  if (words.length > 1 && free(at + parted - 1) && plain.slice(at, at + parted).join('') === joined)
    return at + parted;
  return words.length === 1 && free(at + 1) && `${first}${plain[at + 1] ?? '\u0000'}` === joined ? at + 2 : 0;
}

/** Where the words of a name that begins at token `at` end; 0 where they do not stand there. */
function endOfName(
  plain: readonly string[],
  tokens: readonly Token[],
  at: number,
  words: readonly string[],
  free: (at: number) => boolean,
): number {
  let to = at;
  let heard = 0;
  for (let n = 0; n < words.length; n++) {
    const expected = words[n] ?? '';
    if (n > 0 && tokens[to]?.raw === '-') to++;
    if (!free(to)) return 0;
    const written = plain[to] ?? '';
    if (!isWord(written, expected, tokens[to]?.raw ?? '', words.length, n)) {
      // "Colled frame", "the missed bench": one word of several may be told by its sound.
      if (heard > 0 || words.length === 1 || !soundsLike(written, expected)) return 0;
      heard++;
    }
    to++;
  }
  return to;
}

/** Whether a word is the `n`th of the words of a place's name, as it is spelt out or as it was written. */
function isWord(written: string, expected: string, asWritten: string, words: number, n: number): boolean {
  if (same(written, expected)) return true;
  // "C frame", "prop house": a place's own words, however the trade would spell them out.
  if (n === 0 && words > 1 && written.length === 1 && expected.startsWith(written)) return true;
  const raw = asWritten.toLowerCase();
  if (raw === 'prop' && words > 1 && /^propagat(?:ion|ing)$/.test(expected)) return true;
  return (
    raw === expected ||
    lacksVowels(written, expected) ||
    (words > 1 && raw !== written && lacksVowels(raw, expected))
  );
}

/** "Sunrm", "ht" of a heat mat: a word without some of its vowels, which is no other. */
function lacksVowels(written: string, expected: string): boolean {
  return (
    written.length > 1 &&
    written.length < expected.length &&
    written.charAt(0) === expected.charAt(0) &&
    !isKnown(written) &&
    isThinned(written, expected)
  );
}

/** Digits as they are spelt or misheard. */
const NUMERALS: ReadonlyMap<string, string> = new Map([
  ...SMALL.slice(1, 7).map((word, at) => [word, String(at + 1)] as const),
  ['too', '2'],
  ['to', '2'],
  ['for', '4'],
  ['won', '1'],
]);

function same(written: string, expected: string): boolean {
  if (written === expected || isPlural(written, expected) || isPlural(expected, written)) return true;
  if (expected.length === 1 && expected >= '0' && expected <= '9') return NUMERALS.get(written) === expected;
  const slips = slipsAllowed(expected.length);
  if (slips === 0 || Math.abs(written.length - expected.length) > slips) return false;
  return !isKnown(written) && distance(written, expected, slips) <= slips;
}

function isPlural(several: string, one: string): boolean {
  return several.length === one.length + 1 && several.endsWith('s') && several.startsWith(one);
}

/** "PT2" of "polytunnel 2", "mb4" of "mist bench 4": only places that carry a number. */
function initialsOf(words: readonly string[]): string | undefined {
  const number = words.at(-1) ?? '';
  if (!/^\d+$/.test(number)) return undefined;
  const letters = words.slice(0, -1).map((word) =>
    word
      .replace(/^poly(.)/, 'p$1')
      .replace(/^(g)(?:lass|reen)(h)ouse$/, '$1$2')
      .slice(0, /^(?:poly|glassh|greenh)/.test(word) ? 2 : 1),
  );
  return `${letters.join('')}${number}`;
}
