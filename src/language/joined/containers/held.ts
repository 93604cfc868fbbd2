/** What containers hold where that is told of each of them: "one pot of 8, two of 6", "two with five in them and the third with four". */
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';
import { fallenShort } from './short.js';
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

/** Containers that hold so many altogether; how many is undefined where the words do not tell. */
interface Held {
  readonly pots: number;
  readonly count: number | undefined;
  /** Past its last piece. */
  readonly to: number;
}

/** The row with the number that its containers hold altogether before them. */
export function countHeld(row: readonly Piece[]): readonly Piece[] {
  let pieces = row;
  for (let at = 0; at < pieces.length; at++) {
    const pots = pieces[at];
    if (pots?.is !== 'pots' || pots.pots === undefined) continue;
    const before = pieces[at - 1];
    // A number that a container was joined to stands behind it in the text.
    const each = before?.is === 'count' && before.from > pots.from ? before : undefined;
    pieces = each
      ? (listed(pieces, at) ?? fallenShort(pieces, at) ?? pieces)
      : (shared(pieces, at) ?? pieces);
  }
  return pieces;
}

/** "One pot of 8, two of 6": the same containers go on without their word. */
function listed(pieces: readonly Piece[], at: number): readonly Piece[] | undefined {
  const [held, pots] = [pieces[at - 1], pieces[at]];
  if (held?.is !== 'count' || pots?.is !== 'pots') return undefined;
  let count = held.quantity.value ?? 0;
  let containers = pots.pots ?? 0;
  let to = pieces[at + 1]?.is === 'size' ? at + 2 : at + 1;
  const first = to;
  for (;;) {
    const next = pastJoint(pieces, to);
    const more = pieces[next];
    if (next === to || more?.is !== 'count' || more.quantity.value === undefined) break;
    const linked = /^(?:with|of|at)$/.test(wordAt(pieces, next + 1)) ? next + 2 : next + 1;
    // "Two of 6" is read as a part of six where the number allows it.
    const each = more.quantity.outOf ?? valueAt(pieces, linked);
    const end = more.quantity.outOf === undefined ? linked + 1 : next + 1;
    if (each === undefined || !endsThere(pieces, end)) break;
    count += more.quantity.value * each;
    containers += more.quantity.value;
    to = end;
  }
  if (to === first) return undefined;
  return [
    ...pieces.slice(0, at - 1),
    counted(count, held),
    { ...pots, pots: containers },
    ...pieces.slice(at + 1, first),
    ...pieces.slice(to),
  ];
}

/** "Three pots of these, two with five in them and the third with four": what each of those told as a number holds. */
function shared(pieces: readonly Piece[], at: number): readonly Piece[] | undefined {
  const pots = pieces[at];
  if (pots?.is !== 'pots' || pots.pots === undefined || pots.pots < 2) return undefined;
  const into = /^(?:in|into)$/.test(wordAt(pieces, at - 1));
  const behind = pieces[at + 1];
  const isOf = behind?.is === 'plant' || behind?.is === 'size' || behind?.is === 'break';
  if (!isOf && !/^(?:of|with)$/.test(wordAt(pieces, at + 1)) && !into) return undefined;
  const before = pieces.slice(0, at).findLastIndex((piece) => piece.is === 'break' && piece.hard);
  if (pieces.slice(before + 1, at).some(({ is }) => is === 'count')) return undefined;
  const from = breakBehind(pieces, at + 1);
  if (from === undefined) return undefined;
  const cells = pieces
    .slice(at, from)
    .flatMap((piece) => (piece.is === 'size' ? cellsOf(piece.size) : []))[0];
  let told: Held = { pots: 0, count: 0, to: from };
  for (;;) {
    const next = pastJoint(pieces, told.to);
    const left = pots.pots - told.pots;
    const held =
      next > told.to ? (heldAt(pieces, next, left, cells) ?? heldIn(pieces, next, left)) : undefined;
    if (!held) break;
    const count = told.count === undefined || held.count === undefined ? undefined : told.count + held.count;
    told = { pots: told.pots + held.pots, count, to: held.to };
  }
  if (told.pots === 0) return undefined;
  const value = told.pots === pots.pots ? told.count : undefined;
  const dropped = pieces.slice(from, told.to);
  return [
    ...pieces.slice(0, at),
    // "Potted them into three trays, two full": how many those were is told elsewhere, or not at all.
    ...(into && value === undefined ? [] : [counted(value, pots)]),
    ...pieces.slice(at, from),
    // That they are cuttings tells the act.
    ...dropped.filter((piece) => piece.is === 'word' && piece.text === 'cuttings').slice(0, 1),
    ...pieces.slice(told.to),
  ];
}

const cellsOf = (size: string): readonly number[] =>
  size.endsWith('cell') ? [Number(size.slice(0, -4))] : [];

/** "Two with five in them", "the third with four", "the rest two each", "one only half full". */
function heldAt(
  pieces: readonly Piece[],
  at: number,
  left: number,
  cells: number | undefined,
): Held | undefined {
  // "In two of them 5 and in one 4".
  const inside = /^(?:in|into)$/.test(wordAt(pieces, at));
  const some = whichAt(pieces, inside ? at + 1 : at, left);
  if (!some) return undefined;
  let next = some.to;
  while (
    MORE.test(wordAt(pieces, next)) &&
    !(wordAt(pieces, next) === 'of' && valueAt(pieces, next + 1) !== undefined)
  )
    next++;
  const full = pastFull(pieces, next);
  if (full > next) {
    const part = pieces.slice(next, full);
    const half = part.some(
      (piece, n) => wordAt(part, n) === 'half' || (piece.is === 'count' && piece.quantity.share?.[1] === 2),
    );
    const whole = part.length === 1;
    const each = whole ? cells : half && cells !== undefined && cells % 2 === 0 ? cells / 2 : undefined;
    return { pots: some.pots, count: each === undefined ? undefined : some.pots * each, to: full };
  }
  if (HOLDS.test(wordAt(pieces, next))) next++;
  else if (some.part === undefined && !inside) return undefined;
  while (/^(?:only|just)$/.test(wordAt(pieces, next))) next++;
  const each = some.part ?? valueAt(pieces, next);
  if (each === undefined) return undefined;
  const end = some.part === undefined ? next + 1 : some.to;
  return { pots: some.pots, count: some.pots * each, to: pastBehind(pieces, end) };
}

/** "Five cuttings in one, four in the other". */
function heldIn(pieces: readonly Piece[], at: number, left: number): Held | undefined {
  const count = valueAt(pieces, at);
  let next = at + 1;
  while (/^(?:cuttings?|pieces|of|them)$/.test(wordAt(pieces, next))) next++;
  if (count === undefined || wordAt(pieces, next) !== 'in') return undefined;
  const some = whichAt(pieces, next + 1, left);
  if (!some || some.part !== undefined) return undefined;
  return { pots: some.pots, count: some.pots * count, to: pastBehind(pieces, some.to) };
}

/** How many of the containers are meant; `part` where what each holds is among the words of the number ("two of six"). */
function whichAt(
  pieces: readonly Piece[],
  at: number,
  left: number,
): { readonly pots: number; readonly part?: number; readonly to: number } | undefined {
  const the = /^(?:the|a)$/.test(wordAt(pieces, at)) ? at + 1 : at;
  const piece = pieces[the];
  if (piece?.is === 'when' && /^the (?:second|third|fourth|fifth|sixth|last)$/i.test(piece.when.words))
    return { pots: 1, to: the + 1 };
  if (/^(?:other|last|another|second|third|fourth|fifth|sixth)$/.test(wordAt(pieces, the)))
    return { pots: 1, to: the + 1 };
  if (piece?.is !== 'count') return undefined;
  if (piece.quantity.whole === 'rest') return { pots: left, to: the + 1 };
  const { value, outOf } = piece.quantity;
  if (value === undefined || value > left) return undefined;
  return { pots: value, to: the + 1, ...(outOf === undefined ? {} : { part: outOf }) };
}
