/** Runs of days from one to another, and of so many days: "between the 3rd and the 6th", "last two weeks", "since Monday". */
import {
  addDays,
  asDay,
  type Day,
  daysBetween,
  dayOf,
  month as monthOfDay,
  year as yearOf,
} from '../../calendar/day.js';
import type { Span } from '../../calendar/span.js';
import {
  ambiguous,
  boundsOf,
  changed,
  fixed,
  impossible,
  isDoubt,
  nearestSpan,
  type Resolved,
  shifted,
  type When,
  when,
} from './meaning.js';
import type { Count } from './numbers.js';
import { monthSpan } from './months.js';
import { rule, type Unit } from './pattern.js';
import { daysFromToday } from './meaning.js';
import { movedBy } from './relative-days.js';

/**
 * From the first day of one to the last of another. An open end is the first such after the start; an open start the
 * last such before the end; where both are open, things done end in the past and plans begin in the future.
 */
export function fromTo(start: When, end: When): When {
  return {
    certain: true,
    mean: (leaning, now) => {
      const endFirst = start.open === true && (end.open !== true || leaning === 'past');
      const first = endFirst ? end.mean(leaning, now) : start.mean(leaning, now);
      if (isDoubt(first)) return first;
      const bounds = boundsOf(first);
      if (endFirst) {
        const before = start.mean('past', { ...now, today: bounds.to });
        return isDoubt(before) ? before : ordered(boundsOf(before).from, bounds.to);
      }
      const after =
        end.open === true ? end.mean('future', { ...now, today: bounds.from }) : end.mean(leaning, now);
      return isDoubt(after) ? after : ordered(bounds.from, boundsOf(after).to);
    },
  };
}

function ordered(from: Day, to: Day): Resolved {
  return from <= to ? { from, to } : impossible;
}

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

const today = daysFromToday(0);
const single: Count = { number: 1, exact: true };

function lastUnits(count: Count, unit: Unit): When {
  if (!count.exact) return fixed(() => ambiguous);
  return fixed((now) => ({
    from: startOf(movedBy(today, count, unit, -1).mean('past', now)),
    to: addDays(now.today, -1),
  }));
}

function nextUnits(count: Count, unit: Unit): When {
  if (!count.exact) return fixed(() => ambiguous);
  return fixed((now) => ({
    from: addDays(now.today, 1),
    to: startOf(movedBy(today, count, unit, 1).mean('future', now)),
  }));
}

function startOf(resolved: Resolved) {
  return isDoubt(resolved) ? asDay('1970-01-01') : boundsOf(resolved).from;
}

function within(count: Count, unit: Unit, from: When = today): When {
  if (!count.exact) return fixed(() => ambiguous);
  return changed(from, (start, now, leaning) => {
    const end = movedBy(
      fixed(() => ({ date: start.from })),
      count,
      unit,
      1,
    ).mean(leaning, now);
    return isDoubt(end) ? end : { from: start.from, to: boundsOf(end).to };
  });
}

/** A stretch that begins on a day and lasts so long; the last day counts. */
function lasting(from: When, count: Count, unit: Unit): When {
  return within(count, unit, from);
}

const joins = 'to|-|until|through';

/** Two days beside each other are a span; two apart are two days, of which a phrase cannot say one. */
function pair(first: When, last: When): When {
  return changed(fromTo(first, last), ({ from, to }) =>
    daysBetween(from, to) === 1 ? { from, to } : ambiguous,
  );
}

export const spans = [
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
    'the last fortnight',
    'in|over|for|during? the|this? last|past|previous <unit=fortnight>',
    ({ unit }) => lastUnits(single, unit),
  ),
  rule(
    'span',
    'the next fortnight',
    'in|over|for|during|within? the? next|coming|following <unit=fortnight>',
    ({ unit }) => nextUnits(single, unit),
  ),
  rule('span', 'first few days of May', 'the? first|last few days of <span>', () => fixed(() => ambiguous)),
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
  rule(
    'span',
    'last two weeks',
    'in|over|for|during? the|these? last|past|previous <count> <unit>',
    ({ count, unit }) => lastUnits(count, unit),
  ),
  rule('span', '6 previous weeks', '<count> last|past|previous <unit>', ({ count, unit }) =>
    lastUnits(count, unit),
  ),
  rule(
    'span',
    'next three weeks',
    'in|over|for|during|within? the? next|coming|following <count> <unit>',
    ({ count, unit }) => nextUnits(count, unit),
  ),
  rule('span', 'two next weeks', '<count> next|coming <unit>', ({ count, unit }) => nextUnits(count, unit)),
  rule('span', 'first ten days of May', 'the? first <count> day|days of <span>', ({ count, span }) =>
    count.exact ? changed(span, ({ from }) => ({ from, to: addDays(from, count.number - 1) })) : null,
  ),
  rule('span', 'last ten days of May', 'the? last <count> day|days of <span>', ({ count, span }) =>
    count.exact ? changed(span, ({ to }) => ({ from: addDays(to, 1 - count.number), to })) : null,
  ),
  rule('span', 'last five months of 2026', 'the? last <count> month|months of <span>', ({ count, span }) =>
    count.exact ? changed(span, ({ to }) => ({ from: lateMonths(to, count.number), to })) : null,
  ),
  rule('span', 'within two weeks', 'within <count> <unit>', ({ count, unit }) => within(count, unit)),
  rule(
    'span',
    'within two weeks of Friday',
    'within the? next? <count> <unit> of|from|after <day>',
    ({ count, unit, day }) => within(count, unit, day),
  ),
  rule('span', 'a week starting Friday', 'a week starting|from <day>', ({ day }) =>
    changed(day, ({ from }) => ({ from, to: addDays(from, 6) })),
  ),
];

function lateMonths(to: Span['to'], months: number) {
  return addDays(
    boundsOf(
      shifted(
        fixed(() => ({ date: addDays(to, 1) })),
        0,
        -months,
      ).mean('past', { today: to, timeNow: '12:00', zone: 'UTC', dateOrder: 'DMY' }) as Span,
    ).from,
    0,
  );
}

export const ranges = [
  rule('phrase', 'from Monday to Friday', `from? <start:when> ${joins} <end:when>`, ({ start, end }) =>
    fromTo(start, end),
  ),
  rule(
    'phrase',
    'between Monday and Friday',
    'between <start:when> and|to|-|until|through <end:when>',
    ({ start, end }) => fromTo(start, end),
  ),
  rule('phrase', 'Sat and Sun', 'on|over? <start:day> and|&|/ <end:day>', ({ start, end }) =>
    pair(start, end),
  ),
  rule('phrase', 'Saturday or Sunday', 'on? <start:when> or <end:when>', () => fixed(() => ambiguous)),
  rule('phrase', 'for five days from 3 May', 'for <count> <unit> from <day>', ({ count, unit, day }) =>
    lasting(day, count, unit),
  ),
  rule('phrase', 'from 3 May for five days', 'from <day> for <count> <unit>', ({ count, unit, day }) =>
    lasting(day, count, unit),
  ),
  rule('phrase', 'from now until Friday', 'from|between? now and|to|until|- <end:when>', ({ end }) =>
    fromTo(today, end),
  ),
  rule('phrase', 'from Monday until now', 'between|from? <start:when> and|to|until|- now', ({ start }) =>
    fromTo(start, today),
  ),
  rule('phrase', 'since Monday', 'since <when>', ({ when: start }) =>
    changed({ ...start, mean: (_, now) => start.mean('past', now) }, ({ from }, now) =>
      from <= now.today ? { from, to: now.today } : impossible,
    ),
  ),
];

export const bounds = [
  rule('whole', '', '<phrase>', ({ phrase }) => phrase),
  rule('phrase', '', '<when>', ({ when: phrase }) => phrase),
  rule(
    'phrase',
    'on Monday',
    'on|in|at|from|for|around|during|over|come|back|throughout around|in|on? <when>',
    ({ when: phrase }) => ({ ...phrase, certain: true }),
  ),
  rule('phrase', 'sometime in June', 'sometime in|on|over|during|around? <when>', ({ when: phrase }) => ({
    ...phrase,
    certain: true,
  })),
  rule(
    'phrase',
    'one day last week',
    'some|one|a|any time|day in|of|over|during? <when>',
    ({ when: phrase }) => ({ ...phrase, certain: true }),
  ),
  rule('phrase', 'all last week', 'for|over|during? all|most of? <span>', ({ span }) => ({
    ...span,
    certain: true,
  })),
  rule('phrase', 'through the week', 'all? through <span>', ({ span }) => ({ ...span, certain: true })),
  rule('phrase', 'next week sometime', '<when> sometime', ({ when: phrase }) => phrase),
  rule('phrase', 'towards the end of May', 'towards <when>', ({ when: phrase }) => ({
    ...phrase,
    certain: true,
  })),
  rule('phrase', 'by Friday at the latest', 'by? <when> at the? latest', ({ when: phrase }) =>
    lastDayOf(phrase),
  ),
  rule('phrase', 'before the end of May', 'before the? end of the? <span>', ({ span }) => lastDayOf(span)),
  rule('phrase', 'by the end of May', 'by|until|through for? the? <when>', ({ when: phrase }) =>
    lastDayOf(phrase),
  ),
  rule('phrase', 'before Easter', 'before <when>', ({ when: phrase }) =>
    changed({ ...phrase, certain: true }, ({ from }) => ({ date: addDays(from, -1) })),
  ),
  rule('phrase', 'after Easter', 'after <when>', ({ when: phrase }) =>
    changed({ ...phrase, certain: true }, ({ to }) => ({ date: addDays(to, 1) })),
  ),
];

function lastDayOf(phrase: When): When {
  return changed({ ...phrase, certain: true }, ({ to }) => ({ date: to }));
}
