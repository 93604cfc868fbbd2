/** What is told with surprise or temper, in the words of a question: "… and would you believe they've got buds?", "…, happy now?". */
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';

/** The row without such words; the row itself where there are none. */
export function withoutMarvel(row: readonly Piece[]): readonly Piece[] {
  const from = row.findIndex(
    (_, at) =>
      /^(?:would|can|could|will)$/.test(wordAt(row, at)) &&
      wordAt(row, at + 1) === 'you' &&
      wordAt(row, at + 2) === 'believe' &&
      // "Would you believe a book on it" asks.
      (at === 0 ||
        row[at - 1]?.is === 'break' ||
        /^(?:and|but|so|then|now|well|oh)$/.test(wordAt(row, at - 1))),
  );
  if (from < 0) return withoutTemper(row);
  let to = from + 3;
  while (/^(?:it|that)$/.test(wordAt(row, to))) to++;
  if (row[to]?.is === 'break') to++;
  return [...row.slice(0, from), ...row.slice(to)];
}

/** "I've potted them on, happy now?". */
function withoutTemper(row: readonly Piece[]): readonly Piece[] {
  const mark = row.findLastIndex(({ is }) => is === 'break');
  const words = row.slice(mark + 1).map((_, at) => wordAt(row, mark + 1 + at));
  const tells = row.slice(0, mark).some((piece) => piece.is === 'word' && piece.verb?.form === 'past');
  return tells && /^(?:(?:are )?you )?(?:happy|satisfied|pleased|content)(?: now)?$/.test(words.join(' '))
    ? row.slice(0, mark)
    : row;
}
