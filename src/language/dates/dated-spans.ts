/** Runs of days of one month or from month to month: "3-6 May", "between the 3rd and the 6th", "May to October". */
import { addDays, dayOf, month as monthOfDay, year as yearOf } from '../../calendar/day.js';
import type { Span } from '../../calendar/span.js';
import { ambiguous, boundsOf, fixed, impossible, isDoubt, nearestSpan, type When, when } from './meaning.js';
import { monthSpan } from './months.js';
import { rule } from './pattern.js';
import { joins } from './from-to.js';

/** From one month to another, the year named once or not at all. */
function monthToMonth(first: number, last: number, year?: number): When {
  const endingIn = (each: number): Span => ({
    from: monthSpan(last < first ? each - 1 : each, first).from,
    to: monthSpan(each, last).to,
  });
  return year === undefined ? nearestSpan(endingIn) : fixed(() => endingIn(year));
}

/** Days of one month, the month named once; a to-day before the from-day lies in the month after. */
function daysOfMonth(first: number, last: number, month: number, year?: number): When {
  const ofYear = (each: number): Span | null => {
    const from = dayOf(each, month, first);
    const inNext = last < first;
    const to = inNext
      ? dayOf(month === 12 ? each + 1 : each, (month % 12) + 1, last)
      : dayOf(each, month, last);
    return from && to && { from, to };
  };
  if (year !== undefined) return fixed(() => ofYear(year) ?? impossible);
  return when((leaning, now) => {
    const years = leaning === 'past' ? [0, -1] : [0, 1];
    for (const away of years) {
      const span = ofYear(yearOf(now.today) + away);
      if (span === null) return impossible;
      if (leaning === 'past' ? span.from <= now.today : span.from > now.today) {
        if (leaning === 'past' && away < 0 && span.to < addDays(now.today, -183))
          return { problem: 'tooFarBack', options: [span] };
        return span;
      }
    }
    return impossible;
  });
}

/** "Between the 3rd and the 6th": in the nearest month. */
function daysOfSomeMonth(first: number, last: number): When {
  return when((leaning, now) => {
    if (first > 31 || last > 31) return impossible;
    const step = leaning === 'past' ? -1 : 1;
    for (let months = 0; months <= 12; months++) {
      const index = yearOf(now.today) * 12 + monthOfDay(now.today) - 1 + step * months;
      const span = daysOfMonth(first, last, (index % 12) + 1, Math.floor(index / 12)).mean(leaning, now);
      if (isDoubt(span)) continue;
      if (leaning === 'past' ? boundsOf(span).from <= now.today : boundsOf(span).from > now.today)
        return span;
    }
    return impossible;
  });
}

const away = { last: -1, previous: -1, this: 0, current: 0, next: 1, coming: 1 };

function daysOfMonthAway(first: number, last: number, months: number): When {
  return when((leaning, now) => {
    const index = yearOf(now.today) * 12 + monthOfDay(now.today) - 1 + months;
    return daysOfMonth(first, last, (index % 12) + 1, Math.floor(index / 12)).mean(leaning, now);
  });
}

export const datedSpans = [
  rule(
    'span',
    'between May and October 2026',
    'between <first:month> and|to|-|until|through <last:month> ,? of|in? <year>?',
    ({ first, last, year }) => monthToMonth(first, last, year),
  ),
  rule(
    'span',
    'between the 3rd and the 6th of May',
    'between the? <first:dom> and|to|-|until|through the? <last:dom> of? <month> ,? of|in? <year>?',
    ({ first, last, month, year }) => daysOfMonth(first, last, month, year),
  ),
  rule(
    'span',
    'between May 3 and 6',
    'between <month> the? <first:dom> and|to|-|until|through the? <last:dom> ,? of|in? <year>?',
    ({ first, last, month, year }) => daysOfMonth(first, last, month, year),
  ),
  rule(
    'span',
    '17/18 May',
    'weekend? the? <first:dom> /|&|and the? <last:dom> of? <month> ,? of|in? <year>?',
    ({ first, last, month, year }) =>
      first + 1 === last ? daysOfMonth(first, last, month, year) : fixed(() => ambiguous),
  ),
  rule(
    'span',
    'May 17/18',
    '<month> the? <first:dom> /|&|and the? <last:dom> ,? of|in? <year>?',
    ({ first, last, month, year }) =>
      first + 1 === last ? daysOfMonth(first, last, month, year) : fixed(() => ambiguous),
  ),
  rule(
    'span',
    'the 17th and 18th',
    'the? <first:digitOrd> /|&|and the? <last:digitOrd>',
    ({ first, last }) => (first + 1 === last ? daysOfSomeMonth(first, last) : fixed(() => ambiguous)),
  ),
  rule(
    'span',
    'from May to October 2026',
    `from|between? <first:month> ${joins} <last:month> ,? of|in? <year>?`,
    ({ first, last, year }) => monthToMonth(first, last, year),
  ),
  rule(
    'span',
    'from the 3rd to the 6th of May',
    `from|between? the? <first:dom> ${joins} the? <last:dom> of? <month> ,? of|in? <year>?`,
    ({ first, last, month, year }) => daysOfMonth(first, last, month, year),
  ),
  rule(
    'span',
    'May 3 to 6',
    `from|between? <month> the? <first:dom> ${joins} the? <last:dom> ,? of|in? <year>?`,
    ({ first, last, month, year }) => daysOfMonth(first, last, month, year),
  ),
  rule(
    'span',
    'May between 3 and 6',
    '<month> between|from the? <first:dom> and|to|- the? <last:dom>',
    ({ first, last, month }) => daysOfMonth(first, last, month),
  ),
  rule(
    'span',
    '4 to 23 next month',
    `from|between? the? <first:dom> ${joins}|and the? <last:dom> of|in? <which=last|previous|this|current|next|coming> month`,
    ({ first, last, which }) => daysOfMonthAway(first, last, away[which]),
  ),
  rule(
    'span',
    'between the 3rd and the 6th',
    'between the? <first:ordDom> and|- the? <last:ordDom>',
    ({ first, last }) => daysOfSomeMonth(first, last),
  ),
  rule(
    'span',
    'from the 3rd to the 6th',
    `from? the? <first:ordDom> ${joins} the? <last:ordDom>`,
    ({ first, last }) => daysOfSomeMonth(first, last),
  ),
];
