/** Days that name their month or their day of the month: "3 May", "the 10th", "3/4", "Mon 30th". */
import {
  addMonths,
  asDay,
  type Day,
  dayOf,
  month as monthOfDay,
  weekday as weekdayOf,
  year as yearOf,
} from '../../calendar/day.js';
import { centuryOf, dotted, numeric, resolvedDay } from './days-in-numbers.js';
import { fixed, impossible, open, unsure, type When, when, yearlyDay } from './meaning.js';
import { rule } from './pattern.js';

/** A day with its month; without a year the nearest. */
function dayInMonth(day: number, month: number, year?: number, shortYear?: number): When {
  if (year !== undefined) return fixed(() => resolvedDay(dayOf(year, month, day)));
  if (shortYear !== undefined)
    return when((leaning, { today }) => resolvedDay(dayOf(centuryOf(shortYear, leaning, today), month, day)));
  return yearlyDay(month, day);
}

/** The nearest month whose such day exists: "the 10th". */
export function nearestDayOfMonth(day: number): When {
  return open((leaning, { today }) => {
    if (day > 31) return impossible;
    const step = leaning === 'past' ? -1 : 1;
    for (let months = 0; months <= 12; months++) {
      const found = dayInMonthAway(today, step * months, day);
      if (found !== null && (leaning === 'past' ? found <= today : found > today)) return { date: found };
    }
    return impossible;
  });
}

function dayInMonthAway(today: Day, months: number, day: number): Day | null {
  const inMonth = addMonths(asDay(`${today.slice(0, 8)}01`), months);
  return dayOf(yearOf(inMonth), monthOfDay(inMonth), day);
}

/** "Mon 30th": the nearest 30th that is a Monday. */
function nearestWeekdayDate(weekday: number, day: number): When {
  return open((leaning, { today }) => {
    const step = leaning === 'past' ? -1 : 1;
    for (let months = 0; months <= 14; months++) {
      const found = dayInMonthAway(today, step * months, day);
      if (found === null || weekdayOf(found) !== weekday) continue;
      if (leaning === 'past' ? found > today : found < today) continue;
      if (leaning === 'past' && yearOf(found) < yearOf(today) && found < addMonths(today, -6))
        return { problem: 'tooFarBack', options: [found] };
      return { date: found };
    }
    return impossible;
  });
}

/** A weekday said beside a date has to be that date's; in another year it may be, so without a year both are offered. */
function onWeekday(weekday: number, calendar: When): When {
  return {
    ...calendar,
    certain: true,
    mean: (leaning, now) => {
      const resolved = calendar.mean(leaning, now);
      if (!('date' in resolved) || weekdayOf(resolved.date) === weekday) return resolved;
      return { problem: 'impossible', options: [resolved.date] };
    },
  };
}

/** A day of the month that may as well count a thing. */
function ordinal(day: When): When {
  return { ...day, ordinal: true };
}

/** March, April, May and June are verbs, people and names of plants as well. */
const alsoNames = (month: number) => month >= 3 && month <= 6;

export const calendarDays = [
  rule(
    'calendar',
    '3rd May 2026',
    'the? <day:ordDom> day? of|in? <month> ,|-|/? of|in? <year>?',
    ({ day, month, year }) => dayInMonth(day, month, year),
  ),
  rule('calendar', '3 of May', 'the? <day:dom> of <month> ,? of|in? <year>?', ({ day, month, year }) =>
    dayInMonth(day, month, year),
  ),
  rule('calendar', '3 May 2026', '<day:dom> .|-|/? <month> ,|-|/|.? of|in? <year>', ({ day, month, year }) =>
    dayInMonth(day, month, year),
  ),
  rule('calendar', '3-May-96', '<day:dom> - <month> - <shortYear>', ({ day, month, shortYear }) =>
    dayInMonth(day, month, undefined, shortYear),
  ),
  rule('calendar', '3/May/96', '<day:dom> / <month> / <shortYear>', ({ day, month, shortYear }) =>
    dayInMonth(day, month, undefined, shortYear),
  ),
  rule(
    'calendar',
    "3rd May '96",
    "<day:dom> of? <month> '|\u2019|of <shortYear>",
    ({ day, month, shortYear }) => dayInMonth(day, month, undefined, shortYear),
  ),
  rule('calendar', '3 May 96', '<day:dom> of? <month> <shortYear>', ({ day, month, shortYear }) =>
    shortYear > 31 ? dayInMonth(day, month, undefined, shortYear) : null,
  ),
  rule('calendar', 'the 3 May', 'the <day:int> .? <month>', ({ day, month }) => dayInMonth(day, month)),
  rule('calendar', '3 May', '<day:dom> -|/|.? <month>', ({ day, month }) =>
    alsoNames(month) ? unsure(dayInMonth(day, month)) : dayInMonth(day, month),
  ),
  rule(
    'calendar',
    'May the 3rd 2026',
    '<month> ,? the? <day:ordDom> ,? of|in? <year>?',
    ({ month, day, year }) => dayInMonth(day, month, year),
  ),
  rule('calendar', 'May 3, 2026', '<month> ,|-|/? <day:dom> ,|-|/? of|in? <year>', ({ month, day, year }) =>
    dayInMonth(day, month, year),
  ),
  rule('calendar', 'May 9, 96', '<month> <day:dom> , <shortYear>', ({ month, day, shortYear }) =>
    dayInMonth(day, month, undefined, shortYear),
  ),
  rule('calendar', 'May 3', '<month> ,|-|/? <day:dom>', ({ month, day }) =>
    alsoNames(month) ? unsure(dayInMonth(day, month)) : dayInMonth(day, month),
  ),
  rule('calendar', '2026/May/3', '<year> -|/|,? <month> -|/? <day:dom>', ({ year, month, day }) =>
    dayInMonth(day, month, year),
  ),
  rule('calendar', '2026-05-03', '<year> -|/|.? <month:int> -|/|.? <day:int>', ({ year, month, day }) =>
    fixed(() => resolvedDay(dayOf(year, month, day) ?? (month > 12 ? dayOf(year, day, month) : null))),
  ),
  rule(
    'calendar',
    '3/5/2026',
    '<first:int> <mark=/|-|.> <second:int> /|-|. <year>',
    ({ first, second, year }) => numeric(first, second, () => year),
  ),
  rule('calendar', '3 5 2026', '<first:int> <second:int> <year>', ({ first, second, year }) =>
    numeric(first, second, () => year),
  ),
  rule('calendar', '3/5/26', '<first:int> / <second:int> / <shortYear>', ({ first, second, shortYear }) =>
    numeric(first, second, (leaning, { today }) => centuryOf(shortYear, leaning, today)),
  ),
  rule('calendar', '03.05.26', '<first:int> . <second:int> . <shortYear>', ({ first, second, shortYear }) =>
    numeric(first, second, (leaning, { today }) => centuryOf(shortYear, leaning, today)),
  ),
  rule('calendar', '3-5-26', '<first:int> - <second:int> - <shortYear>', ({ first, second, shortYear }) =>
    numeric(first, second, (leaning, { today }) => centuryOf(shortYear, leaning, today)),
  ),
  rule('calendar', '3/5', '<first:int> / <second:int>', ({ first, second }) =>
    first > 31 || second > 31 || first === 0 || second === 0
      ? null
      : unsure(numeric(first, second, () => null)),
  ),
  rule('calendar', 'on 03.05', 'on <first:int> . <second:shortYear>', dotted),
  rule('calendar', 'until 1.10', 'until|by|before|since the? <first:int> . <second:int>', dotted),
  rule('calendar', '03.05.', '<first:int> . <second:int> .', dotted),
  rule('day', 'Mon 3 May', '<weekday> ,|-? the? <calendar>', ({ weekday, calendar }) =>
    onWeekday(weekday, calendar),
  ),
  rule(
    'day',
    'this Friday, 15 June',
    'this|last|next <weekday> ,|-? the? <calendar>',
    ({ weekday, calendar }) => onWeekday(weekday, calendar),
  ),
  rule('day', '', '<calendar>', ({ calendar }) => calendar),
  rule('day', 'next 6th of April', 'next <calendar>', ({ calendar }) => ({
    ...calendar,
    mean: (_, now) => calendar.mean('future', now),
  })),
  rule('day', 'last 6th of April', 'last <calendar>', ({ calendar }) => ({
    ...calendar,
    mean: (_, now) => calendar.mean('past', now),
  })),
  rule('day', 'Mon the 30th', '<weekday> ,? the? <day:ordDom>', ({ weekday, day }) =>
    nearestWeekdayDate(weekday, day),
  ),
  rule('day', 'Sunday 31', '<weekday> the? <day:int>', ({ weekday, day }) =>
    day >= 1 && day <= 31 ? unsure(nearestWeekdayDate(weekday, day)) : null,
  ),
  rule('day', 'the 10th', 'the <day:digitOrd>', ({ day }) => ordinal(nearestDayOfMonth(day))),
  rule('day', 'the tenth', 'the <day:ordDom>', ({ day }) => unsure(ordinal(nearestDayOfMonth(day)))),
  rule('day', '10th', '<day:digitOrd>', ({ day }) => unsure(ordinal(nearestDayOfMonth(day)))),
  rule('whole', 'tenth', '<day:ordDom>', ({ day }) => unsure(nearestDayOfMonth(day))),
  rule('day', 'the 24', 'the <day:int>', ({ day }) =>
    day >= 1 && day <= 31 ? unsure(nearestDayOfMonth(day)) : null,
  ),
  rule('phrase', 'on the 15', 'on the <day:int>', ({ day }) =>
    day >= 1 && day <= 31 ? unsure(nearestDayOfMonth(day)) : null,
  ),
  rule('whole', '3 May 26', '<day:dom> <month> <shortYear>', ({ day, month, shortYear }) =>
    dayInMonth(day, month, undefined, shortYear),
  ),
  rule('whole', 'May 3 26', '<month> <day:dom> ,? <shortYear>', ({ day, month, shortYear }) =>
    dayInMonth(day, month, undefined, shortYear),
  ),
  rule('whole', 'on 12', 'on <day:int>', ({ day }) =>
    day >= 1 && day <= 31 ? unsure(nearestDayOfMonth(day)) : null,
  ),
  rule(
    'day',
    'the 20th of next month',
    'the? <day:dom> day? of|in? the? <which=last|previous|this|next|coming|current|following> month',
    ({ day, which }) =>
      fixed(({ today }) =>
        resolvedDay(
          dayInMonthAway(
            today,
            which === 'last' || which === 'previous' ? -1 : which === 'this' || which === 'current' ? 0 : 1,
            day,
          ),
        ),
      ),
  ),
];
