/** Words that tell one lot of a plant from another: "the March lot", "the older ones", "the second batch". */
import { monthWords } from '../dates/words.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';

const months: ReadonlySet<string> = new Set(monthWords.flatMap((names) => names.split(' ')));
export const isMonth = (word: string): boolean => months.has(word);

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

/** "3 of the earlier of the two Ember Fox": how many lots there are. */
export const isOfTheTwo = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at + 1) === 'of' &&
  /^(?:the|my)$/.test(wordAt(pieces, at + 2)) &&
  pieces[at + 3]?.is === 'count' &&
  /^(?:plant|word)$/.test(pieces[at + 4]?.is ?? 'word');

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
      (after === undefined ||
        after.is === 'break' ||
        BEHIND_LOT.test(wordAt(pieces, at + 1)) ||
        isOfTheTwo(pieces, at))) ||
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

/** Behind "the big batch …": "… and two of the small one". */
const isOneAfterLot = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at + 1) === 'one' && pieces.slice(0, at).some((_, n) => LOT.test(wordAt(pieces, n)));

const LOT = /^(?:lot|batch)$/;

/** "The bigger lot", "the smaller Ember Fox batch": of lots alone, as "the bigger ones" may be the bigger plants. */
export function sizeOf(pieces: readonly Piece[], at: number): 'largest' | 'smallest' | undefined {
  const noun = pieces[at + 1]?.is === 'plant' ? at + 2 : at + 1;
  if (!LOT.test(wordAt(pieces, noun)) && !isOneAfterLot(pieces, at)) return undefined;
  const text = wordAt(pieces, at);
  return /^(?:big|bigger|biggest|large|larger|largest)$/.test(text)
    ? 'largest'
    : /^(?:small|smaller|smallest)$/.test(text)
      ? 'smallest'
      : undefined;
}

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
