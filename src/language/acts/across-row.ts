/** What one act of a row lends to the others: the day that opens it, the visit's day, the plant named last. */
import { placedBoth } from './both-meant.js';
import { dayOfEvent, dayToldAt } from './day-told.js';
import { wordAt } from '../grammar/rule.js';
import { whole } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';

/** The proposals of a row, each with what the row as a whole says of it. */
export function acrossTheRow(proposals: readonly Proposal[], row: readonly Piece[]): readonly Proposal[] {
  return placedBoth(visited(backwards(ofOneDay(dated(proposals, row), row), row), row), row);
}

/** What is set above a telling that comes late ("late entry:", "backlog:", "from the diary:"). */
const HEADING = whole`
  a|one|another|from|out|of|the|my|very|rather|bit|up|sorry
  late|belated|belatedly|overdue|delayed|backdated|older|old|missed|missing|forgotten|backlog|catch|catching
  entry|entries|notes?|log|update|record|diary|notebook|book|clipboard
`;
/** No heading is longer. */
const LONGEST_HEADING = 5;

/** Where the telling begins behind such a heading; the start where there is none. */
function pastHeading(row: readonly Piece[]): number {
  let at = 0;
  while (at < LONGEST_HEADING && HEADING.test(wordAt(row, at))) at++;
  return row[at]?.is === 'break' && at > 0 ? at + 1 : row[at]?.is === 'when' ? at : 0;
}

/** "Sunday: pinched these, watered those": a day that opens the sentence belongs to all that it tells. */
function dated(proposals: readonly Proposal[], row: readonly Piece[]): readonly Proposal[] {
  const opening = dayToldAt(row) ?? dayOfEvent(row) ?? pastHeading(row);
  const first = row[/^(?:on|so|and)$/.test(wordAt(row, opening)) ? opening + 1 : opening];
  if (first?.is !== 'when' || first.struck === true || first.when.past === undefined) return proposals;
  // "From the 5 March lot nine have rooted": which lot, and no day of the looking.
  if (proposals.some(({ draft }) => draft.which?.struckOn === first.when)) return proposals;
  // "Late entry for 3 June": when it was, not how long.
  const when = opening > 0 ? { ...first.when, words: first.when.words.replace(/^for /i, '') } : first.when;
  return proposals.map((proposal) =>
    proposal.draft.when === undefined ? { ...proposal, draft: { ...proposal.draft, when } } : proposal,
  );
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
