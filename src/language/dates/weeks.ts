/** Weeks and weekends: "last week", "w/c 23 March", "the weekend before last", "second week of June". */
import {
  addDays,
  asDay,
  type Day,
  dayOf,
  daysBetween,
  daysInMonth,
  month as monthOfDay,
  weekday as weekdayOf,
  year as yearOf,
} from '../../calendar/day.js';
import { type Span, weekendOf, weekOf } from '../../calendar/span.js';
import {
  ambiguous,
  changed,
  daysSinceWeekday,
  fixed,
  impossible,
  nearestSpan,
  type Resolved,
  type When,
  when,
} from './meaning.js';
import { rule } from './pattern.js';

const away = {
  last: -1,
  previous: -1,
  past: -1,
  gone: -1,
  this: 0,
  current: 0,
  the: 0,
  next: 1,
  following: 1,
  coming: 1,
};
type Which = keyof typeof away;

function week(weeks: number): When {
  return fixed(({ today }) => weekOf(addDays(today, 7 * weeks)));
}

/** The latest weekend that is over before today's week, the coming one, and so on. */
function weekend(weeks: number): When {
  return fixed(({ today }) => weekendOf(addDays(today, 7 * weeks)));
}

/** "At the weekend": of things done the latest that has begun, of plans the first that has not ended on the day. */
const theWeekend = when((leaning, { today }) => {
  const ofThisWeek = weekendOf(today);
  if (leaning === 'past') return ofThisWeek.from <= today ? ofThisWeek : weekendOf(addDays(today, -7));
  return today < ofThisWeek.to ? ofThisWeek : weekendOf(addDays(today, 7));
});

const weekOfDay = (day: When): When => weekNear(day, ({ from }) => weekOf(from));

/** A week or weekend that a day names: certain whatever the day alone would be. */
function weekNear(day: When, change: (span: Span) => Resolved): When {
  return { ...changed(day, change), certain: true };
}

/** Monday of the first week of the year by ISO 8601: the one that holds 4 January. */
function firstWeekMonday(year: number): Day {
  return weekOf(asDay(`${year}-01-04`)).from;
}

function numberedWeek(number: number, year: number): Resolved {
  const monday = addDays(firstWeekMonday(year), 7 * (number - 1));
  return number >= 1 && monday < firstWeekMonday(year + 1) ? weekOf(monday) : impossible;
}

function lastWeekOfYear(year: number): Span {
  return weekOf(addDays(firstWeekMonday(year + 1), -1));
}

/** The nth seven days of a month, from its first day. */
function nthWeekOfMonth(nth: number, year: number, month: number): Span | null {
  const from = dayOf(year, month, 7 * (nth - 1) + 1);
  if (from === null) return null;
  const last = daysInMonth(year, month);
  return { from, to: addDays(from, Math.min(6, last - (7 * (nth - 1) + 1))) };
}

function lastWeekOfMonth(year: number, month: number): Span | null {
  const to = dayOf(year, month, daysInMonth(year, month));
  return to && { from: addDays(to, -6), to };
}

function inMonth(ofMonth: (year: number, month: number) => Span | null, month: number, year?: number): When {
  if (year !== undefined) return fixed(() => ofMonth(year, month) ?? impossible);
  return nearestSpan((each) => ofMonth(each, month));
}

function inSpanMonth(ofMonth: (year: number, month: number) => Span | null, span: When): When {
  return changed({ ...span, certain: true }, ({ from, to }) => {
    if (from.slice(0, 7) !== to.slice(0, 7)) return ambiguous;
    return ofMonth(yearOf(from), monthOfDay(from)) ?? impossible;
  });
}

/** The last weekend whose Saturday lies in the month; the nth likewise. */
function nthWeekend(nth: number): (year: number, month: number) => Span | null {
  return (year, month) => {
    const first = asDay(`${year}-${String(month).padStart(2, '0')}-01`);
    const last = addDays(first, daysInMonth(year, month) - 1);
    const saturday =
      nth > 0
        ? addDays(first, ((6 - weekdayOf(first) + 7) % 7) + 7 * (nth - 1))
        : addDays(last, 1 - daysSinceWeekday(addDays(last, 1), 6) - 0);
    return saturday >= first && saturday <= last ? { from: saturday, to: addDays(saturday, 1) } : null;
  };
}

function midweek(span: When): When {
  return changed({ ...span, certain: true }, ({ from, to }) =>
    daysBetween(from, to) === 6 ? { from: addDays(from, 1), to: addDays(from, 3) } : ambiguous,
  );
}

export const weeks = [
  rule(
    'span',
    'last week',
    'the? <which=last|previous|past|this|current|next|following|coming> coming? week',
    ({ which }) => week(away[which as Which]),
  ),
  rule('span', 'the week', 'the|all week', () => week(0)),
  rule('span', 'the week gone', 'the? week just? gone|past', () => week(-1)),
  rule('span', 'the week before last', 'the? week before last', () => week(-2)),
  rule('span', 'last week but one', 'the? last week but one', () => week(-2)),
  rule('span', 'the week after next', 'the? week after next', () => week(2)),
  rule('span', 'the other week', 'the other week|weekend', () => fixed(() => ambiguous)),
  rule('span', 'w/c 23 March', 'the? w|week / c|commencing|beginning|b|s <day>', ({ day }) => weekOfDay(day)),
  rule(
    'span',
    'week commencing 23 March',
    'the? week commencing|beginning|starting|of|from on? <day>',
    ({ day }) => weekFrom(day),
  ),
  rule('span', 'wc 23 March', 'wc|wb|ws <day>', ({ day }) => weekOfDay(day)),
  rule('span', 'week ending 29 March', 'the? week ending|to|ended on? <day>', ({ day }) =>
    weekNear(day, ({ from }) => ({ from: addDays(from, -6), to: from })),
  ),
  rule('span', 'w/e 29 March', 'the? w / e|ending <day>', ({ day }) =>
    weekNear(day, ({ from }) => ({ from: addDays(from, -6), to: from })),
  ),
  rule('span', 'a week before Easter', 'the? week before <day>', ({ day }) =>
    weekNear(day, ({ from }) => weekOf(addDays(from, -7))),
  ),
  rule('span', 'the week after Easter', 'the? week after|following <day>', ({ day }) =>
    weekNear(day, ({ from }) => weekOf(addDays(from, 7))),
  ),
  rule('span', 'week 12', 'week number|no? <int>', ({ int }) => ({
    ...fixed(({ today }) => numberedWeek(int, yearOf(today))),
    certain: false,
  })),
  rule('span', 'week 27 of 2026', 'week number|no? <int> of|in? <year>', ({ int, year }) =>
    fixed(() => numberedWeek(int, year)),
  ),
  rule(
    'span',
    'week 27 of last year',
    'week number|no? <int> of <which=last|this|next> year',
    ({ int, which }) => fixed(({ today }) => numberedWeek(int, yearOf(today) + away[which as Which])),
  ),
  rule('span', 'second week of 2026', 'the? <ord> week of|in <year>', ({ ord, year }) =>
    fixed(() => numberedWeek(ord, year)),
  ),
  rule('span', 'last week of 2026', 'the? last week of|in <year>', ({ year }) =>
    fixed(() => lastWeekOfYear(year)),
  ),
  rule(
    'span',
    'first week of this year',
    'the? <ord> week of|in <which=last|this|next|the> year',
    ({ ord, which }) => fixed(({ today }) => numberedWeek(ord, yearOf(today) + away[which as Which])),
  ),
  rule('span', 'last week of the year', 'the? last week of|in <which=last|this|next|the> year', ({ which }) =>
    fixed(({ today }) => lastWeekOfYear(yearOf(today) + away[which as Which])),
  ),
  rule('span', 'second week of June', 'the? <ord> week of|in? <month> ,? <year>?', ({ ord, month, year }) =>
    inMonth((y, m) => nthWeekOfMonth(ord, y, m), month, year),
  ),
  rule('span', 'last week of June', 'the? last|final week of|in <month> ,? <year>?', ({ month, year }) =>
    inMonth(lastWeekOfMonth, month, year),
  ),
  rule('span', 'last week June', 'last week <month>', ({ month }) =>
    month >= 3 && month <= 6 ? null : inMonth(lastWeekOfMonth, month),
  ),
  rule('span', 'first week of next month', 'the? <ord> week of|in <span>', ({ ord, span }) =>
    inSpanMonth((y, m) => nthWeekOfMonth(ord, y, m), span),
  ),
  rule('span', 'last week of the month', 'the? last|final week of|in the month', () =>
    inSpanMonth(
      lastWeekOfMonth,
      fixed(({ today }) => ({ date: today })),
    ),
  ),
  rule('span', 'first week of the month', 'the? <ord> week of|in the month', ({ ord }) =>
    inSpanMonth(
      (y, m) => nthWeekOfMonth(ord, y, m),
      fixed(({ today }) => ({ date: today })),
    ),
  ),
  rule('span', 'midweek', 'midweek', () => midweek(week(0))),
  rule('span', 'midweek next week', 'midweek ,? of? <span>', ({ span }) => midweek(span)),
  rule('span', 'next week midweek', '<which=last|this|next> week midweek', ({ which }) =>
    midweek(week(away[which])),
  ),
  rule('span', 'the weekend after Easter', 'the? weekend after|following <day>', ({ day }) =>
    weekNear(day, ({ to }) => weekendOf(weekdayOf(to) >= 6 ? addDays(to, 7) : to)),
  ),
  rule('span', 'the weekend before Easter', 'the? weekend before <day>', ({ day }) =>
    weekNear(day, ({ from }) => weekendOf(addDays(from, -7))),
  ),
  rule('span', 'last week of next month', 'the? last|final week of|in <span>', ({ span }) =>
    inSpanMonth(lastWeekOfMonth, span),
  ),
  rule('span', 'the weekend', 'the weekend', () => theWeekend),
  rule('span', 'weekend', 'weekend', () => ({ ...theWeekend, certain: false })),
  rule('span', 'this weekend', 'this weekend', () =>
    when((leaning, { today }) =>
      leaning === 'past' && weekendOf(today).from > today ? weekendOf(today) : weekendOf(today),
    ),
  ),
  rule('span', 'last weekend', 'the? last|previous|past weekend', () => weekend(-1)),
  rule('span', 'weekend gone', 'the|this? weekend just? gone|past|been', () =>
    when((_, { today }) => weekendOf(addDays(today, -7))),
  ),
  rule('span', 'the weekend just gone', 'this past weekend', () => weekend(-1)),
  rule('span', 'next weekend', 'the? next weekend', () => weekend(1)),
  rule('span', 'the coming weekend', 'the|this? coming|following weekend', () => weekend(0)),
  rule('span', 'two weekends ago', '<count> weekend|weekends ago|back', ({ count }) =>
    count.exact ? weekend(-count.number) : fixed(() => ambiguous),
  ),
  rule('span', 'the weekend before last', 'the? weekend before last', () => weekend(-2)),
  rule('span', 'last weekend but one', 'the? last weekend but one', () => weekend(-2)),
  rule('span', 'the weekend coming', 'the|this? weekend coming|come', () => weekend(0)),
  rule('span', 'the weekend after next', 'the? weekend after the? next', () => weekend(2)),
  rule('span', 'a week last weekend', 'a? week last weekend', () => weekend(-2)),
  rule('span', 'weekend week', 'a? week on|at the|this weekend', () => weekend(1)),
  rule('span', 'the weekend of the 4th', 'the? weekend of|around <day>', ({ day }) =>
    weekNear(day, ({ from }) => nearestWeekend(from)),
  ),
  rule(
    'span',
    'first weekend in June',
    'the? <ord> weekend of|in <month> ,? <year>?',
    ({ ord, month, year }) => inMonth(nthWeekend(ord), month, year),
  ),
  rule('span', 'last weekend in June', 'the? last weekend of|in <month> ,? <year>?', ({ month, year }) =>
    inMonth(nthWeekend(-1), month, year),
  ),
  rule('span', 'first weekend of next month', 'the? <ord> weekend of|in <span>', ({ ord, span }) =>
    inSpanMonth(nthWeekend(ord), span),
  ),
  rule('span', 'last weekend of next month', 'the? last weekend of|in <span>', ({ span }) =>
    inSpanMonth(nthWeekend(-1), span),
  ),
];

/** A named Monday begins its week; another day, the seven from it on where "starting" is said of it. */
function weekFrom(day: When): When {
  return weekOfDay(day);
}

function nearestWeekend(day: Day): Span {
  const own = weekendOf(day);
  return weekdayOf(day) <= 2 ? weekendOf(addDays(day, -7)) : own;
}
