/** Words that tell one lot of a plant from another: "the March lot", "the older ones", "the second batch". */
import { wordAt } from './grammar/rule.js';
import type { Piece } from './pieces.js';

type Age = 'first' | 'second' | 'last';

export const SEVERAL = /^(?:lot|ones|one|batch|batches|cuttings|lots)$/;
export const ARTICLE = /^(?:the|my|our|those|these|of)$/;

/** What may follow a lot that is told without a noun: "3 of the younger are dead". */
const BEHIND_LOT = /^(?:to|into|in|on|at|under|out|are|were|is|was|have|has|had|and|but|went|got)$/;

/** "Three of the first lot and one of the second". */
const isAfterLot = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:first|second|third|last)$/.test(wordAt(pieces, at)) &&
  wordAt(pieces, at - 1) === 'the' &&
  (wordAt(pieces, at - 2) === 'of' || pieces[at - 2]?.is === 'count') &&
  pieces.slice(0, at).some((_, n) => /^(?:lot|batch)$/.test(wordAt(pieces, n)));

/** Between an article or a number and the plants: "the March lot", "5 of the 9 March Ember Fox". */
export function isOneOfSeveral(pieces: readonly Piece[], at: number): boolean {
  const before = pieces[at - 1];
  const after = pieces[at + 1];
  return (
    ((ARTICLE.test(wordAt(pieces, at - 1)) || before?.is === 'count') &&
      (after?.is === 'plant' || SEVERAL.test(wordAt(pieces, at + 1)))) ||
    // "… and 4 of the younger".
    (ARTICLE.test(wordAt(pieces, at - 1)) &&
      (/^(?:older|younger|newer|earlier|later)$/.test(wordAt(pieces, at)) || isAfterLot(pieces, at)) &&
      (after === undefined || after.is === 'break' || BEHIND_LOT.test(wordAt(pieces, at + 1)))) ||
    // "First lot: three have roots".
    ((before === undefined || before.is === 'break') &&
      /^(?:lot|batch)$/.test(wordAt(pieces, at + 1)) &&
      pieces[at + 2]?.is === 'break')
  );
}

const AGES: readonly (readonly [Age, RegExp])[] = [
  ['first', /^(?:old|older|oldest|earlier|earliest)$/],
  ['last', /^(?:new|newer|newest|younger|youngest|later|latest)$/],
];
/** Of a lot alone: "the first ones" may be the first to root. */
const ORDERED: readonly (readonly [Age, RegExp])[] = [
  ['first', /^(?:first|original)$/],
  ['second', /^second$/],
  ['last', /^last$/],
];

export function ageOf(pieces: readonly Piece[], at: number): Age | undefined {
  const text = wordAt(pieces, at);
  // "All nine of the first ones".
  const isOfThem =
    wordAt(pieces, at + 1) === 'ones' &&
    wordAt(pieces, at - 1) === 'the' &&
    wordAt(pieces, at + 2) !== 'to' &&
    (wordAt(pieces, at - 2) === 'of' || pieces[at - 2]?.is === 'count');
  const isLot = isAfterLot(pieces, at) || isOfThem || /^(?:lot|batch)$/.test(wordAt(pieces, at + 1));
  return [...AGES, ...(isLot ? ORDERED : [])].find(([, pattern]) => pattern.test(text))?.[0];
}
