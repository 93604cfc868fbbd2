/** What the words before an act lend it where it says none of its own: a cause, a place, a day. */
import type { Clause } from './clauses.js';
import type { Draft } from './drafting/draft.js';
import type { Piece } from './pieces.js';
import type { Proposal } from './proposal.js';
import { causeBefore, dayBefore, isMush, placeOfIt } from './spoken-before.js';
import { placeThere, STANDS } from './where-to.js';

/** A cause or a place that the words before an act lend it. */
export function toldBefore(
  pieces: readonly Piece[],
  clause: Clause,
  found: Draft,
  earlier: readonly Proposal[],
): Pick<Draft, 'cause' | 'place'> {
  const kind = clause.hit?.rule.kind ?? '';
  if (kind === 'loss') {
    const unsure = found.cause === undefined || isMush(pieces, clause);
    const cause = unsure ? causeBefore(pieces, clause) : undefined;
    return cause === undefined ? {} : { cause };
  }
  if (found.place !== undefined) return {};
  const place =
    kind === 'tend'
      ? placeOfIt(pieces, clause, earlier)
      : STANDS.has(kind)
        ? placeThere(pieces, clause, earlier)
        : undefined;
  return place === undefined ? {} : { place };
}

/** The day that was said, or that of the act before. */
export function dayOf(
  pieces: readonly Piece[],
  clause: Clause,
  { when }: Draft,
  before: Proposal | undefined,
): Pick<Draft, 'when'> {
  const day = when ?? dayBefore(pieces, clause, before);
  return day ? { when: day } : {};
}
