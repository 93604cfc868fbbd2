/** What befell a part of plants just lost: "dumped three, the stems rotted clean through". */
import type { Clause } from '../clauses/clauses.js';
import type { Draft } from './drafting/draft.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';

const PART = /^(?:stems?|bases?|necks?|leaf|leaves|growth|tops?|tips?|shoots?|foliage|roots?|nodes?)$/;

/** The loss before with the cause that the clause gives for it; undefined where the clause is about something else. */
export function lostBecause(
  before: Proposal | undefined,
  pieces: readonly Piece[],
  { from, hit }: Clause,
  [draft]: readonly Draft[],
): Proposal | undefined {
  if (before?.kind !== 'loss' || hit?.rule.kind !== 'loss' || before.slots['cause'] !== undefined)
    return undefined;
  const isOfPart = pieces.slice(from, hit.from).some((_, n) => PART.test(wordAt(pieces, from + n)));
  const cause = draft?.cause ?? hit.rule.cause;
  if (!isOfPart || cause === undefined || draft?.plant !== undefined) return undefined;
  return { ...before, slots: { ...before.slots, cause } };
}
