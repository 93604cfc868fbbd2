/** A row's words as the table of neighbours knows them, and what stands on either side of one. */
import { wordsOf } from '../../phrases.js';
import type { Token } from '../tokens.js';
import { END, NAME, NUMBER, START } from './neighbours.js';

/** The word of a token as the neighbours know it. */
export function neighbourOf(token: Token, isName: boolean): string {
  if (isName) return NAME;
  return token.is === 'number' ? NUMBER : token.is === 'line' ? '.' : kindOf(token.text);
}

/** Days and months stand where others of them do. */
export const kindOf = (word: string): string =>
  WEEKDAYS.has(word) ? 'sunday' : MONTHS.has(word) ? 'june' : word;
const WEEKDAYS = new Set(wordsOf`monday tuesday wednesday thursday friday saturday sunday`);
const MONTHS = new Set(wordsOf`january february april june july august september october november december`);

/** What stands before and behind a token. */
export function beside(
  row: readonly Token[],
  at: number,
  isName: (at: number) => boolean,
): readonly [before: string, after: string] {
  const wordAt = (at: number, edge: string): string => {
    const token = row[at];
    return token ? neighbourOf(token, isName(at)) : edge;
  };
  return [wordAt(at - 1, START), wordAt(at + 1, END)];
}
