/** Which of several batches fit what a note says of the lot: its place, its day or month, its age, its size. */
import { addDays, type Day, month as monthOf } from '../../calendar/day.js';
import { firstDay, lastDay } from '../../calendar/span.js';
import { standingAt } from '../../ledger/place-meant.js';
import type { KnownBatch } from '../note.js';
import type { When } from '../pieces/pieces.js';
import type { WhichBatch } from './which-batch.js';

/** Those of the batches that the words can mean; all of them where the words fit none. Where one's day is not known, the oldest comes first. */
export function narrowed(fits: readonly KnownBatch[], which: WhichBatch): readonly KnownBatch[] {
  if (fits.length < 2) return fits;
  const { stands, struckOn, month, age, rooted, holds, pots, size } = which;
  // "From 5 September", told in March, can only be last year's.
  const past = struckOn?.past;
  const only = past === 'ask' ? struckOn?.future : undefined;
  const monthAndDay = typeof only === 'string' ? only.slice(5) : undefined;
  const there = stands === undefined ? [] : standingAt(fits, ({ place }) => place, stands);
  const tries: ((batch: KnownBatch) => boolean)[] = [
    (batch) => there.includes(batch),
    ...(past === undefined || past === 'ask'
      ? []
      : [
          ({ struck }: KnownBatch) => fell(struck, firstDay(past), lastDay(past)),
          // "From the 12th", told in April of a lot of March.
          (batch: KnownBatch) => isOfNumber(batch, struckOn),
          // "The 9 March ones" of those struck on the tenth.
          ({ struck }: KnownBatch) => struck?.slice(0, 7) === firstDay(past).slice(0, 7),
        ]),
    ...(monthAndDay === undefined ? [] : [({ struck }: KnownBatch) => struck?.slice(5) === monthAndDay]),
    ...(month === undefined
      ? []
      : [({ struck }: KnownBatch) => struck !== undefined && monthOf(struck) === month]),
  ];
  if (pots !== undefined) tries.push((batch) => batch.pots === pots);
  if (holds !== undefined) tries.push(({ count }) => count === holds);
  if (rooted) tries.push(({ rooted: how = 0 }) => how > 0);
  for (const fit of tries) {
    const found = fits.filter(fit);
    if (found.length > 0) return found;
  }
  const oneSort = fits.every(({ variety, crop }) => variety === fits[0]?.variety && crop === fits[0]?.crop);
  const byAge = fits.every(({ struck }) => struck !== undefined)
    ? [...fits].sort((a, b) => (a.struck ?? '').localeCompare(b.struck ?? ''))
    : fits;
  // "The old ones" of three may be any two of them.
  if (age !== undefined && which.ofTwo && fits.length > 2) return fits;
  if (size !== undefined) return oneSort ? bySize(fits, size, which.ofTwo) : fits;
  const meant = age === 'first' ? byAge[0] : age === 'second' ? byAge[1] : byAge.at(-1);
  const alone =
    meant?.struck === undefined || fits.filter(({ struck }) => struck === meant.struck).length === 1;
  return age !== undefined && oneSort && meant && alone ? [meant] : fits;
}

/** The one lot that is larger, or smaller, than all others; "the big one" is so of two alone. */
function bySize(
  fits: readonly KnownBatch[],
  size: 'largest' | 'smallest',
  ofTwo = false,
): readonly KnownBatch[] {
  const counts = fits.map(({ count }) => count ?? Number.NaN);
  const extreme = size === 'largest' ? Math.max(...counts) : Math.min(...counts);
  const meant = fits.filter(({ count }) => count === extreme);
  return meant.length === 1 && !(ofTwo && fits.length > 2) ? meant : fits;
}

/** "The 12th", "from the twenty first": of whichever month. */
const NUMBER_ALONE =
  /^(?:(?:from|of|on) )?(?:the )?(?:\d{1,2}(?:st|nd|rd|th)|[a-z]+(?:[ -][a-z]+)?th|(?:[a-z]+[ -])?(?:first|second|third))$/i;

/** Whether a day told by its number alone is that of this lot's month. */
const isOfNumber = ({ struck }: KnownBatch, { words = '', past }: Partial<When> = {}): boolean =>
  typeof past === 'string' && NUMBER_ALONE.test(words) && struck?.slice(8) === past.slice(8);

/** Within so many days of the day that is said, the lot is meant all the same. */
const NEAR_ENOUGH_DAYS = 7;

/** Whether the words name a lot by a day or a month at which this one was not struck. */
export function isOtherLot(batch: KnownBatch, { struckOn, month }: WhichBatch): boolean {
  const { struck } = batch;
  if (struck === undefined || isOfNumber(batch, struckOn)) return false;
  const past = struckOn?.past;
  if (past !== undefined && past !== 'ask') {
    const from = addDays(firstDay(past), -NEAR_ENOUGH_DAYS);
    return !fell(struck, from, addDays(lastDay(past), NEAR_ENOUGH_DAYS));
  }
  return month !== undefined && monthOf(struck) !== month;
}

function fell(day: Day | undefined, from: Day, to: Day): boolean {
  return day !== undefined && from <= day && day <= to;
}
