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
  let whole = '';
  let end = 0;
  for (const token of mended) {
    whole += normal.slice(end, token.start) + asWritten(token);
    end = token.end;
  }
  return whole + normal.slice(end);
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
