/** "One snapped, so that's one lost", "… three gone": what losses came to, told behind them, which is no loss of its own. */
import { wordAt } from '../grammar/rule.js';
import { isOnePlant, plantToldOf } from './joining/plant-of.js';
import { whole } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';

const LEADS_TO = whole`
  so|which|making|makes|that's|that is|that makes|which makes|which is|which means|meaning|i make that
  (so|and|and so|which|i think) (that's|that is|that makes|makes|it's|that'd be|i make that|i've|we've|i'm)
`;
const GONE = /^(?:lost|gone|dead|down|fewer|less)$/;
const TAIL =
  /^(?:in|all|altogether|total|now|then|so|far|already|this|week|time|today|again|sadly|sigh|ugh|oh|well|another)$/;

/** The row with a number that only says what was lost marked as a sum, without the "in all" behind it. */
export function withSums(pieces: readonly Piece[]): readonly Piece[] {
  let isOpen = false;
  return pieces.flatMap((piece, at) => {
    if (piece.is === 'break') isOpen = false;
    if (isOpen && (isOfAll(pieces, at) || isOfAll(pieces, at + 1))) return [];
    if (piece.is !== 'count' || piece.quantity.value === undefined) return [piece];
    const sum = sumAt(pieces, at);
    isOpen = sum !== undefined;
    return [sum ? { ...piece, quantity: { ...piece.quantity, sum } } : piece];
  });
}

/** Without words that lead to it only behind a full stop, and of several: "one died. One gone" may be two. */
function sumAt(pieces: readonly Piece[], at: number): 'led' | 'bare' | undefined {
  const piece = pieces[at];
  const before = pieces[at - 1];
  if (piece?.is !== 'count' || !isSum(pieces, at)) return undefined;
  if (isLed(pieces, at)) return 'led';
  const isBare =
    before?.is === 'break' && before.hard && !piece.quantity.more && (piece.quantity.value ?? 0) > 1;
  return isBare ? 'bare' : undefined;
}

/** Nothing behind it but that they are gone. */
function isSum(pieces: readonly Piece[], at: number): boolean {
  // "So one Salt Harrier lost".
  const gone = goneEnd(pieces, pieces[at + 1]?.is === 'plant' ? at + 2 : at + 1);
  const isApart = isLed(pieces, at) || pieces.slice(0, at).some(({ is }) => is === 'break');
  if (gone === undefined || !isApart) return false;
  let end = gone;
  while (TAIL.test(wordAt(pieces, end)) || isOfAll(pieces, end)) end++;
  const next = pieces[end];
  return (
    next === undefined ||
    next.is === 'break' ||
    // "So that's three lost yesterday".
    (next.is === 'when' && isLed(pieces, at)) ||
    /^(?:and|but)$/.test(wordAt(pieces, end))
  );
}

/** Past "gone" or "in the bin". */
function goneEnd(pieces: readonly Piece[], at: number): number | undefined {
  if (GONE.test(wordAt(pieces, at))) return at + 1;
  const isThrown =
    /^(?:in|on|for)$/.test(wordAt(pieces, at)) &&
    /^(?:the|my)$/.test(wordAt(pieces, at + 1)) &&
    /^(?:bin|compost|heap|tip)$/.test(wordAt(pieces, at + 2));
  return isThrown ? at + 3 : undefined;
}

/** The "all" of "in all". */
const isOfAll = (pieces: readonly Piece[], at: number): boolean => {
  const piece = pieces[at];
  return piece?.is === 'count' && piece.quantity.whole === 'all' && wordAt(pieces, at - 1) === 'in';
};

/** "So that's" straight before it, behind a mark or at a "so". */
function isLed(pieces: readonly Piece[], at: number): boolean {
  for (let from = at - 1; from >= 0 && at - from < 5 && pieces[from]?.is === 'word'; from--) {
    const words = pieces.slice(from, at).map((_, n) => wordAt(pieces, from + n));
    if (
      LEADS_TO.test(words.join(' ')) &&
      (pieces[from - 1]?.is === 'break' || words[0] === 'so' || words[0] === 'making')
    )
      return true;
  }
  return false;
}

/** The proposals without sums of the losses told before them; a plant that only the sum names is that of what it sums. */
export function withoutSums(proposals: readonly Proposal[]): readonly Proposal[] {
  const kept: Proposal[] = [];
  for (const told of proposals) {
    const losses = kept.filter(
      (each) => each.kind === 'loss' && isOfOne(plantToldOf(each), plantToldOf(told)),
    );
    if (!isSumOf(told, losses)) {
      kept.push(told);
      continue;
    }
    const { plant } = told.draft;
    const last = losses.at(-1);
    if (plant === undefined || last === undefined || last.draft.plant !== undefined) continue;
    kept[kept.indexOf(last)] = { ...last, draft: { ...last.draft, plant } };
  }
  return kept;
}

function isSumOf({ kind, draft }: Proposal, losses: readonly Proposal[]): boolean {
  const { plant, quantity } = draft;
  const sum = quantity?.sum;
  if (kind !== 'loss' || sum === undefined || (plant !== undefined && sum !== 'led')) return false;
  const numbers = losses.flatMap((each) => each.draft.quantity?.value ?? []);
  const all = numbers.reduce((sofar, many) => sofar + many, 0);
  const value = quantity?.value ?? 0;
  if (plant !== undefined) return numbers.length > 0 && value === all;
  // Fewer than were told before is no sum of them.
  return numbers.length > 0 && value >= all && (sum !== 'bare' || value === all);
}

const isOfOne = (one: ReturnType<typeof plantToldOf>, other: ReturnType<typeof plantToldOf>): boolean =>
  one === undefined || other === undefined || isOnePlant(one, other);
