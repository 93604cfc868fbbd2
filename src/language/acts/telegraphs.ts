/** A row of telegrams: parts between commas that each stand for themselves, verb or none. */
import { findHits, type Hit } from '../grammar/hits.js';
import { wordAt } from '../grammar/rule.js';
import { rules } from '../grammar/rules.js';
import type { Piece } from '../pieces/pieces.js';

/**
 * A row cut at its commas where a part stands for itself without a verb ("bitter tom to c/frame"); all other parts stay
 * together.
 */
export function telegraphs(row: readonly Piece[]): readonly (readonly Piece[])[] {
  const parts: Piece[][] = [[]];
  for (const piece of row) {
    if (piece.is === 'break' && piece.mark === ',') parts.push([]);
    parts.at(-1)?.push(piece);
  }
  if (parts.length < 2) return [row];
  const rows: Piece[][] = [];
  let alone = false;
  for (const [n, part] of parts.entries()) {
    const hits = findHits(rules, part);
    const [only] = hits;
    const stands =
      (hits.length === 1 &&
        only?.rule.faint === true &&
        /^(?:move|dispatch|potOn)$/.test(only.rule.kind) &&
        !isSoldFrom(rows, part, only) &&
        part.some(
          (piece) => piece.is === 'plant' || (piece.is === 'count' && piece.quantity.whole === 'rest'),
        )) ||
      (hits.length === 1 &&
        only?.rule.faint === true &&
        only.rule.kind === 'strike' &&
        nextIsAnother(parts, n)) ||
      isTemperature(part);
    const last = rows.at(-1);
    if (!last || stands || (alone && hits.length > 0)) rows.push([...part]);
    else last.push(...part);
    alone = stands;
  }
  return rows;
}

/** "Sold 12 Salt Harrier, 4 Tallow Bell off the bench": whence they were sold, not moved. */
const isSoldFrom = (
  rows: readonly (readonly Piece[])[],
  part: readonly Piece[],
  { rule, from }: Hit,
): boolean =>
  rule.kind === 'move' &&
  wordAt(part, from) === 'off' &&
  rows.some((row) => findHits(rules, row).some((hit) => hit.rule.kind === 'dispatch'));

/** "20 Salt Harrier cuttings in, binned two Tallow Bell": the next part is an act on a plant of its own. */
function nextIsAnother(parts: readonly (readonly Piece[])[], n: number): boolean {
  const part = parts[n] ?? [];
  const next = parts[n + 1] ?? [];
  return (
    part.some(({ is }) => is === 'plant') &&
    part.some(({ is }) => is === 'count' || is === 'pots') &&
    next.some(({ is }) => is === 'plant') &&
    findHits(rules, next).some(({ rule }) => rule.faint !== true)
  );
}

/** "Glasshouse 4 at 26" between acts. */
export function isTemperature(pieces: readonly Piece[]): boolean {
  if (!pieces.some(({ is }) => is === 'place') || pieces.some(({ is }) => is === 'plant')) return false;
  const told = pieces.some(
    (piece, at) =>
      piece.is === 'celsius' ||
      (piece.is === 'count' && /^(?:at|to|hit|reading)$/.test(wordAt(pieces, at - 1))),
  );
  return told && findHits(rules, pieces).length === 0;
}
