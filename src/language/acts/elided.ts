/** What is told without its verb behind one that has it: "seven rooted, Boxcar Ruby about four", "Tallow Bell all of them". */
import type { Draft } from './drafting/draft.js';
import type { Piece } from '../pieces/pieces.js';

/** Words that may stand around the plant and its number and change nothing. */
const AROUND =
  /^(?:the|my|our|and|but|are|is|have|has|had|got|at|on|like|still|only|just|now|so|far|of|about|idk|away|yet|as|same|likewise|ditto|for|with|them|em|those|these)$/;

const NOTHING = /^(?:nothing|nowt|nada|zilch|nil|nope|zip)$/;

/**
 * One draft for each part between the marks and conjunctions of [from, to) that is a plant with its number and nothing
 * else. Empty where a part says anything more: then it tells of something of its own.
 */
export function plantsWithNumber(pieces: readonly Piece[], from: number, to: number): readonly Draft[] {
  const parts: Piece[][] = [[]];
  for (const piece of pieces.slice(from, to)) {
    const part = parts.at(-1) ?? [];
    // "Tallow Bell: all of them".
    const isHeading = part.length === 1 && part[0]?.is === 'plant';
    if (piece.is === 'break') {
      if (!isHeading || !/^[:–-]/.test(piece.mark)) parts.push([]);
    } else if (!(piece.is === 'word' && AROUND.test(piece.text))) part.push(piece);
  }
  const looks: Draft[] = [];
  for (const part of parts.filter(({ length }) => length > 0)) {
    const [plant] = part.filter((piece) => piece.is === 'plant');
    // "Tallow Bell nothing".
    const none = part.filter((piece) => piece.is === 'word' && NOTHING.test(piece.text));
    if (plant && none.length === 1 && part.length === 2) {
      looks.push({ plant: plant.plant, known: plant.known, quantity: { value: 0 } });
      continue;
    }
    const counts = part.filter((piece) => piece.is === 'count');
    // "About half, like seven": the number that was counted.
    const count = counts.findLast(({ quantity }) => quantity.value !== undefined) ?? counts[0];
    if (!plant || !count || count.quantity.vague || part.length !== 1 + counts.length || counts.length > 2)
      return [];
    looks.push({ plant: plant.plant, known: plant.known, quantity: count.quantity });
  }
  return looks;
}
