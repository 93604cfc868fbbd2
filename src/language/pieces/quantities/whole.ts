/** Quantities by what there is, each by the word that opens it: all, none, the rest, all but two, half. */
import { allAt, bothAt, butRuntAt, everyAt, everythingAt, whateverAt, wholeLotAt } from './all.js';
import { divilAt, noneAt, notOneAt, nothingAt } from './none.js';
import type { FoundQuantity } from './quantity.js';
import { restAt } from './rest.js';
import { halfAt, isHundredPercent, percentAt, shareAt } from './shares.js';
import { textAt, type Token } from '../../row/tokens.js';

type Reading = (tokens: readonly Token[], at: number) => FoundQuantity | undefined;

/** "Half", "the half", "a half", each behind a share that is told in more words. */
const shares: readonly Reading[] = [percentAt, shareAt, halfAt];

/** What the words of a whole may open; the first that fits counts. */
const readings: ReadonlyMap<string, readonly Reading[]> = new Map(
  Object.entries({
    all: [allAt],
    both: [bothAt],
    except: [butRuntAt],
    bar: [butRuntAt],
    apart: [butRuntAt],
    everything: [everythingAt],
    whatever: [whateverAt],
    every: [everyAt],
    each: [everyAt],
    the: [wholeLotAt, restAt, ...shares],
    whole: [wholeLotAt],
    rest: [restAt],
    remainder: [restAt],
    what: [restAt],
    "what's": [restAt],
    balance: [restAt],
    others: [restAt],
    remaining: [restAt],
    other: [restAt],
    last: [restAt],
    final: [restAt],
    none: [noneAt],
    neither: [noneAt],
    zilch: [noneAt],
    nothing: [nothingAt],
    nowt: [nothingAt],
    nuthin: [nothingAt],
    zip: [nothingAt],
    not: [notOneAt],
    divil: [divilAt],
    sorra: [divilAt],
  }),
);

/** The words that may open a whole or a share of it, beside numbers. */
export const wholeWords: readonly string[] = [...readings.keys(), 'a', 'half'];

/** "All", "every last one", "the rest", "a third of them". */
export function wholly(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  if (isHundredPercent(tokens, at)) return { quantity: { whole: 'all' }, to: at + 2 };
  for (const reading of readings.get(textAt(tokens, at)) ?? shares) {
    const found = reading(tokens, at);
    if (found) return found;
  }
  return undefined;
}
