/** Containers of which one holds less than the others. */
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';
import {
  breakBehind,
  counted,
  endsThere,
  HOLDS,
  MORE,
  pastBehind,
  pastFull,
  pastJoint,
  valueAt,
} from './words.js';

/** "Six trays at 40 a tray, bar the last which is 5 short", "… but the last only has 35". */
export function fallenShort(pieces: readonly Piece[], at: number): readonly Piece[] | undefined {
  const [held, pots] = [pieces[at - 1], pieces[at]];
  if (held?.is !== 'count' || pots?.is !== 'pots') return undefined;
  const [all, containers] = [held.quantity.value ?? 0, pots.pots ?? 0];
  const from = breakBehind(pieces, at + 1);
  if (from === undefined || containers < 2) return undefined;
  let next = pastJoint(pieces, from);
  while (/^(?:bar|except|save|apart|from|for|less|though)$/.test(wordAt(pieces, next))) next++;
  const one = lastOne(pieces, next);
  if (one === undefined) return undefined;
  next = one;
  while (MORE.test(wordAt(pieces, next)) || HOLDS.test(wordAt(pieces, next))) next++;
  const number = valueAt(pieces, next);
  const each = all / containers;
  const end = /^(?:short|shy|missing|fewer|in|left)$/.test(wordAt(pieces, next + 1)) ? next + 2 : next + 1;
  const rest = pastBehind(pieces, end);
  let value: number | undefined;
  if (number === undefined) {
    if (pastFull(pieces, next) === next) return undefined;
  } else if (/^(?:short|shy|missing|fewer)$/.test(wordAt(pieces, next + 1))) value = all - number;
  else if (number < each && endsThere(pieces, rest)) value = all - each + number;
  else return undefined;
  return [
    ...pieces.slice(0, at - 1),
    counted(value, held),
    ...pieces.slice(at, from),
    ...pieces.slice(number === undefined ? pastFull(pieces, next) : rest),
  ];
}

/** "The last", "the last one", "one of them". */
function lastOne(pieces: readonly Piece[], at: number): number | undefined {
  const the = wordAt(pieces, at) === 'the' ? at + 1 : at;
  if (/^(?:last|other)$/.test(wordAt(pieces, the))) return the + 1;
  return valueAt(pieces, the) === 1 ? the + 1 : undefined;
}
