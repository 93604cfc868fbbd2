/** An act told in parts: one clause for each plant moved, each recipient, each place or day. */
import type { EntryKind } from '../../ledger/entry.js';
import type { Clause } from '../clauses/clauses.js';
import { isOfEach, LEADS_TO_PLACE } from './drafting/beside-counts.js';
import type { Hit } from '../grammar/hits.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';

export function partsOf(pieces: readonly Piece[], clause: Clause): readonly Clause[] {
  const kind = clause.hit?.rule.kind;
  if (kind === 'dispatch') {
    const sendings = eachSending(pieces, clause);
    return sendings.length > 1 ? sendings : eachShare(pieces, clause);
  }
  const moves = eachMove(pieces, clause);
  return moves.length > 1 ? moves : eachShare(pieces, clause);
}

const SHARED: ReadonlySet<EntryKind | 'aside'> = new Set([
  'strike',
  'loss',
  'potOn',
  'pinch',
  'move',
  'plantOut',
  'dispatch',
]);
const PLACED: ReadonlySet<EntryKind | 'aside'> = new Set(['move', 'plantOut']);

const JOINED = /^(?:a|an|and|another|further|then|the|other)$/;

/** "Struck ten yesterday and another six today", "six in the long border and three by the gate". */
function eachShare(pieces: readonly Piece[], clause: Clause): readonly Clause[] {
  const { hit } = clause;
  if (!hit || !SHARED.has(hit.rule.kind)) return [clause];
  for (let at = hit.to; at < clause.to; at++) {
    if (pieces[at]?.is !== 'break' && wordAt(pieces, at) !== 'and') continue;
    let count = at + 1;
    while (JOINED.test(wordAt(pieces, count))) count++;
    // "… and on Sunday 6 Ember Fox".
    const dayFirst = pieces[count]?.is === 'when' && pieces[count + 1]?.is === 'count';
    if (dayFirst) count++;
    const quantity = pieces[count];
    if (
      quantity?.is !== 'count' ||
      (quantity.quantity.value === undefined && quantity.quantity.whole !== 'rest')
    )
      continue;
    const before = pieces.slice(clause.subjectFirst ? clause.from : hit.to, at);
    let next = count + 1;
    while (/^(?:more|of|them)$/.test(wordAt(pieces, next))) next++;
    const after = pieces[next];
    const counted = before.some(({ is }) => is === 'count');
    // "Two of the 5 March Salt Harrier and one of the 16 March ones": which lots.
    const isLot = after?.is === 'when' && (after.struck ?? /^(?:from|of)\b/i.test(after.when.words));
    const sameDay = !isLot && after?.is === 'when' && before.some(({ is }) => is === 'when');
    const elsewhere =
      PLACED.has(hit.rule.kind) &&
      LEADS_TO_PLACE.test(wordAt(pieces, next)) &&
      // "Two in each hole".
      !isOfEach(pieces, count) &&
      !/^(?:each|every)$/.test(wordAt(pieces, next + 1)) &&
      before.some((piece) => piece.is === 'word' && LEADS_TO_PLACE.test(piece.text));
    // "2 dead on Wednesday, 1 more this morning"; "two, five dead" is one number put for another.
    const again = !clause.subjectFirst || quantity.quantity.more === true;
    if (!counted || !((sameDay && again) || dayFirst || elsewhere)) continue;
    return [{ ...clause, to: at }, ...eachShare(pieces, behind(clause, hit, at))];
  }
  return [clause];
}

/** What is told of the same act behind `at`. */
function behind(clause: Clause, hit: Hit, at: number): Clause {
  return { ...clause, from: at + 1, hit: { ...hit, from: at + 1, to: at + 1, own: [] }, subjectFirst: false };
}

/** The receiver and a number stand right behind the act, in this order. */
function isNamedFirst(pieces: readonly Piece[], to: number): boolean {
  let at = to;
  while (pieces[at]?.is === 'word' && at < to + 3) at++;
  return at > to && pieces[at]?.is === 'count';
}

/** "Shifted these from here to there and those from there to here": one clause a move. */
function eachMove(pieces: readonly Piece[], clause: Clause): readonly Clause[] {
  const { hit } = clause;
  if (hit?.rule.kind !== 'move' || clause.subjectFirst) return [clause];
  const reaches = (from: number, to: number): boolean =>
    pieces
      .slice(from, to)
      .some((piece) => piece.is === 'place' && /^(?:to|into|onto)$/.test(piece.prep ?? ''));
  for (let at = hit.to; at < clause.to; at++) {
    if (wordAt(pieces, at) !== 'and') continue;
    let plant = at + 1;
    while (/^(?:the|my|those)$/.test(wordAt(pieces, plant)) || pieces[plant]?.is === 'count') plant++;
    if (pieces[plant]?.is !== 'plant' || !reaches(hit.to, at) || !reaches(plant, clause.to)) continue;
    return [{ ...clause, to: at }, ...eachMove(pieces, behind(clause, hit, at))];
  }
  return [clause];
}

/** Between a number and whom it went to: "2 of the younger ones to Peg". */
const OF_WHICH = /^(?:of|the|my|those|older|younger|newer|old|new|first|second|last|ones?|lot|batch)$/;

/** "96 sold to Pargeter's, a further 40 to Stanbury": one clause a recipient. */
function eachSending(pieces: readonly Piece[], clause: Clause): readonly Clause[] {
  const { hit } = clause;
  if (hit?.rule.kind !== 'dispatch') return [clause];
  for (let at = hit.to; at < clause.to; at++) {
    if (pieces[at]?.is !== 'break' && wordAt(pieces, at) !== 'and') continue;
    let count = at + 1;
    while (/^(?:a|an|and|another|further|more)$/.test(wordAt(pieces, count))) count++;
    // "Gave Jean four and Bob two".
    const whom = pieces[count];
    // No "and got two back".
    const named =
      whom?.is === 'word' &&
      whom.verb?.form !== 'past' &&
      pieces[count + 1]?.is === 'count' &&
      isNamedFirst(pieces, hit.to);
    if (named) return [{ ...clause, to: at }, ...eachSending(pieces, behind(clause, hit, at))];
    if (pieces[count]?.is !== 'count') continue;
    let to = count + 1;
    while (/^(?:plant|when)$/.test(pieces[to]?.is ?? '') || OF_WHICH.test(wordAt(pieces, to))) to++;
    const reached = pieces.slice(hit.from, at).some((_, n) => wordAt(pieces, hit.from + n) === 'to');
    if (wordAt(pieces, to) !== 'to' || !reached) continue;
    return [{ ...clause, to: at }, ...eachSending(pieces, behind(clause, hit, at))];
  }
  return [clause];
}
