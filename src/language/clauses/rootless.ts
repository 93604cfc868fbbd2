/** "The 3 without roots I have thrown away": plants told by what they lack, before what was done to them. */
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';

const LACKS: readonly (readonly string[])[] = [
  'without roots',
  'without any roots',
  'without root',
  'with no roots',
  'with no root',
  'that never rooted',
  'which never rooted',
  "that didn't root",
  "that hadn't rooted",
  'that had no roots',
  "that hadn't any roots",
].map((phrase) => phrase.split(' '));

/** Where such words begin that end before `end`, behind a number; `end` where none do. */
export function rootlessFrom(pieces: readonly Piece[], end: number): number {
  const found = LACKS.find((words) =>
    words.every((word, n) => wordAt(pieces, end - words.length + n) === word),
  );
  const from = found ? end - found.length : end;
  const behindOnes = wordAt(pieces, from - 1) === 'ones' ? from - 1 : from;
  return found && pieces[behindOnes - 1]?.is === 'count' ? behindOnes : end;
}
