/** Acts that stand as a heading over what they were done to: "took: Salt Harrier 6, Tallow Bell 2, lost: …". */
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';

const PARTICLE = /^(?:on|up|out|off|in|away)$/;

/** The row without the marks between such an act and the list behind it. */
export function settleHeadings(row: readonly Piece[]): readonly Piece[] {
  if (!row.some((piece) => isMark(piece))) return row;
  return row.filter((piece, at) => !(isMark(piece) && isListed(row[at + 1]) && isHeading(row, at)));
}

const isMark = (piece: Piece | undefined): boolean => piece?.is === 'break' && /^[:-]$/.test(piece.mark);

const isListed = (piece: Piece | undefined): boolean =>
  piece?.is === 'count' || piece?.is === 'plant' || piece?.is === 'pots';

/** A verb of the past that opens the sentence or what stands behind a break, and nothing else before the mark. */
function isHeading(row: readonly Piece[], mark: number): boolean {
  // "Took today: …".
  const end = row[mark - 1]?.is === 'when' ? mark - 1 : mark;
  const at = PARTICLE.test(wordAt(row, end - 1)) ? end - 2 : end - 1;
  const verb = row[at];
  const before = row[at - 1];
  return (
    verb?.is === 'word' &&
    verb.verb?.form === 'past' &&
    !/^(?:be|have|get|look|check|root)$/.test(verb.verb.lemma) &&
    (before === undefined || before.is === 'break' || before.is === 'when' || wordAt(row, at - 1) === 'and')
  );
}
