/** "Took 12, six in the propagator and six in water": cuttings of one deed shared out between places or media, a draft for each. */
import type { Clause } from '../clauses/clauses.js';
import { isOfEach } from './drafting/beside-counts.js';
import type { Draft } from './drafting/draft.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece, PieceOf } from '../pieces/pieces.js';
import type { Quantity } from '../pieces/quantities/quantity.js';

/** Between a share and the words that lead to where it is. */
const OF_THEM =
  /^(?:of|them|these|those|cuttings?|plugs?|plants?|went|gone|going|are|now|ones?|straight|more)$/;
const LEADS = /^(?:in|into|on|onto|to|for|under|at|by|inside)$/;
const POINTS = /^(?:the|my|our|a|an|some|plain|just)$/;
const BEFORE_SHARE = /^(?:the|other|another|a|further|then)$/;

interface Share {
  readonly quantity: Quantity;
  readonly where: PieceOf<'place'> | PieceOf<'medium'>;
  /** Past the joint before it, and past its place. */
  readonly from: number;
  readonly to: number;
}

/** The drafts, one for each share of what a strike or a delivery told of one plant; as they were where it was not shared out. */
export function eachPlaced(
  drafts: readonly Draft[],
  pieces: readonly Piece[],
  clause: Clause,
): readonly Draft[] {
  const [draft, another] = drafts;
  const kind = clause.hit?.rule.kind ?? '';
  if (!draft || another) return drafts;
  if (/^(?:check|loss)$/.test(kind) && clause.subjectFirst) return eachStanding(draft, pieces, clause);
  if (!/^(?:strike|receive)$/.test(kind)) return drafts;
  const shares = sharesIn(pieces, clause);
  const [first] = shares;
  if (!first) return drafts;
  const total = draft.quantity?.value;
  const parts = shares.length > 1 ? numbersOf(shares, total) : undefined;
  if (parts) return shares.map((share, n) => placed(draft, share, parts[n]));
  // "Took six into the propagator and four into water": the first share is told with the deed.
  const told = pieces[first.from - 1 - jointBefore(pieces, first.from)];
  const isFirst =
    (told?.is === 'place' && told.place === draft.place) ||
    (told?.is === 'medium' && told.medium === draft.medium);
  const others = shares.map(({ quantity }) => quantity.value);
  if (!isFirst || total === undefined || others.includes(undefined) || pieces[first.from]?.is !== 'count')
    return drafts;
  return [draft, ...shares.map((share, n) => placed(draft, share, others[n]))];
}

/** "5 in the tunnel and 3 on the bench have rooted": so many of each place. */
function eachStanding(draft: Draft, pieces: readonly Piece[], clause: Clause): readonly Draft[] {
  const shares: Share[] = [];
  for (let at = clause.from; at < (clause.hit?.from ?? clause.to);) {
    const share = shareAt(pieces, at);
    if (!share || share.where.is !== 'place' || share.quantity.value === undefined) break;
    shares.push(share);
    at = share.to;
    while (jointBefore(pieces, at + 1) > 0 && at < clause.to) at++;
  }
  return shares.length > 1 ? shares.map((share) => placed(draft, share, share.quantity.value)) : [draft];
}

const placed = (draft: Draft, { where }: Share, value: number | undefined): Draft => ({
  ...draft,
  ...(value === undefined ? {} : { quantity: { value } }),
  ...(where.is === 'place' ? { place: where.place } : { medium: where.medium }),
});

/** How many each share is, where they come to `total`. */
function numbersOf(shares: readonly Share[], total: number | undefined): readonly number[] | undefined {
  const numbers: number[] = [];
  for (const { quantity } of shares) {
    const before = numbers.reduce((sum, each) => sum + each, 0);
    const [part, of] = quantity.share ?? [];
    const value =
      quantity.whole === 'rest'
        ? (total ?? 0) - before
        : part !== undefined && of !== undefined
          ? ((total ?? 0) * part) / of
          : quantity.value;
    if (value === undefined || value <= 0 || !Number.isInteger(value)) return undefined;
    numbers.push(value);
  }
  const sum = numbers.reduce((so, each) => so + each, 0);
  return sum === (total ?? sum) ? numbers : undefined;
}

/** The shares of a clause, one straight behind the other. */
function sharesIn(pieces: readonly Piece[], clause: Clause): readonly Share[] {
  const shares: Share[] = [];
  for (let at = clause.hit?.to ?? clause.from; at < clause.to; at++) {
    const joint = jointBefore(pieces, at);
    const share = joint > 0 ? shareAt(pieces, at) : undefined;
    if (!share) continue;
    const last = shares.at(-1);
    if (last && last.to !== at - joint) return [];
    shares.push(share);
    at = share.to - 1;
  }
  return shares;
}

/** How many pieces of joint stand before a share: a mark, "and", "and the other". */
function jointBefore(pieces: readonly Piece[], at: number): number {
  let before = at - 1;
  while (BEFORE_SHARE.test(wordAt(pieces, before))) before--;
  const isJoint = (n: number): boolean => {
    const piece = pieces[n];
    return piece?.is === 'break' || /^(?:and|with|plus)$/.test(wordAt(pieces, n));
  };
  let joints = 0;
  while (isJoint(before - joints)) joints++;
  return joints === 0 ? 0 : at - 1 - before + joints;
}

/** A number, and straight behind it where so many of them are. */
function shareAt(pieces: readonly Piece[], at: number): Share | undefined {
  const count = pieces[at];
  if (count?.is !== 'count' || isOfEach(pieces, at)) return undefined;
  let lead = at + 1;
  while (OF_THEM.test(wordAt(pieces, lead))) lead++;
  if (!LEADS.test(wordAt(pieces, lead))) return undefined;
  let to = lead + 1;
  while (POINTS.test(wordAt(pieces, to)) || LEADS.test(wordAt(pieces, to))) to++;
  const where = pieces[to];
  if (where?.is !== 'place' && where?.is !== 'medium') return undefined;
  return { quantity: count.quantity, where, from: at, to: to + 1 };
}
