/** Slips of the thumb that leave one sense: "slod", "tok", "slugz". */
import { isEnglish } from '../english.js';
import { isKnown, spelling } from '../lexicon.js';
import { LETTERS } from './slips.js';

/** From how many letters on a slip of any English word is told by the slip itself. */
const LONG = 6;

/**
 * What a word which is none was meant to be, told by the slip itself: the one word of ours, or else the one English word.
 * Null where several of ours are as near: "roted" is "rooted" or "rotted", and nobody's to choose by letters alone.
 */
export function slipped(word: string, isSmall = true): string | null | undefined {
  const slips = [...swapped(word), ...doubled(word), ...onceOnly(word), ...endingInS(word)];
  const ours = only([...slips, ...leftOut(word)], isOurs);
  if (ours !== undefined) return ours;
  // "Wickett" is no wicket.
  if (!isSmall || word.length < LONG) return undefined;
  return only([...slips, ...leftOut(word)], isEnglish) ?? undefined;
}

/** Names among our words, to which other names lie near: "ines" is no slip of "Innes". */
const NAMES = /^(?:innes|john|jack|dave|monty|alan)$/;

const isOurs = (word: string): boolean =>
  (isKnown(word) && !NAMES.test(word)) || (word.length > LONG && spelling(word)?.includes(' ') === false);

function only(meant: readonly string[], isMeant: (word: string) => boolean): string | null | undefined {
  // "Swopped" is "swapped".
  const [first, ...others] = new Set(meant.filter(isMeant).map((word) => spelling(word) ?? word));
  return others.length === 0 ? first : null;
}

/** "Slod", "nto", "hlaf": two neighbours in each other's place. */
function swapped(word: string): readonly string[] {
  return Array.from(
    { length: word.length - 1 },
    (_, at) => `${word.slice(0, at)}${word.charAt(at + 1)}${word.charAt(at)}${word.slice(at + 2)}`,
  );
}

/** "Tok", "stil": a letter that is written twice, once. */
function doubled(word: string): readonly string[] {
  return Array.from(word, (letter, at) => `${word.slice(0, at)}${letter}${word.slice(at)}`).slice(1);
}

/** "Churcch", "fillled": a letter that is written once, twice. */
function onceOnly(word: string): readonly string[] {
  if (word.length < LONG - 1) return [];
  return [...word.matchAll(/([a-z])(?=\1)/g)].map(
    ({ index }) => word.slice(0, index) + word.slice(index + 1),
  );
}

/** "Litle", "trouh": a letter that was not hit. */
function leftOut(word: string): readonly string[] {
  if (word.length < LONG - 1) return [];
  return Array.from({ length: word.length }, (_, at) => at + 1).flatMap((at) =>
    Array.from(LETTERS, (letter) => word.slice(0, at) + letter + word.slice(at)),
  );
}

/** "Slugz", "rootz". */
function endingInS(word: string): readonly string[] {
  return word.endsWith('z') ? [`${word.slice(0, -1)}s`] : [];
}
