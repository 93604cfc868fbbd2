/**
 * The rules' reading held against what its words are like. An entry of a kind that nothing in the note is like is not
 * logged but doubted; where the rules found nothing to log and the words are plainly those of one kind, the note is read
 * once more under that kind as its heading.
 */
import { findHits } from '../grammar/hits.js';
import { rules } from '../grammar/rules.js';
import type { ReadEntry, ReadNote } from '../note.js';
import type { Piece } from '../pieces/pieces.js';
import { likenessOf } from './likeness.js';

/**
 * Judgement, by 780 notes of the corpus that neither rules nor weights had seen: in 28 something fell below the first while
 * something else came above the second, and one of them had been read rightly.
 */
const UNLIKE_BELOW = 0.1;
const LIKE_FROM = 0.4;
/** Of the same notes 8 were that much like those that tell nothing, and what was read in each was wrong or asked for nothing. */
const NOTHING_FROM = 0.5;
const UNLIKE_THERE = 0.3;
/** Of the same notes 13 were read under a heading from here on: 10 exactly, one wrongly. */
const PLAIN_FROM = 0.8;

/** They log nothing by themselves. */
const LEFT_ALONE: ReadonlySet<string> = new Set(['answer', 'question']);
/** A note that says of itself that it puts something right does. */
const CORRECTING: ReadonlySet<string> = new Set([
  'correction', 'sorry', 'oops', 'actually', 'wrong', 'mistake', 'typo', 'no', 'not', 'undo', 'scrap', 'should', 'instead',
]); // prettier-ignore
const PUT_RIGHT: ReadonlySet<string> = new Set(['amend', 'undo']);
/** Kinds in one note. */
const FEW = 2;

/** Kinds that a note may be read under, with the words of their heading. */
const HEADINGS: Readonly<Record<string, string>> = {
  stock: 'stock',
  strike: 'struck',
  loss: 'lost',
  check: 'checked',
  potOn: 'potted on',
  pinch: 'pinched',
  move: 'moved',
  hardenOff: 'hardened off',
  plantOut: 'planted out',
  dispatch: 'gave away',
  receive: 'received',
  target: 'need',
  undo: 'undo',
};

/** `readUnder` reads the note with these words as its heading, by the rules alone. */
export function heeded(
  read: ReadNote,
  pieces: readonly Piece[],
  readUnder: (heading: string) => ReadNote,
): ReadNote {
  if (read.instruction || read.entries.some(({ entry }) => LEFT_ALONE.has(entry.kind))) return read;
  // A telling of many acts is like no one of them.
  if (new Set(read.entries.map(({ entry }) => entry.kind)).size > FEW) return read;
  const { whole, most } = likenessOf(pieces);
  // A remark may be of anything.
  const like = [...whole].filter(([kind, likely]) => likely > LIKE_FROM && kind !== 'remark');
  const tellsNothing = (whole.get('nothing') ?? 0) > NOTHING_FROM;
  const corrects = pieces.some((piece) => piece.is === 'word' && CORRECTING.has(piece.text));
  const isDoubted = ({ entry: { kind } }: ReadEntry): boolean =>
    !(corrects && PUT_RIGHT.has(kind)) &&
    ((tellsNothing && (whole.get(kind) ?? 1) < UNLIKE_THERE) ||
      ((most.get(kind) ?? 1) < UNLIKE_BELOW && like.some(([other]) => other !== kind)));
  // What names no plant leans on what was said before: alone it is like anything.
  const names = pieces.some(({ is }) => is === 'plant');
  const believed = read.entries.filter((each) => !names || !isDoubted(each) || isExplained(pieces));
  const told = believed.length === 0 ? plainly(whole, read, pieces) : undefined;
  // "Two have gone all tall and one has a bud": what is seen of plants is no loss of them.
  const isSeen =
    told === 'loss' &&
    read.entries.some(({ entry }) => entry.kind === 'remark' && GROWING.test(entry.text ?? ''));
  if (told !== undefined && !isSeen && (names || told === 'undo')) {
    const headed = readUnder(HEADINGS[told] ?? '');
    if (tellsOnly(headed, told)) return headed;
  }
  return believed.length === read.entries.length ? read : without(read, isDoubted);
}

/** How plants do that live. */
const GROWING =
  /\b(?:tall|leggy|buds?|budding|flowers?|flowering|blooms?|shoots?|new growth|growing|bushy|healthy|thriving|staked)\b/i;

const SMALL =
  /^(?:the|my|our|a|an|of|i|we|i've|we've|have|has|had|is|are|was|were|got|all|just|and|to|in|on|over|up|into|at|by|with|for|whole|trays?|pots?|batch|lot|cuttings?|plants?)$/;

/** "The Salt Harrier died last night": the rules account for every word, so that none is left to doubt them by. */
function isExplained(pieces: readonly Piece[]): boolean {
  const own = new Set(findHits(rules, pieces).flatMap((hit) => hit.own));
  return pieces.every((piece, at) => piece.is !== 'word' || own.has(at) || SMALL.test(piece.text));
}

/** The one kind that the words are plainly like and the rules did not see; held back by a mood, they saw it. */
function plainly(
  whole: ReadonlyMap<string, number>,
  read: ReadNote,
  pieces: readonly Piece[],
): string | undefined {
  const [kind, another] = Object.keys(HEADINGS).filter((kind) => (whole.get(kind) ?? 0) > PLAIN_FROM);
  if (kind === undefined || another !== undefined) return undefined;
  if (read.entries.some(({ entry }) => entry.kind === kind)) return undefined;
  return findHits(rules, pieces).some(({ rule }) => rule.kind === kind) ? undefined : kind;
}

/** Entries of that kind and no other, of which no more need be asked than how many and which batch. */
const tellsOnly = ({ entries, asks }: ReadNote, kind: string): boolean =>
  entries.length > 0 &&
  (kind !== 'undo' || entries.length === 1) &&
  entries.every(({ entry }) => entry.kind === kind) &&
  asks.every(({ slot }) => slot === 'count' || slot === 'batch');

function without({ entries, asks, ...rest }: ReadNote, isDoubted: (each: ReadEntry) => boolean): ReadNote {
  const kept = entries.filter((each) => !isDoubted(each));
  const placeOf = new Map(kept.map((each, at) => [entries.indexOf(each), at]));
  return {
    ...rest,
    entries: kept,
    asks: asks.flatMap((ask) => {
      const entry = placeOf.get(ask.entry);
      return entry === undefined ? [] : [{ ...ask, entry }];
    }),
    doubted: entries.filter(isDoubted),
  };
}
