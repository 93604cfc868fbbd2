/** A row in which two different deeds are told of a plant each, cut between them, so that neither is read by the other's words. */
import { findHits } from '../grammar/hits.js';
import { wordAt } from '../grammar/rule.js';
import { rules } from '../grammar/rules.js';
import type { Piece } from '../pieces/pieces.js';

/** So many words may tell who did it, between the joint and the verb ("and my sister gave me …"). */
const LONGEST_SUBJECT = 3;

/** The row in parts; whole where it tells of one deed, or the second leans on the first. */
export function deedsApart(row: readonly Piece[]): readonly (readonly Piece[])[] {
  for (let at = 1; at < row.length; at++) {
    const joint = isJoint(row[at]);
    const from = joint ? at + 1 : at;
    const verb = joint ? (isJoint(row[at - 1]) ? -1 : verbBehind(row, at)) : straightBehind(row, at);
    if (verb < 0) continue;
    const [before, behind] = [row.slice(0, at), row.slice(from)];
    const kind = deedOf(before);
    const next = kind === undefined ? undefined : findHits(rules, behind)[0];
    if (next?.from !== verb - from || next.rule.shape !== 'object' || next.rule.kind === kind) continue;
    // "Moved two to the far bench, swapped with the Tallow Bell": how they were moved.
    if (next.rule.how === 'swapped') continue;
    return [before, ...deedsApart(behind)];
  }
  return [row];
}

const isJoint = (piece: Piece | undefined): boolean =>
  piece?.is === 'break' || (piece?.is === 'word' && /^(?:and|then|but|plus)$/.test(piece.text));

const tellsDeed = (piece: Piece | undefined): boolean =>
  piece?.is === 'word' && piece.verb?.form === 'past' && !/^(?:be|have|do|go|come)$/.test(piece.verb.lemma);

/** Where the verb of what was done next to a plant stands behind a joint; -1 where none does. */
function verbBehind(row: readonly Piece[], joint: number): number {
  let from = joint;
  while (isJoint(row[from])) from++;
  for (let at = from; at <= from + LONGEST_SUBJECT && row[at]?.is === 'word' && !isJoint(row[at]); at++)
    if (tellsDeed(row[at])) {
      const end = row.findIndex((piece, n) => n > at && isJoint(piece));
      return row.slice(at, end < 0 ? row.length : end).some(({ is }) => is === 'plant') ? at : -1;
    }
  return -1;
}

/** "Chucked out four Salt Harrier potted up the Tallow Bell": a verb and its plant straight behind another's, as one speaks. */
function straightBehind(row: readonly Piece[], at: number): number {
  if (row[at - 1]?.is !== 'plant' || !tellsDeed(row[at])) return -1;
  let next = at + 1;
  while (row[next]?.is === 'count' || /^(?:on|up|out|the|my|of|all)$/.test(wordAt(row, next))) next++;
  return row[next]?.is === 'plant' ? at : -1;
}

/** The one deed that a part tells of, with its plant. */
function deedOf(part: readonly Piece[]): string | undefined {
  if (!part.some(({ is }) => is === 'plant')) return undefined;
  const kinds = new Set(findHits(rules, part).map(({ rule }) => rule.kind));
  const [only, another] = kinds;
  return another === undefined ? only : undefined;
}
