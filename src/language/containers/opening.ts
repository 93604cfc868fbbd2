/** How a phrase of containers opens: how many there are, past the words that only tell of what sort they are. */
import { wordAt } from '../grammar/rule.js';
import type { Piece, PieceOf } from '../pieces.js';
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
  while (SORT.test(wordAt(pieces, at)) && at - start < LONGEST) at++;
  const number = count ? count.quantity.value : 1;
  return { first, start, number, count, isTimes: wordAt(pieces, start + 1) === 'x', at };
}

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
