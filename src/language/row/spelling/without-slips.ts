/** A text with its slips of the pen mended, for those who look at the words and not at their pieces. */
import { isKnown, spelling } from '../lexicon.js';
import { findNames } from '../names.js';
import { normalise } from '../normalise.js';
import type { NoteContext } from '../../note.js';
import { type Token, tokenise } from '../tokens.js';
import { mendedByNeighbours } from './by-neighbours.js';

/**
 * "acutally only 8" is "actually only 8"; the text itself where nothing is to be mended. A name stays as it is: one that is
 * known, and one that the text tells ("auntie breda"), by `told`, which gives the words of such.
 */
export function withoutSlips(text: string, context: NoteContext, told: () => ReadonlySet<string>): string {
  const normal = normalise(text);
  const tokens = tokenise(normal);
  const names = findNames(tokens, context);
  const isName = (at: number): boolean => names.some(({ from, to }) => from <= at && at < to);
  const slips = mendedByNeighbours(tokens, isName).filter((token, at) => isSlip(token) && !isName(at));
  if (slips.length === 0) return text;
  const named = told();
  const mended = slips.filter(({ raw }) => !named.has(raw.toLowerCase()));
  return replaced(normal, 0, mended, normal.length);
}

/** What stands in a text from the first of some tokens to the last of them, its slips in small letters mended where that may be: "my siser" is "my sister". */
export function asMeant(
  text: string,
  tokens: readonly Token[],
  mayMend: (token: Token) => boolean = () => true,
): string {
  const slips = tokens.filter((token) => !token.capital && isSlip(token) && mayMend(token));
  return replaced(text, tokens[0]?.start ?? 0, slips, tokens.at(-1)?.end ?? 0);
}

function replaced(text: string, start: number, slips: readonly Token[], end: number): string {
  let whole = '';
  let from = start;
  for (const token of slips) {
    whole += text.slice(from, token.start) + asWritten(token);
    from = token.end;
  }
  return whole + text.slice(from, end);
}

/** A word that is none, and stands for one other; habitual spellings stay. */
function isSlip({ is, raw, text }: Token): boolean {
  const word = raw.toLowerCase();
  return (
    is === 'word' &&
    text !== word &&
    /^[a-z]{3,}$/.test(word) &&
    /^[a-z]+$/.test(text) &&
    spelling(word) === undefined &&
    !isKnown(word)
  );
}

const asWritten = ({ text, capital }: Token): string =>
  capital ? text.charAt(0).toUpperCase() + text.slice(1) : text;
