/** Numbers told by the one before them: "took 5 Salt Harrier, same again of Tallow Bell, and double that of Cinder Mabel". */
import { wordAt } from '../grammar/rule.js';
import type { Piece, PieceOf } from '../pieces/pieces.js';

/** How often the number told before, behind words of so many pieces. */
interface Times {
  readonly times: number;
  readonly to: number;
}

const PHRASES: readonly (readonly [RegExp, number])[] = [
  [/^(?:the )?same (?:again|number|amount|quantity)\b/, 1],
  [/^(?:the )?same (?=of )/, 1],
  [/^as many\b/, 1],
  [/^(?:double|twice) (?:that number|that many|that|as many|the number|the amount)\b/, 2],
  [/^half (?:that number|that many|that|as many|the number)\b/, 0.5],
  [/^(?:three times|treble|triple) (?:that|as many|the number)\b/, 3],
];
/** The longest of them, in words. */
const LONGEST = 5;

/** The row with such words as the numbers that they stand for; where none was told before, as it stands. */
export function settleSameAgain(row: readonly Piece[]): readonly Piece[] {
  const pieces: Piece[] = [];
  let last: PieceOf<'count'> | undefined;
  for (let at = 0; at < row.length;) {
    const piece = row[at];
    if (!piece) break;
    const found = last?.quantity.value === undefined ? undefined : timesAt(row, at);
    const value = (last?.quantity.value ?? 0) * (found?.times ?? 0);
    if (found && Number.isInteger(value) && ofPlant(row, found.to)) {
      const more = row[found.to]?.is === 'when' ? { more: true as const } : {};
      const end = row[found.to - 1]?.to ?? piece.to;
      pieces.push({ is: 'count', quantity: { value, ...more }, from: piece.from, to: end });
      at = found.to;
      continue;
    }
    if (piece.is === 'count') last = piece.quantity.outOf === undefined ? piece : undefined;
    if (piece.is === 'pots') last = undefined;
    pieces.push(piece);
    at++;
  }
  return pieces;
}

function timesAt(row: readonly Piece[], at: number): Times | undefined {
  const words: string[] = [];
  for (let next = at; next < at + LONGEST; next++) {
    const piece = row[next];
    // "Half" is read as a share, with the "of" behind it.
    if (piece?.is === 'count' && piece.quantity.share?.[1] === 2) words.push('half');
    else if (piece?.is === 'count' && piece.quantity.vague) words.push('many');
    else if (piece?.is === 'word') words.push(piece.text);
    else break;
  }
  const line = `${words.join(' ')} `;
  for (const [pattern, times] of PHRASES) {
    const [said] = pattern.exec(line) ?? [];
    if (said !== undefined) return { times, to: at + said.trim().split(' ').length };
  }
  return undefined;
}

/** A plant is what they are of, or a day on which it was done again. */
function ofPlant(row: readonly Piece[], at: number): boolean {
  let next = at;
  while (/^(?:of|the|my|from|off|for|again)$/.test(wordAt(row, next))) next++;
  return row[next]?.is === 'plant' || (next === at && row[next]?.is === 'when');
}
