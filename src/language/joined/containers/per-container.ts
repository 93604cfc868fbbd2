/** What each of several containers holds: "two per pot", "5 to a tray", "six of these per 9cm pot". */
import { wordAt } from '../../grammar/rule.js';
import type { Piece, PieceOf } from '../../pieces/pieces.js';
import { CONTAINERS } from '../../pieces/sizes.js';

export interface Joined {
  readonly pieces: readonly Piece[];
  readonly to: number;
}

export const isContainer = (pieces: readonly Piece[], at: number): boolean =>
  CONTAINERS.has(wordAt(pieces, at));

export const countAt = (pieces: readonly Piece[], at: number): PieceOf<'count'> | undefined => {
  const piece = pieces[at];
  return piece?.is === 'count' ? piece : undefined;
};

/** Index past "per pot", "in each", "to a pot", "each", "apiece". */
export function perContainer(pieces: readonly Piece[], at: number): number | undefined {
  let next = at;
  if (/^(?:cuttings|cutting)$/.test(wordAt(pieces, next))) next++;
  const word = wordAt(pieces, next);
  const noun = (from: number): number => (isContainer(pieces, from) ? from + 1 : from);
  if (word === 'per')
    return /^(?:cell|plug|module|pot|hole)$/.test(wordAt(pieces, next + 1)) ? next + 2 : noun(next + 1);
  if (/^(?:to|in|a)$/.test(word) && /^(?:a|each|every|the)$/.test(wordAt(pieces, next + 1))) {
    const each = wordAt(pieces, next + 1) !== 'the';
    if (each && (isContainer(pieces, next + 2) || wordAt(pieces, next + 1) === 'each')) return noun(next + 2);
    return undefined;
  }
  if (word === 'a' && isContainer(pieces, next + 1)) return next + 2;
  if (/^(?:each|apiece)$/.test(word)) return next + 1;
  return undefined;
}

/** Past ", 50 to the flat", told by itself; no "moved 50 to the flat". */
const ofEvery = (pieces: readonly Piece[], at: number): number | undefined =>
  pieces[at - 1]?.is === 'break' &&
  wordAt(pieces, at + 1) === 'to' &&
  wordAt(pieces, at + 2) === 'the' &&
  isContainer(pieces, at + 3) &&
  (pieces[at + 4] === undefined || pieces[at + 4]?.is === 'break')
    ? at + 4
    : undefined;

const CUTTINGS = /^(?:cuttings?|pieces?|bits|slips?|tips?|shoots?|stems?|sticks?)$/;
/** What ends the telling of how many: no "two have rooted", no "four pieces of crock". */
const GOES_ON = /^(?:and|but|in|on|under|at|all|now|then|today)$/;

/** "In every pot four pieces", "each pot has four cuttings in it": how many each holds, told behind its word. */
function eachBehind(pieces: readonly Piece[], from: number): Joined | undefined {
  const isIn = /^(?:in|into|per)$/.test(wordAt(pieces, from));
  let at = isIn ? from + 1 : from;
  if (/^(?:each|every)$/.test(wordAt(pieces, at))) at++;
  else if (wordAt(pieces, from) !== 'per') return undefined;
  if (!isContainer(pieces, at) && !(wordAt(pieces, at) === 'one' && isIn)) return undefined;
  at++;
  const link = wordAt(pieces, at);
  if (isIn) {
    if (/^(?:are|is|go|goes|went)$/.test(link)) at++;
    else if (/^(?:there|i|we)$/.test(link) && /^(?:are|is|put|stuck|have|got)$/.test(wordAt(pieces, at + 1)))
      at += 2;
  } else if (/^(?:has|have|had|holds|holding|got|gets|with|contains)$/.test(link)) at++;
  else return undefined;
  const count = countAt(pieces, at);
  if (count?.quantity.value === undefined || count.quantity.outOf !== undefined) return undefined;
  at++;
  if (CUTTINGS.test(wordAt(pieces, at))) at++;
  if (wordAt(pieces, at) === 'in' && /^(?:it|them)$/.test(wordAt(pieces, at + 1))) at += 2;
  const behind = pieces[at];
  if (behind && behind.is !== 'break' && behind.is !== 'when' && !GOES_ON.test(wordAt(pieces, at)))
    return undefined;
  return {
    pieces: [
      { is: 'pots', each: count.quantity.value, from: count.from, to: pieces[at - 1]?.to ?? count.to },
    ],
    to: at,
  };
}

/** "Ten in each of 2 trays": how many each of so many holds. */
function eachOfSeveral(pieces: readonly Piece[], at: number, count: PieceOf<'count'>): Joined | undefined {
  const lead = [1, 2, 3].map((n) => wordAt(pieces, at + n)).join(' ');
  if (!/^(?:in|to|into) each of$/.test(lead)) return undefined;
  const many = /^(?:the|my|those)$/.test(wordAt(pieces, at + 4)) ? at + 5 : at + 4;
  const pots = countAt(pieces, many)?.quantity.value;
  if (pots === undefined || !isContainer(pieces, many + 1)) return undefined;
  const to = pieces[many + 1]?.to ?? count.to;
  return {
    pieces: [{ is: 'pots', pots, each: count.quantity.value ?? 0, from: count.from, to }],
    to: many + 2,
  };
}

/** "Always two pieces in one pot", "each time three in a pot": so many in each of them. */
function alwaysInOne(pieces: readonly Piece[], at: number, count: PieceOf<'count'>): Joined | undefined {
  const lead = `${wordAt(pieces, at - 2)} ${wordAt(pieces, at - 1)}`;
  if (!/(?:^| )always$|^(?:each|every) time$/.test(lead)) return undefined;
  let next = at + 1;
  if (CUTTINGS.test(wordAt(pieces, next))) next++;
  if (wordAt(pieces, next) === 'together') next++;
  if (!/^(?:in|into|to)$/.test(wordAt(pieces, next))) return undefined;
  if (wordAt(pieces, next + 1) === 'the') next++;
  const one = countAt(pieces, next + 1)?.quantity.value === 1 || /^(?:a|the)$/.test(wordAt(pieces, next + 1));
  const size = pieces[next + 2];
  const isSized = size?.is === 'size' && size.container;
  if (!one || !(isSized || isContainer(pieces, next + 2))) return undefined;
  const to = isSized ? next + 2 : next + 3;
  return {
    pieces: [
      { is: 'pots', each: count.quantity.value ?? 0, from: count.from, to: pieces[to - 1]?.to ?? count.to },
    ],
    to,
  };
}

/** "Two per pot", "5 to a tray" on its own: how many each holds. */
export function eachAt(pieces: readonly Piece[], at: number): Joined | undefined {
  const count = countAt(pieces, at);
  if (!count) return eachBehind(pieces, at);
  if (count.quantity.value === undefined) return undefined;
  // "Six Salt Harrier per 9cm pot".
  const plant = pieces[at + 1];
  const size = pieces[at + 3];
  if (plant?.is === 'plant' && wordAt(pieces, at + 2) === 'per' && size?.is === 'size' && size.container)
    return {
      pieces: [plant, { is: 'pots', each: count.quantity.value, from: count.from, to: count.to }, size],
      to: at + 4,
    };
  const word = wordAt(pieces, at + 1);
  const ofSeveral = eachOfSeveral(pieces, at, count);
  if (ofSeveral) return ofSeveral;
  const always = alwaysInOne(pieces, at, count);
  if (always) return always;
  if (!/^(?:per|to|in|a)$/.test(word)) return undefined;
  const to = perContainer(pieces, at + 1) ?? ofEvery(pieces, at);
  if (
    to === undefined ||
    !(isContainer(pieces, to - 1) || /^(?:cell|hole|plug)$/.test(wordAt(pieces, to - 1)))
  )
    return undefined;
  return {
    pieces: [
      { is: 'pots', each: count.quantity.value, from: count.from, to: pieces[to - 1]?.to ?? count.to },
    ],
    to,
  };
}
