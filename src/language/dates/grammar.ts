/** All rules of phrases of time, in the order in which they are tried: of two that read the same words the first counts. */
import { bounds, ranges } from './bounds.js';
import { calendarDays } from './calendar-days.js';
import { clockTimes } from './clock-times.js';
import { dayParts, daysWithTimes, timesAlone } from './day-times.js';
import { countedSpans } from './counted-spans.js';
import { datedSpans } from './dated-spans.js';
import { holidays } from './holidays.js';
import { months } from './months.js';
import { nameReaders } from './names.js';
import * as numbers from './numbers.js';
import type { Primitive } from './alternative.js';
import { IndexedGrammar } from './indexed-grammar.js';
import { countedFromADay, relativeDays } from './relative-days.js';
import { seasons } from './seasons.js';
import type { Token } from './token.js';
import { weekdays } from './weekdays.js';
import { weeks } from './weeks.js';

const reader = (read: Primitive, begins: (token: Token) => boolean) => ({ read, begins });
const isDigits = (token: Token) => token.digits;

export const grammar = new IndexedGrammar({
  readers: {
    ...nameReaders,
    int: reader(numbers.readInt, isDigits),
    ord: reader(numbers.readOrdinal, numbers.beginsNumber),
    dom: reader(numbers.readDayOfMonth, numbers.beginsNumber),
    ordDom: reader(numbers.readOrdinalDay, numbers.beginsNumber),
    digitOrd: reader(numbers.readDigitOrdinal, isDigits),
    count: reader(numbers.readCount, numbers.beginsCount),
    year: reader(numbers.readYear, numbers.beginsNumber),
    fourDigits: reader(numbers.readFourDigits, isDigits),
    shortYear: reader(numbers.readShortYear, isDigits),
  },
  rules: [
    ...clockTimes,
    ...holidays,
    ...relativeDays,
    ...dayParts,
    ...weekdays,
    ...calendarDays,
    ...weeks,
    ...seasons,
    ...months,
    ...datedSpans,
    ...countedSpans,
    ...daysWithTimes,
    ...timesAlone,
    ...bounds,
    ...countedFromADay,
    ...ranges,
  ],
});
