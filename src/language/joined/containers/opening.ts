/** How a phrase of containers opens: how many there are, past the words that only tell of what sort they are. */
import { wordAt } from '../../grammar/rule.js';
import type { Piece, PieceOf } from '../../pieces/pieces.js';
import { countAt } from './per-container.js';

export interface Opening {
  readonly first: Piece;
  readonly start: number;
  /** How many; absent where that is left open. */
  readonly number: number | undefined;
  readonly count: PieceOf<'count'> | undefined;
  /** "6 x". */
  readonly isTimes: boolean;
  /** Where the word for the container, or its size, should stand. */
  readonly at: number;
}

const SORT =
  /^(?:big|small|little|large|jam|mason|kilner|pickle|seed|starting|starter|propagation|rooting|half|full|plug|module|cell|new|clay|plastic|terracotta|different|deep|quarter|root|coffee|yoghurt|yogurt|clean|old|standard|community|communal|shared)$/;
/** Pieces up to there, the number among them, are an opening. */
const LONGEST = 4;

export function openingAt(pieces: readonly Piece[], start: number): Opening | undefined {
  const first = pieces[start];
  if (!first) return undefined;
  const count = countAt(pieces, start);
  if (count ? !isHowMany(count) : !isOne(pieces, start)) return undefined;
  let at = start + 1;
  if (wordAt(pieces, at) === 'single') at++;
  if (wordAt(pieces, at) === 'x') at++;
  while ((isSort(pieces, at) || isMixedOf(pieces, at)) && at - start < LONGEST) at++;
  const number = count ? count.quantity.value : 1;
  return { first, start, number, count, isTimes: wordAt(pieces, start + 1) === 'x', at };
}

/** "Nearly full" too. */
const isSort = (pieces: readonly Piece[], at: number): boolean =>
  SORT.test(wordAt(pieces, at)) ||
  (/^(?:nearly|almost|quite|not)$/.test(wordAt(pieces, at)) &&
    /^(?:quite|full)$/.test(wordAt(pieces, at + 1)));

/** "One full 72-cell tray": no "half full", and no other number that would tell how many ("60 of them, one full tray"). */
export function isFull(pieces: readonly Piece[], { start, at }: Opening): boolean {
  if (wordAt(pieces, at - 1) !== 'full') return false;
  if (/^(?:half|quarters?|nearly|almost|quite)$/.test(wordAt(pieces, at - 2))) return false;
  const before = pieces.slice(0, start).findLastIndex((piece) => piece.is === 'break' && piece.hard);
  return !pieces.slice(before + 1, start).some(({ is }) => is === 'count');
}

/** "One mixed pot of salvia cuttings". */
const isMixedOf = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:mixed|joint)$/.test(wordAt(pieces, at)) && wordAt(pieces, at + 2) === 'of';

const isHowMany = ({ quantity: { value, vague, outOf } }: PieceOf<'count'>): boolean =>
  (value !== undefined || vague === true) && outOf === undefined;

/** "A pot", "another pot", "the same pot"; no "split into single pots". */
function isOne(pieces: readonly Piece[], at: number): boolean {
  const word = wordAt(pieces, at);
  return (
    /^(?:a|an|another|single|same)$/.test(word) &&
    !(word === 'single' && /^(?:pots|modules|cells)$/.test(wordAt(pieces, at + 1)))
  );
}
