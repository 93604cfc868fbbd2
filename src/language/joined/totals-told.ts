/** "Lost three Salt Harrier, so that's 117 Salt Harrier left": what a deed came to, told behind it, which nobody did. */
import { wordAt } from '../grammar/rule.js';
import { whole } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';

const COMES_TO = whole`
  so|which|and so|making|leaving|that's|that is|that leaves|that makes|which makes|which leaves|makes|leaves
  (so|and|which) (that's|that is|that leaves|that makes|makes|leaves|there's|there are|we're at|i'm at|it's)
`;
const TAIL = /^(?:in|all|altogether|left|now|still|here|there|total|told|to|go|remaining|then|up|standing)$/;

/** The row without such a total of a plant that was told of with another number. */
export function withoutTotals(pieces: readonly Piece[]): readonly Piece[] {
  const drop = new Set<number>();
  for (const [at, piece] of pieces.entries()) {
    const count = pieces[at - 1];
    if (piece.is !== 'plant' || count?.is !== 'count') continue;
    const from = leadBefore(pieces, at - 1);
    const end = endOf(pieces, at + 1);
    if (from === undefined || end === undefined || !wasTold(pieces.slice(0, from), piece, count)) continue;
    for (let n = from; n < end; n++) drop.add(n);
  }
  return drop.size === 0 ? pieces : pieces.filter((_, at) => !drop.has(at));
}

/** Where the words begin that make a number a sum; undefined where none stand before it. */
function leadBefore(pieces: readonly Piece[], to: number): number | undefined {
  let from = to;
  while (from > 0 && to - from < 4 && pieces[from - 1]?.is === 'word') {
    from--;
    const words = pieces.slice(from, to).map((_, n) => wordAt(pieces, from + n));
    const isOpen = pieces[from - 1]?.is === 'break' || words[0] === 'so' || words[0] === 'making';
    if (isOpen && COMES_TO.test(words.join(' '))) return from;
  }
  return undefined;
}

/** Past the words behind the plant; undefined where they tell of more than how many there are. */
function endOf(pieces: readonly Piece[], from: number): number | undefined {
  let end = from;
  const isTail = (at: number): boolean => {
    const piece = pieces[at];
    return TAIL.test(wordAt(pieces, at)) || (piece?.is === 'count' && piece.quantity.whole !== undefined);
  };
  while (isTail(end)) end++;
  const next = pieces[end];
  return next === undefined || next.is === 'break' ? end : undefined;
}

function wasTold(
  before: readonly Piece[],
  { plant }: Piece & { readonly is: 'plant' },
  { quantity }: Piece & { readonly is: 'count' },
): boolean {
  const isSame = (piece: Piece): boolean =>
    piece.is === 'plant' &&
    piece.plant.variety === plant.variety &&
    piece.plant.batch === plant.batch &&
    (plant.variety ?? plant.batch) !== undefined;
  const numbers = before.flatMap((piece) => (piece.is === 'count' ? [piece.quantity.value] : []));
  return (
    before.some((piece) => piece.is === 'word' && piece.verb !== undefined) &&
    before.some(isSame) &&
    numbers.length > 0 &&
    !numbers.includes(quantity.value)
  );
}
