/** Plants that somebody takes to somebody else, told in the words of taking cuttings. */
import { isKnown } from '../lexicon.js';
import type { Piece } from '../pieces.js';
import { wordAt } from './rule.js';

/** What is taken from a plant to be rooted. */
export const CUTTINGS =
  /^(?:cutting|cuttings|slip|slips|piece|pieces|stem|stems|shoots|shoot|bits|bit|basals|tips|nodes|babies)$/;

/** Plants and no cuttings, to somebody who is named in a word and nothing more. */
export function leavesWith(pieces: readonly Piece[], from: number): boolean {
  const to = pieces.findIndex((_, at) => at >= from && wordAt(pieces, at) === 'to');
  const whom = pieces[to + 1];
  const end = pieces[to + 2];
  return (
    to > 0 &&
    pieces.slice(from, to).some(({ is }) => is === 'plant') &&
    !pieces
      .slice(from, to)
      .some(
        (piece) =>
          piece.is === 'cutting' ||
          piece.is === 'break' ||
          (piece.is === 'word' && CUTTINGS.test(piece.text)),
      ) &&
    whom?.is === 'word' &&
    whom.verb === undefined &&
    !isKnown(whom.text) &&
    (end === undefined || end.is === 'break' || end.is === 'when')
  );
}
