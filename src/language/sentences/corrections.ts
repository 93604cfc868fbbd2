/** Self-corrections: "four no five", "three pots of eight, er no, of six", "4 not 5". The later word stands. */
import { addDays, type Day } from '../../calendar/day.js';
import { wordAt } from '../grammar/rule.js';
import { phrasesOf } from '../phrases.js';
import type { Piece, PieceOf, When } from '../pieces/pieces.js';

/** Markers of a correction, those with more words first. */
const CORE: readonly (readonly string[])[] = phrasesOf`
  no|nope|nah|oh no|(god|good god|lord) no|no actually|no it was|(no )?tell a lie
  wait|oh wait|no wait|wait no|(no )?(hang|hold) on
  sorry|no sorry|sorry no|apologies|pardon|excuse me|(i )?beg your pardon|beg pardon|oops|my mistake|correction
  (no |sorry )?i mean|(sorry )?i meant|what am i saying|that is|or rather|rather|actually|well
  (no |wait )?make (it|that)|call (it|that)|(strike|scrub|scratch|scrap) that
`
  .map((phrase) => phrase.split(' '))
  .sort((one, other) => other.length - one.length);

/** The same by their first words, in the same order: every word of every note is asked about. */
const CORE_BY_FIRST = new Map(CORE.map(([first]) => [first, CORE.filter((words) => words[0] === first)]));
const ONE_WORD: ReadonlySet<string | undefined> = new Set(
  CORE.filter(({ length }) => length === 1).map(([word]) => word),
);
/** Words from a marker to what it puts right, at most: in a longer run a later marker does it, in linear time. */
const LONGEST_HESITATION = 24;
const FILLER = /^(?:er|erm|um|uh|oh|it|it's|its|there's|was|that's|they|were|i|think|the|only|just|a)$/;
/** "In the greenhouse no in the cold frame": the preposition said again. */
const SAID_AGAIN = /^(?:in|into|on|onto|at|under|to|of|from|off)$/;
/** Markers behind which a preposition begins something else ("the lot that is in the tunnel"). */
const OF_OTHER_USE = /^(?:that|well|actually|rather|make)$/;
const CORRECTABLE: ReadonlySet<Piece['is']> = new Set([
  'count',
  'plant',
  'when',
  'place',
  'size',
  'pots',
  'cutting',
  'celsius',
  'medium',
]);

/** The row with what was taken back left out. */
export function settleCorrections(row: readonly Piece[]): readonly Piece[] {
  let pieces = row;
  for (let at = 1; at < pieces.length; at++) {
    const settled =
      markerAt(pieces, at) ?? saidOutright(pieces, at) ?? notAt(pieces, at) ?? afterwards(pieces, at);
    if (settled) {
      pieces = settled.pieces;
      at = settled.next;
    }
  }
  return pieces;
}

interface Settled {
  readonly pieces: readonly Piece[];
  readonly next: number;
}

/** "Yesterday, no, the day before": the day told is moved by one. */
function dayBeside(pieces: readonly Piece[], start: number, at: number): Settled | undefined {
  const [day, side] = [wordAt(pieces, at), wordAt(pieces, at + 1)];
  if (day !== 'day' || !/^(?:before|after)$/.test(side)) return undefined;
  const earlier = pieces.findLastIndex((piece, n) => n < start && piece.is === 'when');
  const told = pieces[earlier];
  if (told?.is !== 'when') return undefined;
  const by = side === 'before' ? -1 : 1;
  const moved = (when: When['past']): When['past'] =>
    typeof when === 'string' && when !== 'ask' ? addDays(when as Day, by) : when;
  const when = { ...told.when, past: moved(told.when.past), future: moved(told.when.future) };
  return {
    pieces: [
      ...pieces.slice(0, earlier),
      { ...told, when },
      ...pieces.slice(earlier + 1, start),
      ...pieces.slice(at + 2),
    ],
    next: start,
  };
}

function markerAt(pieces: readonly Piece[], start: number): Settled | undefined {
  const core = CORE_BY_FIRST.get(wordAt(pieces, start))?.find((words) =>
    words.every((word, n) => wordAt(pieces, start + n) === word),
  );
  if (!core) return undefined;
  // "Never did make it out".
  if (
    core[0] === 'make' &&
    /^(?:out|home|back|through|to|past|over|up)$/.test(wordAt(pieces, start + core.length))
  )
    return undefined;
  // "I told no one".
  const before = pieces[start - 1];
  const one = pieces[start + 1];
  if (
    core.length === 1 &&
    core[0] === 'no' &&
    before?.is === 'word' &&
    before.verb !== undefined &&
    one?.is === 'count' &&
    one.quantity.weak === true
  )
    return undefined;
  let at = start + core.length;
  let broken = false;
  let preposition = false;
  for (; at < pieces.length && at < start + LONGEST_HESITATION; at++) {
    const piece = pieces[at];
    if (piece?.is === 'break' && !piece.hard) broken = true;
    else if (piece?.is === 'word' && (ONE_WORD.has(piece.text) || FILLER.test(piece.text))) continue;
    else if (piece?.is === 'word' && SAID_AGAIN.test(piece.text) && !OF_OTHER_USE.test(core[0] ?? ''))
      preposition = true;
    else break;
  }
  const beside = dayBeside(pieces, start, at);
  if (beside) return beside;
  // "No sorry, not Silver Mustard, Rhubarb Bishop": the denied name goes too.
  if (wordAt(pieces, at) === 'not' && pieces[at + 1] && CORRECTABLE.has(pieces[at + 1]?.is ?? 'word')) {
    let real = at + 2;
    while (pieces[real]?.is === 'break' || FILLER.test(wordAt(pieces, real))) real++;
    if (pieces[real]?.is === pieces[at + 1]?.is) at = real;
  }
  at = insisted(pieces, at);
  const next = pieces[at];
  // "Um, for, no hang on, five": nothing was said yet that could be taken back.
  const nothingYet = start < 6 && !pieces.slice(0, start).some(({ is }) => CORRECTABLE.has(is));
  if (nothingYet && core.length > 1 && next) return { pieces: pieces.slice(at), next: 0 };
  if (!next || !CORRECTABLE.has(next.is)) return undefined;
  if (preposition && !/^(?:place|plant|medium)$/.test(next.is)) return undefined;
  const brokenBefore = pieces[start - 1]?.is === 'break';
  const bareNo = core.length === 1 && core[0] === 'no';
  // "… off four of the Salt Harrier - no the Tallow Bell": said last, and with its article.
  const isLast = next.is === 'plant' && at > start + 1 && at + 1 >= pieces.length;
  if (bareNo && brokenBefore && !broken && !isLast && next.is !== 'count' && next.is !== 'when')
    return undefined;
  if (
    /^(?:well|actually|wait|that)$/.test(core[0] ?? '') &&
    core.length === 1 &&
    next.is !== 'count' &&
    !brokenBefore &&
    !(next.is === 'when' && pieces[start - 1]?.is === 'when')
  )
    return undefined;
  return replaceEarlier(pieces, start, at);
}

/** "No, it's six, it's definitely six": where the number is said for the last time. */
function insisted(pieces: readonly Piece[], at: number): number {
  const said = pieces[at];
  if (said?.is !== 'count') return at;
  let again = at + 1;
  while (again < at + 5 && (pieces[again]?.is === 'break' || INSISTING.test(wordAt(pieces, again)))) again++;
  const repeated = pieces[again];
  return repeated?.is === 'count' && again > at + 1 && repeated.quantity.value === said.quantity.value
    ? again
    : at;
}

const INSISTING =
  /^(?:yes|yeah|yep|it's|its|it|is|was|there's|there|are|they're|definitely|really|sure|i'm|certainly|actually)$/;

/** Leaves out, for each piece that runs on from `at`, the nearest earlier one of its kind, and the marker itself. */
function replaceEarlier(pieces: readonly Piece[], start: number, at: number): Settled | undefined {
  const drop = new Set<number>();
  for (let next = at; next < pieces.length && next < at + 4; next++) {
    const piece = pieces[next];
    if (!piece || piece.is === 'break') break;
    if (!CORRECTABLE.has(piece.is)) {
      if (piece.is === 'word' && /^(?:of|in|the|on|to|pots|cuttings?|from|off)$/.test(piece.text)) continue;
      break;
    }
    let earlier = start - 1;
    while (earlier >= 0 && earlier > start - 9 && !(pieces[earlier]?.is === piece.is && !drop.has(earlier)))
      earlier--;
    if (earlier >= 0 && pieces[earlier]?.is === piece.is) {
      if (next > at && earlier < start - 4 && piece.is === 'plant') continue;
      // "Ten of the Salt Harrier and then twelve, no, fourteen of the Tallow Bell": the first plant is done with.
      const settled = pieces
        .slice(earlier, Math.min(...drop, start))
        .some((each) => each.is === 'break' || (each.is === 'word' && /^(?:and|then|plus)$/.test(each.text)));
      if (next > at && piece.is === 'plant' && settled) break;
      drop.add(earlier);
      // "Three, four, five, no, six": counted aloud.
      while (next === at && piece.is === 'count' && pieces[earlier - 1]?.is === 'count') drop.add(--earlier);
    } else if (next === at) return undefined;
  }
  for (let n = start; n < at; n++) drop.add(n);
  if (pieces[start - 1]?.is === 'break') drop.add(start - 1);
  return { pieces: pieces.filter((_, n) => !drop.has(n)), next: start - drop.size + (at - start) };
}

/** "… to the greenhouse - cold frame sorry": said again behind a break, and excused. */
function afterwards(pieces: readonly Piece[], at: number): Settled | undefined {
  const again = pieces[at];
  if (!again || !CORRECTABLE.has(again.is) || pieces[at - 1]?.is !== 'break') return undefined;
  if (!/^(?:sorry|oops|whoops)$/.test(wordAt(pieces, at + 1)) || pieces[at + 2] !== undefined)
    return undefined;
  const earlier = pieces.findLastIndex((piece, n) => n < at - 1 && piece.is === again.is);
  if (earlier < 0) return undefined;
  const said = again.is === 'place' ? { ...again, prep: (pieces[earlier] as PieceOf<'place'>).prep } : again;
  return { pieces: [...pieces.slice(0, earlier), said, ...pieces.slice(earlier + 1, at - 1)], next: at };
}

/** "A few, say six": the number told outright stands for the one left open. */
function saidOutright(pieces: readonly Piece[], at: number): Settled | undefined {
  const said = pieces[at];
  if (said?.is !== 'count' || said.quantity.settles !== true) return undefined;
  const before = pieces[at - 1]?.is === 'break' ? at - 2 : at - 1;
  const open = pieces[before];
  if (open?.is !== 'count' || (open.quantity.vague !== true && open.quantity.share === undefined))
    return undefined;
  return { pieces: [...pieces.slice(0, before), ...pieces.slice(at)], next: before };
}

/** "4 not 5": the denied one goes. */
function notAt(pieces: readonly Piece[], at: number): Settled | undefined {
  if (wordAt(pieces, at) !== 'not') return undefined;
  const before = pieces[at - 1]?.is === 'break' ? at - 2 : at - 1;
  const denied = pieces[at + 1];
  if (!denied || !CORRECTABLE.has(denied.is) || pieces[before]?.is !== denied.is) return undefined;
  return {
    pieces: pieces.filter((_, n) => n !== at && n !== at + 1 && !(n === at - 1 && before === at - 2)),
    next: at - 1,
  };
}
