/** Where one act of a sentence may end and the next begin: at breaks, and at words that join. */
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';

const CONJUNCTION = new Set(
  'and then but plus also while so because though although however whilst after before whereas yet or'.split(
    ' ',
  ),
);

/** A break, or a word that joins. */
export function isBoundary(piece: Piece | undefined): boolean {
  return piece?.is === 'break' || (piece?.is === 'word' && CONJUNCTION.has(piece.text));
}

/** The first of the boundaries that stand in a row before `at`, none before `low`. */
export function boundaryBefore(pieces: readonly Piece[], low: number, at: number): number {
  let start = at;
  while (start - 1 >= low && isBoundary(pieces[start - 1])) start--;
  return start;
}

/** A break or conjunction, unless it joins two words about one subject ("fine and rooted", "are after dying"). */
export function isCut(pieces: readonly Piece[], at: number): boolean {
  if (!isBoundary(pieces[at])) return false;
  const word = wordAt(pieces, at);
  if (
    word === 'and' &&
    /^(?:fine|well|happy|alive|healthy|good|strong|grand|up)$/.test(wordAt(pieces, at - 1))
  )
    return false;
  return !(
    /^(?:after|before|so|yet)$/.test(word) &&
    /^(?:are|is|am|were|was|as|not|even|just|ever)$/.test(wordAt(pieces, at - 1))
  );
}
