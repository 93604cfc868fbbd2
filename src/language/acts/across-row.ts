/** What one act of a row lends to the others: the day that opens it, the visit's day, the plant named last. */
import { placedBoth } from './both-meant.js';
import { closed, dated } from './day-of-all.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';

/** The proposals of a row, each with what the row as a whole says of it; `done` is the row without what was left undone. */
export function acrossTheRow(
  proposals: readonly Proposal[],
  done: readonly Piece[],
  row: readonly Piece[],
): readonly Proposal[] {
  const ofOne = ofOneDay(closed(dated(proposals, done), row), done);
  return placedBoth(visited(backwards(ofOne, done), done), done);
}

/** "Potted on seven on Saturday and the other two were mush": what the others came to was seen as these were done. */
function ofOneDay(proposals: readonly Proposal[], row: readonly Piece[]): readonly Proposal[] {
  if (row.some((_, at) => /^(?:have|has|since|now|still|later)$/.test(wordAt(row, at)))) return proposals;
  return proposals.map((proposal, n) => {
    const { kind, draft } = proposal;
    const isOfOthers = draft.quantity?.besides === true || draft.quantity?.whole === 'rest';
    const when = proposals[n - 1]?.draft.when;
    const isOneDay = kind === 'loss' && isOfOthers && !draft.plant && !draft.when && when?.past !== undefined;
    return isOneDay ? { ...proposal, draft: { ...draft, when } } : proposal;
  });
}

const CAME = new Set(['stock', 'receive', 'dispatch']);

/** "Val turned up at the weekend and gave me two": the day of the visit is the gift's. */
function visited(proposals: readonly Proposal[], row: readonly Piece[]): readonly Proposal[] {
  const [only, another] = proposals;
  if (!only || another || !CAME.has(only.kind) || only.draft.when) return proposals;
  const days = row.flatMap((piece, at) =>
    piece.is === 'when' && (row[at + 1]?.is === 'break' || wordAt(row, at + 1) === 'and') ? [piece.when] : [],
  );
  const [when, more] = days;
  return when && !more && when.past !== undefined ? [{ ...only, draft: { ...only.draft, when } }] : proposals;
}

/** "Two rooted and one rotted on the Granite Poppy": a plant named last is meant by what precedes it. */
function backwards(proposals: readonly Proposal[], row: readonly Piece[]): readonly Proposal[] {
  const first = proposals.findIndex(({ draft }) => draft.plant !== undefined);
  const plant = proposals[first]?.draft.plant;
  // What is seen on a plant says nothing of what else was done.
  if (plant === undefined || proposals[first]?.kind === 'remark' || !isNamedLast(row)) return proposals;
  return proposals.map((proposal) =>
    proposal.draft.plant === undefined && proposal.carried === undefined && !isOfAll(proposal)
      ? { ...proposal, carried: plant }
      : proposal,
  );
}

/** "Watered the greenhouse and …", "moved everything in the porch out and …": of a place, or of all there is. */
const isOfAll = ({ kind, draft }: Proposal): boolean =>
  draft.leftOut !== undefined ||
  (kind === 'tend' && draft.place !== undefined) ||
  (/^(?:tend|move)$/.test(kind) && draft.quantity?.whole === 'all' && !draft.pronoun);

/** The first plant of a row stands behind "on", "of" and the like, with no act behind it. */
function isNamedLast(row: readonly Piece[]): boolean {
  let at = row.findIndex(({ is }) => is === 'plant') - 1;
  while (/^(?:the|my|those|these|our)$/.test(wordAt(row, at))) at--;
  return (
    /^(?:on|of|from|for|with|in|off|to)$/.test(wordAt(row, at)) ||
    row[at]?.is === 'count' ||
    row[at]?.is === 'break'
  );
}
