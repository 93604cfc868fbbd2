/** A row in which two different deeds are told of a plant each, cut between them, so that neither is read by the other's words. */
import { isBoundary } from './boundaries.js';
import { findHits } from './grammar/hits.js';
import { rules } from './grammar/rules.js';
import type { Piece } from './pieces.js';

/** So many words may tell who did it, between the joint and the verb ("and my sister gave me …"). */
const LONGEST_SUBJECT = 3;

/** The row in parts; whole where it tells of one deed, or the second leans on the first. */
export function deedsApart(row: readonly Piece[]): readonly (readonly Piece[])[] {
  for (let at = 1; at < row.length; at++) {
    const verb = isBoundary(row[at]) && !isBoundary(row[at - 1]) ? verbBehind(row, at) : -1;
    if (verb < 0 || !isOwnDeed(row, verb)) continue;
    const [before, behind] = [row.slice(0, at), row.slice(at + 1)];
    const kind = deedOf(before);
    const next = findHits(rules, behind)[0];
    if (
      kind === undefined ||
      next?.from !== verb - at - 1 ||
      next.rule.shape !== 'object' ||
      next.rule.kind === kind
    )
      continue;
    return [before, ...deedsApart(behind)];
  }
  return [row];
}

/** Where the verb of what was done next stands behind a joint; -1 where none does. */
function verbBehind(row: readonly Piece[], joint: number): number {
  let from = joint;
  while (isBoundary(row[from])) from++;
  for (let at = from; at <= from + LONGEST_SUBJECT; at++) {
    const piece = row[at];
    if (piece?.is !== 'word' || isBoundary(piece)) return -1;
    if (piece.verb?.form === 'past' && !/^(?:be|have|do|go|come)$/.test(piece.verb.lemma)) return at;
  }
  return -1;
}

/** A plant stands behind the verb before the next joint. */
function isOwnDeed(row: readonly Piece[], verb: number): boolean {
  for (let at = verb + 1; at < row.length && !isBoundary(row[at]); at++)
    if (row[at]?.is === 'plant') return true;
  return false;
}

/** The one deed that a part tells of, with its plant. */
function deedOf(part: readonly Piece[]): string | undefined {
  if (!part.some(({ is }) => is === 'plant')) return undefined;
  const kinds = new Set(findHits(rules, part).map(({ rule }) => rule.kind));
  const [only, another] = kinds;
  return another === undefined ? only : undefined;
}
