/** Slips of the thumb that leave one sense: "slod", "tok", "slugz". */
import { isKnown } from '../lexicon.js';

/** The one word of ours that a word which is none was meant to be, told by the slip itself. */
export function slipped(word: string): string | undefined {
  return onlyOne(swapped(word)) ?? onlyOne(doubled(word)) ?? onlyOne(endingInS(word));
}

/** Names among our words, to which other names lie near: "ines" is no slip of "Innes". */
const NAMES = /^(?:innes|john|jack|dave|monty|alan)$/;

function onlyOne(meant: readonly string[]): string | undefined {
  const [first, ...others] = new Set(meant.filter((word) => isKnown(word) && !NAMES.test(word)));
  return others.length === 0 ? first : undefined;
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

/** "Slugz", "rootz". */
function endingInS(word: string): readonly string[] {
  return word.endsWith('z') ? [`${word.slice(0, -1)}s`] : [];
}
