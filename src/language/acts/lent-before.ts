/** What the words before an act lend it where it says none of its own: a cause, a place, a day. */
import type { Clause } from '../clauses/clauses.js';
import { dayBehindReturn } from './for-what.js';
import type { Draft } from './drafting/draft.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece, When } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
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

/** "TB1 w/c 8 June: 60 sold to …, 40 to …": the day of a heading, where the same act is told again behind its colon. */
function dayOfHeading(
  pieces: readonly Piece[],
  { from, to, hit }: Clause,
  before: Proposal | undefined,
): When | undefined {
  const colon = pieces.findIndex((piece) => piece.is === 'break' && piece.mark === ':');
  if (colon < 0 || colon > (hit?.from ?? from) || !before || before.kind !== hit?.rule.kind) return undefined;
  const heading = pieces.slice(0, colon);
  const [day, another] = heading.filter((piece) => piece.is === 'when');
  const isHeading = heading.every(({ is }) => is === 'plant' || is === 'when' || is === 'break');
  // "…, two more sold since".
  const isSince = pieces.slice(from, to).some((piece) => piece.is === 'word' && SINCE.test(piece.text));
  // "10 March Copper Lantern: 4 rooted": the day of a lot, which the act before did not take for its own either.
  return !another && isHeading && !isSince && day?.when === before.draft.when ? day?.when : undefined;
}

/** "41 degrees yesterday and five died": the day of the heat or frost that did it, joined in one sentence. */
function dayOfHeat(
  pieces: readonly Piece[],
  { hit }: Clause,
  warmth: Proposal | undefined,
): When | undefined {
  const head = hit && pieces[hit.from];
  const killed = hit?.rule.kind === 'loss' && head?.is === 'word' && head.verb?.form === 'past';
  const isSince = pieces.slice(0, hit?.from).some((_, at) => SINCE.test(wordAt(pieces, at)));
  return killed && !isSince && warmth?.kind === 'reading' && /^(?:and|so)$/.test(wordAt(pieces, 0))
    ? warmth.draft.when
    : undefined;
}

const SINCE = /^(?:have|has|i've|we've|now|since|later|then|after|afterwards)$/;

/** The day that was said, or that of the act before. */
export function dayOf(
  pieces: readonly Piece[],
  clause: Clause,
  { when }: Draft,
  before: Proposal | undefined,
  earlier: readonly Proposal[],
): Pick<Draft, 'when'> {
  const day =
    when ??
    dayBehindReturn(pieces, clause) ??
    (before ? undefined : dayOfHeat(pieces, clause, earlier.at(-1))) ??
    dayBefore(pieces, clause, before) ??
    dayOfHeading(pieces, clause, before);
  return day ? { when: day } : {};
}
