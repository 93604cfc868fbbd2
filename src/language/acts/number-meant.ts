/** How many an act tells of, where that is not the number that its words spell. */
import type { Clause } from '../clauses/clauses.js';
import { draftsOf } from './drafting.js';
import { excepts } from './drafting/except-words.js';
import type { Draft } from './drafting/draft.js';
import { type Rule, wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';
import type { Quantity } from '../pieces/quantities/quantity.js';

/** The draft with the number that its words stand for, which is not always the one they spell. */
export function countedBy(
  pieces: readonly Piece[],
  clause: Clause,
  draft: Draft,
  unrooted?: Quantity,
): Draft {
  const { quantity } = draft;
  const rule = clause.hit?.rule;
  // "Checked everything": looked at, which says nothing of roots.
  const looked =
    rule?.sense === 'look' &&
    (quantity?.whole !== undefined || quantity?.weak === true || isSample(pieces, clause));
  // "Her big old Soot Angel, pot and all": no number of plants.
  const whole = rule?.kind === 'stock' && quantity?.whole === 'all';
  if (looked || whole) return withoutQuantity(draft);
  // "Lost all those not rooted": how many that is, nobody has said.
  const own = pieces.slice(clause.from, clause.to);
  const allUnrooted =
    quantity?.whole === 'all' &&
    own.some((_, at) => wordAt(own, at) === 'not' && wordAt(own, at + 1) === 'rooted');
  // "Lost two more than last time": how many that is, nobody has said; of roots, so many have joined them.
  const than = quantity?.more === true && own.findLastIndex((_, at) => wordAt(own, at) === 'than');
  if (than !== false && than >= 0 && !(rule?.kind === 'check' && own[than + 1]?.is === 'when'))
    return { ...draft, quantity: { vague: true } };
  if (allUnrooted) return { ...draft, quantity: { vague: true } };
  // "Three had no roots, binned the lot".
  const isAll = quantity === undefined || (quantity.whole === 'all' && quantity.outOf === undefined);
  if (rule?.kind === 'loss' && isAll && draft.plant === undefined && unrooted)
    return { ...draft, quantity: unrooted };
  if (rule?.sense === 'left' && quantity) return { ...draft, quantity: othersOf(quantity) };
  return rule?.count ? { ...draft, quantity: { whole: rule.count } } : draft;
}

/** "Checked six of the Salt Harrier", and no more: how many were looked at. */
function isSample(pieces: readonly Piece[], { hit, to }: Clause): boolean {
  const count = hit && pieces[hit.to];
  if (!hit || count?.is !== 'count' || count.quantity.outOf !== undefined || count.quantity.more)
    return false;
  return pieces
    .slice(hit.to + 1, to)
    .every(
      (piece) =>
        /^(?:plant|when|place)$/.test(piece.is) ||
        (piece.is === 'word' &&
          /^(?:of|the|my|our|them|those|these|cuttings?|plants|in|on|at|again)$/.test(piece.text)),
    );
}

/** "Five of nine survived", "half are left": how many did not; of how many, the ledger knows where nobody has said. */
const othersOf = ({ value, outOf, share, negative }: Quantity): Quantity => {
  // "Minus two, rot".
  if (negative && value !== undefined) return { value: -value };
  if (share) return { share: [share[1] - share[0], share[1]] };
  if (value === undefined) return { vague: true };
  return outOf === undefined ? { allBut: value } : { value: outOf - value };
};

/**
 * "Tipped out ten, six had roots": what a look told of before it tells what was found. Its number is that of the sample,
 * unless it counts lots ("checked all three: these seven rooted, those none").
 */
export function lookBefore(pieces: readonly Piece[], clause: Clause, found: Clause): Draft | undefined {
  const [draft] = draftsOf(pieces, clause);
  const { value, weak } = draft?.quantity ?? {};
  if (draft === undefined || value === undefined || weak) return undefined;
  const lots = new Set(
    pieces.slice(clause.to).flatMap((piece) => (piece.is === 'plant' ? [JSON.stringify(piece.plant)] : [])),
  );
  const [seen] = draftsOf(pieces, found);
  const isOfLots = (draft.plant === undefined && lots.size > 1) || (seen?.quantity?.value ?? 0) > value;
  return isOfLots ? withoutQuantity(draft) : draft;
}

/**
 * What was found of those looked at: "pulled six of them up, two had roots", "… all but two", "… no roots", "two had
 * nothing, the others rooted", "lifted one and it's rooted".
 */
export function outOf(
  draft: Draft,
  lookedAt: number,
  rooted: Rule['rooted'],
  unrooted: Quantity | undefined,
): Draft {
  const { value, allBut, whole, ...rest } = draft.quantity ?? {};
  const isOne = lookedAt === 1 && draft.quantity === undefined && rooted === undefined;
  const found =
    value ??
    (allBut !== undefined
      ? lookedAt - allBut
      : whole === 'rest' && unrooted?.value !== undefined
        ? lookedAt - unrooted.value
        : isOne
          ? 1
          : rooted === 'none' && draft.quantity === undefined
            ? 0
            : undefined);
  return found === undefined || found < 0 || found > lookedAt
    ? draft
    : {
        ...draft,
        quantity: { ...rest, value: found, outOf: lookedAt, ...(found === 0 ? { settles: true } : {}) },
      };
}

function withoutQuantity(draft: Draft): Draft {
  const bare: { -readonly [Slot in keyof Draft]: Draft[Slot] } = { ...draft };
  delete bare.quantity;
  return bare;
}

/**
 * "… bar one I gave to Nuala", "all rooted bar two, those binned": how many an act tells of that is told of those left out
 * of the one before it.
 */
export function leftOutBefore(pieces: readonly Piece[], { from, hit }: Clause, draft: Draft): Draft {
  if (draft.quantity !== undefined || draft.plant !== undefined) return draft;
  let at = from - 1;
  const pointed = draft.pronoun === true && hit?.rule.kind === 'loss';
  if (!pointed && pieces[from]?.is === 'break') return draft;
  if (pointed) at = pieces.findLastIndex(({ is }, before) => before < from && is === 'count');
  else while (/^(?:which|that|who|i|we|have|were|was)$/.test(wordAt(pieces, at))) at--;
  const count = pieces[at];
  const lead = /^(?:the|those)$/.test(wordAt(pieces, at - 1)) ? at - 2 : at - 1;
  if (count?.is !== 'count') return draft;
  const { value, allBut } = count.quantity;
  const left = allBut ?? (excepts(pieces, lead) ? value : undefined);
  return left === undefined ? draft : { ...draft, quantity: { value: left } };
}
