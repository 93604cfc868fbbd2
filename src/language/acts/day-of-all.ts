/** A day said once in a sentence that is of all its deeds: at its head ("Sunday: pinched these, watered those") or its end. */
import { isBoundary } from '../clauses/boundaries.js';
import { dayOfEvent, dayToldAt } from './day-told.js';
import { isOfOtherDeed } from './drafting/other-days.js';
import { wordAt } from '../grammar/rule.js';
import { isOnePlant } from '../sentences/joining/plant-of.js';
import { whole } from '../phrases.js';
import type { Piece, When } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';

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
export function dated(proposals: readonly Proposal[], row: readonly Piece[]): readonly Proposal[] {
  const opening = dayToldAt(row) ?? dayOfEvent(row) ?? pastHeading(row);
  const first = row[/^(?:on|so|and)$/.test(wordAt(row, opening)) ? opening + 1 : opening];
  if (first?.is !== 'when' || first.struck === true || first.when.past === undefined) return proposals;
  // "From the 5 March lot nine have rooted": which lot, and no day of the looking.
  if (proposals.some(({ draft }) => draft.which?.struckOn === first.when)) return proposals;
  // "Late entry for 3 June": when it was, not how long.
  const when = opening > 0 ? { ...first.when, words: first.when.words.replace(/^for /i, '') } : first.when;
  return proposals.map((proposal) =>
    isOpen(proposal) ? { ...proposal, draft: { ...proposal.draft, when } } : proposal,
  );
}

/** Where the telling begins behind a day gone by that opens the row; the start where none does. */
export function pastDay(row: readonly Piece[]): number {
  const at = wordAt(row, 0) === 'on' ? 1 : 0;
  const day = row[at];
  // "This time last year I had forty": told of another year.
  const isOver =
    day?.is === 'when' &&
    typeof day.when.past === 'string' &&
    day.when.past !== 'ask' &&
    isDay(day.when) &&
    !/\byear\b/i.test(day.when.words);
  return !isOver ? 0 : row[at + 1]?.is === 'break' ? at + 2 : at + 1;
}

/**
 * "Fed these, pinched those and lost one on Sunday": so does the day that rounds it off, even in the words of an excuse;
 * not where it tells which ("bar six which were sold Friday"), nor what the night did ("watered these, lost four to the frost last night").
 */
export function closed(proposals: readonly Proposal[], row: readonly Piece[]): readonly Proposal[] {
  const at = row.findLastIndex(({ is }) => is !== 'break');
  const last = row[at];
  if (
    last?.is !== 'when' ||
    last.struck === true ||
    !isDay(last.when) ||
    last.when.past === undefined ||
    last.when.past === 'ask'
  )
    return proposals;
  const { when } = last;
  const own = proposals.filter(({ draft }) => draft.when === when);
  if (own.length === 0 && (typeof when.past !== 'string' || isOfOtherDeed(row, at))) return proposals;
  if (proposals.some((each) => each.draft.which?.struckOn === when || !(isOpen(each) || own.includes(each))))
    return proposals;
  if (own.length > 0 && tellsWhich(row, at)) return proposals;
  const isDone = ({ kind, slots }: Proposal): boolean =>
    kind === 'loss' && /^(?:frost|pest)$/.test(String(slots['cause']));
  if (own.length > 0 && own.every(isDone) && !proposals.every(isDone)) return proposals;
  // "The hebes have all been moved, and the rest of the fuchsias were potted on yesterday".
  const hasBeen = row
    .slice(0, row.slice(0, at).findLastIndex(isBoundary))
    .some((_, n) => wordAt(row, n) === 'been');
  const isOfThem = ({ draft, carried }: Proposal): boolean => {
    const plant = draft.plant ?? carried;
    const those = own.map((each) => each.draft.plant ?? each.carried);
    return !plant || those.some((other) => !other || isOnePlant(plant, other));
  };
  return proposals.map((each) =>
    isOpen(each) && (own.length === 0 || !hasBeen || isOfThem(each))
      ? { ...each, draft: { ...each.draft, when } }
      : each,
  );
}

/** "… bar six which were sold Friday"; no "… the two that had snapped went in the bin on Friday", which tells a deed behind that. */
function tellsWhich(row: readonly Piece[], day: number): boolean {
  const last = row.slice(0, day).findLastIndex((piece) => isBoundary(piece));
  const which = row.findLastIndex(
    (_, at) => at > last && at < day && /^(?:which|that|who)$/.test(wordAt(row, at)),
  );
  const deeds = row
    .slice(which, day)
    .filter(
      (piece) =>
        piece.is === 'word' &&
        ((piece.verb?.form === 'past' && !/^(?:be|have)$/.test(piece.verb.lemma)) || /n't$/.test(piece.text)),
    );
  return which > 0 && deeds.length < 2;
}

/** Told of no day yet. */
const isOpen = ({ draft }: Proposal): boolean => !draft.when || !isDay(draft.when);

/** No bound ("by Sunday") nor part of a day alone ("first thing", "at four"). */
const isDay = ({ words, time }: When): boolean =>
  !/^(?:for|after|by)\b/i.test(words) &&
  !PART_OF_DAY.test(words.toLowerCase()) &&
  !(time !== undefined && /^(?:at|around|@) \S+$/i.test(words));
const PART_OF_DAY = whole`
  (at |around |by |in |on )?(the |early |late )?(1st thing|first thing|last thing|dawn|dusk|noon|midday|lunchtime|lunch|teatime|tea|breakfast|dinnertime|morning|afternoon|evening)
`;
