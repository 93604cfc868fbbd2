/** Restatements told in another order: "semi-ripe they were", "it was nine I took yesterday". */
import { wordAt } from '../../grammar/rule.js';
import type { Piece, When } from '../../pieces/pieces.js';
import { PRONOUN, TAKEN, WAS } from './words.js';

/** "Semi-ripe they were" with its subject first. */
export function inOrder(pieces: readonly Piece[]): Piece[] {
  const [value, subject, copula, ...rest] = pieces;
  const turned =
    value &&
    subject &&
    copula &&
    value.is !== 'word' &&
    PRONOUN.test(wordAt(pieces, 1)) &&
    WAS.test(wordAt(pieces, 2));
  return turned ? [subject, copula, value, ...rest] : [...pieces];
}

/** "It wasn't a slug, it was rot" from its second half; a plant denied tells which entry, and stays. */
export function withoutDenial(row: readonly Piece[]): readonly Piece[] {
  const cut = row.findIndex(({ is }) => is === 'break');
  const before = row.slice(0, cut);
  const denies = before.some((_, at) => /^(?:wasn't|weren't|isn't|aren't)$/.test(wordAt(row, at)));
  const told = before.some(({ is }) => is === 'plant');
  return cut > 0 && cut < row.length - 1 && before.length < 7 && denies && !told ? row.slice(cut + 1) : row;
}

const THOSE = /^(?:that|those|them|it|these)$/;

/** "It was nine Brass Heron I took yesterday": the row up to the deed that tells which, and its day. */
export function withoutDeed(pieces: readonly Piece[]): {
  readonly row: readonly Piece[];
  readonly when?: When;
} {
  const at = pieces.findLastIndex(
    (piece, n) =>
      n > 1 &&
      piece.is === 'word' &&
      piece.verb?.form === 'past' &&
      TAKEN.test(piece.verb.lemma) &&
      /^(?:i|we)$/.test(wordAt(pieces, n - 1)) &&
      pieces.slice(0, n - 1).some(({ is }) => is === 'count' || is === 'when'),
  );
  // "That was Thursday I did those".
  const end = THOSE.test(wordAt(pieces, at + 1)) ? at + 2 : at + 1;
  const day = pieces[end];
  if (
    at < 0 ||
    pieces.length > end + 1 ||
    !pieces.slice(1, 6).some((_, n) => WAS.test(wordAt(pieces, n + 1)))
  )
    return { row: pieces };
  return { row: pieces.slice(0, at - 1), ...(day?.is === 'when' ? { when: day.when } : {}) };
}
