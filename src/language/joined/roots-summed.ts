/** "Another 4 rooted, that's 16 now", "+4 rooted, total 16": how many have roots, told with what it comes to. */
import { wordAt } from '../grammar/rule.js';
import { whole } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';

const LEADS = whole`
  total|totals|making|now|that's|that is|that makes|which makes|makes|so that's|so that makes|so total|total now|total of
  running total|in total|making it|that makes it|so|up to|now up to
`;
const TAIL = whole`now|total|in total|altogether|rooted|rooted now|so far|to date|in`;

/** The row with the sum in the place of how many more there are. */
export function withRootsSummed(pieces: readonly Piece[]): readonly Piece[] {
  for (const [at, piece] of pieces.entries()) {
    if (piece.is !== 'count' || !piece.quantity.more || piece.quantity.value === undefined) continue;
    // "Another 3 rooted so 14 in all", with no mark between.
    const end = pieces.findIndex(
      ({ is }, n) =>
        n > at &&
        (is === 'break' ||
          (/^(?:so|that's|which|making|total|totals)$/.test(wordAt(pieces, n)) && isRooted(pieces[n - 1]))),
    );
    const open = pieces[end]?.is === 'break' ? end + 1 : end;
    if (end < 0 || !pieces.slice(at, end).some(isRooted)) continue;
    const sum = pieces.findIndex(({ is }, n) => n >= open && is !== 'word');
    const count = pieces[sum];
    const told = count?.is === 'count' ? count.quantity.value : undefined;
    if (told === undefined || told < piece.quantity.value || !LEADS.test(wordsIn(pieces, open, sum)))
      continue;
    // The "all" of "in all" is no number of its own.
    const next = pieces.findIndex((each, n) => n > sum && each.is !== 'word' && !isAll(each));
    const to = next < 0 ? pieces.length : next;
    if (
      (to > sum + 1 && !TAIL.test(wordsIn(pieces, sum + 1, to).trim())) ||
      (pieces[to] && pieces[to].is !== 'break')
    )
      continue;
    return [
      ...pieces.slice(0, at),
      { ...piece, quantity: { value: told } },
      ...pieces.slice(at + 1, end),
      ...pieces.slice(to),
    ];
  }
  return pieces;
}

const wordsIn = (pieces: readonly Piece[], from: number, to: number): string =>
  pieces
    .slice(from, to)
    .map((_, n) => wordAt(pieces, from + n))
    .join(' ');

const isAll = (piece: Piece): boolean => piece.is === 'count' && piece.quantity.whole === 'all';

const isRooted = (piece: Piece | undefined): boolean =>
  piece?.is === 'word' && /^(?:rooted|roots)$/.test(piece.text);
