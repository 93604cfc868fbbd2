/** A row in which a telegram is joined to another deed ("Salt Harrier watered and Tallow Bell to the greenhouse"), cut between the two. */
import { isBoundary } from '../clauses/boundaries.js';
import { clausesOf } from '../clauses/clauses.js';
import { deedsApart } from './deeds-apart.js';
import { findHits, type Hit } from '../grammar/hits.js';
import { wordAt } from '../grammar/rule.js';
import { rules } from '../grammar/rules.js';
import { moodsMeant } from '../mood/moods-meant.js';
import type { Piece } from '../pieces/pieces.js';

/** So many pieces may stand between the joint and the plant ("all of the remaining …"). */
const LONGEST_LEAD = 4;

/**
 * The row in parts; whole where both tell of one deed. What is told in short counts only where no other words tell, so
 * that beside them its plant would be read by those.
 */
export function telegramsApart(row: readonly Piece[]): readonly (readonly Piece[])[] {
  for (let joint = 1; joint < row.length; joint++) {
    if (!isBoundary(row[joint]) || isBoundary(row[joint - 1])) continue;
    const from = pastJoint(row, joint);
    if (isSaidInShort(row, joint, from)) return [row.slice(0, joint), row.slice(from)];
    const plant = plantLedTo(row, from);
    if (plant < 0) continue;
    const before = row.slice(0, joint);
    const behind = row.slice(from);
    if (!before.some(({ is }) => is === 'plant')) continue;
    const next = tellingOf(partOf(behind, plant - from), plant - from);
    if (!next) continue;
    const deed = onlyDeed(before);
    if (!deed || !areTwo(before, deed, next) || !isClosed(before, deed, next) || !isDone(before)) continue;
    return [before, ...deedsApart(behind).flatMap(telegramsApart)];
  }
  return [row];
}

/**
 * "Five Salt Harrier into the long border and the other two I gave to Peg", "… and gave two to Peg": so many of a plant put
 * out or moved in short, and others of it that something else was done to.
 */
function isSaidInShort(row: readonly Piece[], joint: number, from: number): boolean {
  const before = row.slice(0, joint);
  const counted = before.findIndex(({ is }) => is === 'count');
  if (counted > 0 || !before.some(({ is }) => is === 'plant') || !before.some(({ is }) => is === 'place'))
    return false;
  const behind = row.slice(from);
  if (behind.some(({ is }) => is === 'plant') || !behind.some(({ is }) => is === 'count')) return false;
  const deed = onlyDeed(before);
  const next = onlyDeed(behind);
  if (deed?.rule.faint !== true || !/^(?:plantOut|move)$/.test(deed.rule.kind)) return false;
  return (
    next !== undefined &&
    next.rule.faint !== true &&
    /^(?:dispatch|loss|potOn)$/.test(next.rule.kind) &&
    isDone(before)
  );
}

function pastJoint(row: readonly Piece[], joint: number): number {
  let from = joint;
  while (isBoundary(row[from])) from++;
  return from;
}

/** Where the plant that the part opens with stands; -1 where it opens with something else. */
function plantLedTo(row: readonly Piece[], from: number): number {
  for (let at = from; at <= from + LONGEST_LEAD; at++) {
    const piece = row[at];
    if (piece?.is === 'plant') return at;
    if (piece?.is !== 'count' && !/^(?:the|my|our|of|all|them|those)$/.test(wordAt(row, at))) return -1;
  }
  return -1;
}

/** The part up to the mark that ends it, one straight behind its plant apart ("Salt Harrier, three gone"). */
function partOf(behind: readonly Piece[], plant: number): readonly Piece[] {
  const end = behind.findIndex(({ is }, at) => is === 'break' && at !== plant + 1);
  return end < 0 ? behind : behind.slice(0, end);
}

/** What is told of the plant behind it, and of no other. */
function tellingOf(part: readonly Piece[], plant: number): Hit | undefined {
  const hits = findHits(rules, part);
  const [next] = hits;
  if (!next || hits.some(({ rule }) => rule.kind !== next.rule.kind) || next.from <= plant) return undefined;
  if (!/^(?:move|dispatch|potOn|loss|pinch|hardenOff|tend|receive|stock)$/.test(next.rule.kind))
    return undefined;
  const isOfAnother = part.some(
    (piece, at) =>
      at > plant &&
      (piece.is === 'plant' ||
        isBothOf(piece) ||
        (at < next.from && /^(?:i|we|that|which|who|and|or)$/.test(wordAt(part, at)))),
  );
  return isOfAnother ? undefined : next;
}

/** "Tips off both", "two of each". */
const isBothOf = (piece: Piece): boolean =>
  piece.is === 'count'
    ? piece.quantity.both === true
    : piece.is === 'word' && /^(?:both|each)$/.test(piece.text);

/** The one deed that a part tells of. */
function onlyDeed(part: readonly Piece[]): Hit | undefined {
  const hits = findHits(rules, part);
  const [deed] = hits;
  return hits.every(({ rule }) => rule.kind === deed?.rule.kind) ? deed : undefined;
}

/** The one does not say what is told of both. */
function areTwo(before: readonly Piece[], { rule, from }: Hit, { rule: next }: Hit): boolean {
  // "6 Salt Harrier in the shed and 4 Tallow Bell sold": where they stand.
  if (rule.faint === true && !/^(?:move|dispatch|potOn|loss)$/.test(rule.kind)) return false;
  // "Pulled 3 Salt Harrier and 2 Tallow Bell, damped off": what was pulled is told behind both.
  if (rule.kind === 'aside' && next.kind === 'loss') return false;
  switch (rule.kind) {
    // "2 Salt Harrier to Len and Tallow Bell x 4 sold".
    case next.kind:
      return rule.kind === 'dispatch' && next.faint !== true;
    // "Four Salt Harrier off the bench and three Tallow Bell sold"; "… and Tallow Bell to the yard to harden off".
    case 'move':
      return next.kind !== 'hardenOff' && wordAt(before, from) !== 'off';
    // "Lost three Salt Harrier to slugs and two Tallow Bell to mould".
    case 'loss':
      return next.kind !== 'dispatch' || !before.some((_, at) => at > from && wordAt(before, at) === 'to');
    // "Nipped Salt Harrier back to 10cm and Tallow Bell to 15cm".
    case 'pinch':
      return next.kind !== 'potOn';
    // "Hardening off the Salt Harrier in the frame and the Tallow Bell on to the bench".
    case 'hardenOff':
      return next.kind !== 'move';
    default:
      return true;
  }
}

/**
 * Nothing more can be of it: its plant stands before its words, or something stands behind its plant; or the next says
 * in full what was done to its own.
 */
function isClosed(before: readonly Piece[], { from, rule }: Hit, { rule: next }: Hit): boolean {
  if (next.shape === 'subject' && next.faint !== true && rule.faint !== true) return true;
  if (before.slice(0, from).some(({ is }) => is === 'plant')) return true;
  const last = before.at(-1);
  if (last?.is === 'word') return !/^(?:cuttings?|plants?|plugs?|tubers?|ones)$/.test(last.text);
  return last !== undefined && !/^(?:plant|count|cutting|when)$/.test(last.is);
}

/** "Must get the Salt Harrier to the shed and …": what is meant of the one is meant of the other. */
const isDone = (before: readonly Piece[]): boolean =>
  moodsMeant(before, clausesOf(before, rules)).every((mood) => mood === 'done') &&
  !before.some((piece) => piece.is === 'when' && piece.when.past === undefined);
