/** "Eight in one pot and four in the other": what two containers hold, told one after the other. */
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';
import { CONTAINERS } from '../../pieces/sizes.js';
import { counted, endsThere, pastJoint, valueAt } from './words.js';

/** The row with the number that both hold before them; where it was told already, only with the two containers. */
export function countApart(row: readonly Piece[]): readonly Piece[] {
  for (let at = 2; at < row.length; at++) {
    const pots = row[at];
    const into = wordAt(row, at - 1) === 'the' ? at - 2 : at - 1;
    if (pots?.is !== 'pots' || pots.pots !== 1 || wordAt(row, into) !== 'in') continue;
    const first = heldBefore(row, into);
    const next = pastJoint(row, at + 1);
    if (first === undefined || next === at + 1) continue;
    const end = pastOther(row, next);
    const [one, other] = [valueAt(row, first), valueAt(row, next)];
    if (end === undefined || one === undefined || other === undefined) continue;
    const both = one + other;
    const told = row.slice(0, first).some((piece) => piece.is === 'count' && piece.quantity.value === both);
    const piece = row[first];
    return [
      ...row.slice(0, first),
      ...(told || !piece ? [] : [counted(both, piece)]),
      ...row.slice(first + 1, at),
      { ...pots, pots: 2 },
      ...row.slice(end),
    ];
  }
  return row;
}

/** The number that stands before "in one pot", its plant or "cuttings" between them. */
function heldBefore(row: readonly Piece[], at: number): number | undefined {
  for (let before = at - 1; before >= 0 && before >= at - 4; before--) {
    const piece = row[before];
    if (piece?.is === 'count') return before;
    const isOf = piece?.is === 'plant' || piece?.is === 'cutting';
    // A name that nobody knows yet is made of words.
    const isWord = piece?.is === 'word' && (piece.verb === undefined || /^(?:went|rooted)$/.test(piece.text));
    if (!isOf && !isWord) return undefined;
  }
  return undefined;
}

/** Past "four in the other one"; undefined where that does not stand there, or something became of them. */
function pastOther(row: readonly Piece[], at: number): number | undefined {
  let next = at + 1;
  while (/^(?:cuttings?|went|are)$/.test(wordAt(row, next)) && next < at + 3) next++;
  if (wordAt(row, next) !== 'in') return undefined;
  next++;
  if (/^(?:the|a)$/.test(wordAt(row, next)) && /^(?:other|second)$/.test(wordAt(row, next + 1))) next += 2;
  else if (wordAt(row, next) === 'another') next++;
  else return undefined;
  const noun = row[next];
  if (CONTAINERS.has(wordAt(row, next)) || (noun?.is === 'count' && noun.quantity.weak === true)) next++;
  return endsThere(row, next) ? next : undefined;
}
