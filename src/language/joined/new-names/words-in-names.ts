/** Words that mean something else by themselves, yet stand inside a new name: days, months and crops. */
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';
import type { Token } from '../../row/tokens.js';
import { isKnown } from '../../row/lexicon.js';
import { monthWords } from '../../dates/words.js';
import { NEVER } from './no-names.js';
import { isCrop } from './position.js';

/**
 * "Wet Sunday fuchsia", "lost 5 Shearer's Sunday": a day or month in capitals between a name and its crop, or straight behind the
 * one word in capitals that was counted, is part of the name.
 */
export function isDayInName(
  pieces: readonly Piece[],
  tokens: readonly Token[],
  at: number,
  isSecondOfCounted: boolean,
): boolean {
  const piece = pieces[at];
  return (
    piece?.is === 'when' &&
    piece.to === piece.from + 1 &&
    tokens[piece.from]?.capital === true &&
    (isCrop(pieces[at + 1]) || isSecondOfCounted)
  );
}

/** "Duchess of Nowhere", "Queen of the Night": how many small words stand there between two capitals of a name, else 0. */
export function jointInName(pieces: readonly Piece[], tokens: readonly Token[], at: number): number {
  const isWord = (n: number, capital: boolean): boolean => {
    const piece = pieces[n];
    return piece?.is === 'word' && tokens[piece.from]?.capital === capital;
  };
  const first = pieces[at - 1];
  if (first?.is !== 'word' || !isWord(at - 1, true) || NEVER.has(first.text) || first.verb?.form === 'past')
    return 0;
  if (!/^(?:of|de|du|von)$/.test(wordAt(pieces, at)) || !isWord(at, false)) return 0;
  const joint = /^(?:the|la)$/.test(wordAt(pieces, at + 1)) && isWord(at + 1, false) ? 2 : 1;
  const next = pieces[at + joint];
  return isWord(at + joint, true) && next?.is === 'word' && !NEVER.has(next.text) ? joint : 0;
}

/** "9 Sunday Kipper": a weekday between a number and a word nobody knows, both in capitals. */
export function isDayOpeningName(pieces: readonly Piece[], tokens: readonly Token[], at: number): boolean {
  const piece = pieces[at];
  const next = pieces[at + 1];
  return (
    piece?.is === 'when' &&
    piece.to === piece.from + 1 &&
    tokens[piece.from]?.capital === true &&
    next?.is === 'word' &&
    tokens[next.from]?.capital === true &&
    !NEVER.has(next.text)
  );
}

const months: ReadonlySet<string> = new Set(monthWords.flatMap((names) => names.split(' ')));

/** "Lost 2 from the March lot": a month, and no name. */
export function isMonthOfLot(pieces: readonly Piece[], at: number): boolean {
  return months.has(wordAt(pieces, at)) && /^(?:lots?|batch|batches|ones)$/.test(wordAt(pieces, at + 1));
}

/** "Rose Muffler dahlia": how many pieces of a name that itself holds a crop stand before the crop, else 0. */
export function nameHoldingCrop(
  pieces: readonly Piece[],
  tokens: readonly Token[],
  at: number,
  counted: boolean,
): number {
  let words = 0;
  let held = 0;
  let to = at;
  for (; to < at + 5; to++) {
    const piece = pieces[to];
    if (isCrop(piece) && piece.to === piece.from + 1) {
      held++;
      continue;
    }
    if (piece?.is !== 'word') break;
    const token = tokens[piece.from];
    const isName =
      token !== undefined &&
      // "Eight plum gaiters fuchsia": any word may stand between what is counted and its crop.
      (token.capital || !isKnown(token.text) || (counted && held > 0)) &&
      !NEVER.has(token.text) &&
      piece.verb?.form !== 'ing' &&
      piece.verb?.form !== 'past';
    if (!isName) break;
    words++;
  }
  // "40 Pantry Basil Pearl, basil": in capitals, and the same crop behind the mark.
  const [mark, crop] = pieces.slice(to, to + 2);
  const inside = pieces.slice(at, to).find(isCrop);
  if (
    counted &&
    words > 0 &&
    held === 1 &&
    mark?.is === 'break' &&
    isCrop(crop) &&
    inside?.plant.crop === crop.plant.crop &&
    pieces.slice(at, to).every(({ from }) => tokens[from]?.capital === true)
  )
    return to - at;
  const isBeforeCrop = isCrop(pieces[to - 1]) && held > 1;
  return words > 0 && isBeforeCrop ? to - 1 - at : 0;
}

/** "Copper Vicar x3": how many words in capitals stand before a number of times, else 0. */
export function nameBeforeTimes(pieces: readonly Piece[], tokens: readonly Token[], at: number): number {
  let to = at;
  for (; to < at + 4; to++) {
    const piece = pieces[to];
    const isName = piece?.is === 'word' && tokens[piece.from]?.capital === true && !NEVER.has(piece.text);
    if (!isName || (to === at && piece.verb?.form === 'past')) break;
  }
  const isTimes = /^[x×]$/.test(wordAt(pieces, to)) && pieces[to + 1]?.is === 'count';
  return isTimes ? to - at : 0;
}
