/** Weekdays and the words that move them: "Saturday gone", "a week last Sunday", "Sunday week", "first Monday in May". */
import {
  addDays,
  asDay,
  type Day,
  daysInMonth,
  month as monthOfDay,
  weekday as weekdayOf,
  year as yearOf,
} from '../../calendar/day.js';
import { type Span, weekOf } from '../../calendar/span.js';
import {
  ambiguous,
  changed,
  daysSinceWeekday,
  daysUntilWeekday,
  fixed,
  impossible,
  type Meaning,
  nearestDay,
  open,
  type Resolved,
  shifted,
  unsure,
  type When,
  when,
} from './meaning.js';
import type { Unit } from './captures.js';
import { rule } from './pattern.js';
import { movedBy } from './relative-days.js';

/** The nearest: for things done today counts, for plans it does not. */
export function nearestWeekday(weekday: number): When {
  return open((leaning, { today }) => ({
    date:
      leaning === 'past'
        ? addDays(today, 1 - daysSinceWeekday(addDays(today, 1), weekday))
        : addDays(today, daysUntilWeekday(today, weekday)),
  }));
}

/** The latest such day before today. */
export function lastWeekday(weekday: number): When {
  return fixed(({ today }) => ({ date: addDays(today, -daysSinceWeekday(today, weekday)) }));
}

/** The first such day after today. */
export function comingWeekday(weekday: number): When {
  return fixed(({ today }) => ({ date: addDays(today, daysUntilWeekday(today, weekday)) }));
}

/** The weekday of the week that lies so many weeks from this one. */
function weekdayOfWeek(weekday: number, weeks: number): When {
  return fixed(({ today }) => ({ date: addDays(weekOf(today).from, weeks * 7 + weekday - 1) }));
}

/** "This Tuesday": the coming one; of things done, this week's where it has come. */
function thisWeekday(weekday: number): When {
  const mean: Meaning = (leaning, { today }) => {
    const ofThisWeek = addDays(weekOf(today).from, weekday - 1);
    if (ofThisWeek >= today || leaning === 'past') return { date: ofThisWeek };
    return { date: addDays(today, daysUntilWeekday(today, weekday)) };
  };
  return { ...when(mean), leans: 'future' };
}

/** The nth weekday of a month, negative counted from its end; null where the month has no such. */
export function nthWeekday(nth: number, weekday: number, year: number, month: number): Day | null {
  const first = asDay(`${year}-${String(month).padStart(2, '0')}-01`);
  const last = addDays(first, daysInMonth(year, month) - 1);
  const day =
    nth > 0
      ? addDays(first, ((weekday - weekdayOf(first) + 7) % 7) + 7 * (nth - 1))
      : addDays(last, -((weekdayOf(last) - weekday + 7) % 7) + 7 * (nth + 1));
  return day >= first && day <= last ? day : null;
}

const resolved = (day: Day | null): Resolved => (day === null ? impossible : { date: day });

function nthWeekdayOf(nth: number, weekday: number, month: number, year?: number): When {
  if (year !== undefined) return fixed(() => resolved(nthWeekday(nth, weekday, year, month)));
  return nearestDay((each) => nthWeekday(nth, weekday, each, month));
}

/** The nth such weekday inside a span. */
function nthWeekdayIn(nth: number, weekday: number, span: When): When {
  return changed({ ...span, certain: true }, (within: Span) => {
    const day =
      nth > 0
        ? addDays(within.from, ((weekday - weekdayOf(within.from) + 7) % 7) + 7 * (nth - 1))
        : addDays(within.to, -((weekdayOf(within.to) - weekday + 7) % 7));
    return day >= within.from && day <= within.to ? { date: day } : impossible;
  });
}

const weeks = {
  last: -1,
  previous: -1,
  past: -1,
  this: 0,
  current: 0,
  the: 0,
  next: 1,
  following: 1,
  coming: 1,
};
type Which = keyof typeof weeks;
const one = { number: 1, exact: true };

export const weekdays = [
  rule('day', 'Tuesday', '<weekday>', ({ weekday }) => nearestWeekday(weekday)),
  rule('day', 'last Tuesday', 'this? last|past|previous|just <weekday>', ({ weekday }) =>
    lastWeekday(weekday),
  ),
  rule('day', 'the last Tuesday', 'the last <weekday>', ({ weekday }) => lastWeekday(weekday)),
  rule('day', 'Tuesday gone', 'this|last? <weekday> just? gone|past|last', ({ weekday }) =>
    lastWeekday(weekday),
  ),
  rule('day', 'next Tuesday', 'the? next <weekday>', ({ weekday }) => weekdayOfWeek(weekday, 1)),
  rule('day', 'Tuesday next', '<weekday> next', ({ weekday }) => weekdayOfWeek(weekday, 1)),
  rule('day', 'this Tuesday', 'this <weekday>', ({ weekday }) => thisWeekday(weekday)),
  rule('day', 'this coming Tuesday', 'this|the? coming|following <weekday>', ({ weekday }) =>
    comingWeekday(weekday),
  ),
  rule('day', 'Tuesday coming', 'this? <weekday> coming|come', ({ weekday }) => comingWeekday(weekday)),
  rule('day', 'Tuesday week', '<weekday> <unit=week|fortnight>', ({ weekday, unit }) =>
    movedBy(comingWeekday(weekday), one, unit, 1),
  ),
  rule('day', 'Tuesday a week', '<weekday> <count> <unit:weekUnit> later?', ({ weekday, count, unit }) =>
    movedBy(comingWeekday(weekday), count, unit, 1),
  ),
  rule(
    'day',
    'a week last Sunday',
    '<count>? <unit> ago|back? last|past|gone <weekday>',
    ({ count, unit, weekday }) => movedBy(lastWeekday(weekday), count ?? one, unit, -1),
  ),
  rule(
    'day',
    'a week Sunday gone',
    '<count>? <unit> ago? <weekday> just? gone|past|last',
    ({ count, unit, weekday }) => movedBy(lastWeekday(weekday), count ?? one, unit, -1),
  ),
  rule(
    'day',
    'Saturday week gone',
    'last? <weekday> just? gone|past|last? a? <unit=week|fortnight> gone|past|ago|back',
    ({ unit, weekday }) => movedBy(lastWeekday(weekday), one, unit, -1),
  ),
  rule('day', 'last Saturday week', 'last <weekday> a? <unit=week|fortnight>', ({ unit, weekday }) =>
    movedBy(lastWeekday(weekday), one, unit, -1),
  ),
  rule(
    'day',
    'Saturday gone a week',
    '<weekday> just? gone|past a? <unit=week|fortnight>',
    ({ unit, weekday }) => movedBy(lastWeekday(weekday), one, unit, -1),
  ),
  // Irish: the Tuesday a week before the last.
  rule(
    'day',
    'Tuesday was a week',
    'last? <weekday> was a? <unit=week|fortnight> ago?',
    ({ unit, weekday }) => movedBy(lastWeekday(weekday), one, unit, -1),
  ),
  // "Wednesday last week" is the Wednesday of last week.
  rule('day', 'Saturday last, a week', '<weekday> last ,? a <unit=week|fortnight>', ({ unit, weekday }) =>
    movedBy(lastWeekday(weekday), one, unit, -1),
  ),
  rule('day', 'next Tuesday but one', 'the? next <weekday> but one', () => fixed(() => ambiguous)),
  rule('day', 'next Tuesday week', 'next <weekday> a? <unit=week|fortnight>', () => fixed(() => ambiguous)),
  rule('day', 'this Tuesday week', 'this coming? <weekday> a? <unit=week|fortnight>', ({ unit, weekday }) =>
    movedBy(comingWeekday(weekday), one, unit, 1),
  ),
  rule('day', 'a week come Sunday', '<count> <unit> come <weekday>', ({ count, unit, weekday }) =>
    movedBy(comingWeekday(weekday), count, unit, 1),
  ),
  rule('day', 'a week ago on Sunday', '<count> <unit> ago|back on? <weekday>', ({ count, unit, weekday }) =>
    movedBy(lastWeekday(weekday), count, unit, -1),
  ),
  rule(
    'day',
    'a week on Sunday',
    '<count>? <unit:weekUnit> on|from|this|coming <weekday>',
    ({ count, unit, weekday }) => movedBy(comingWeekday(weekday), count ?? one, unit, 1),
  ),
  rule(
    'day',
    'a week from this Sunday',
    '<count> <unit> from|on this|coming|next <weekday>',
    ({ count, unit, weekday }) => movedBy(comingWeekday(weekday), count, unit, 1),
  ),
  rule('day', 'a week Sunday', '<count> <unit:weekUnit> <weekday>', ({ count, unit, weekday }) => {
    const back = movedBy(lastWeekday(weekday), count, unit, -1);
    const on = movedBy(comingWeekday(weekday), count, unit, 1);
    return when((leaning, now) => (leaning === 'past' ? back : on).mean(leaning, now));
  }),
  rule('day', 'a week next Tuesday', '<count> <unit:weekUnit> next <weekday>', () => fixed(() => ambiguous)),
  rule('day', 'Sunday before last', 'the? <weekday> before last', ({ weekday }) =>
    shifted(lastWeekday(weekday), -7),
  ),
  rule('day', 'last Sunday but one', 'the? last <weekday> but one', ({ weekday }) =>
    shifted(lastWeekday(weekday), -7),
  ),
  rule('day', 'Sunday after next', 'the? <weekday> after next', ({ weekday }) =>
    shifted(comingWeekday(weekday), 7),
  ),
  rule(
    'day',
    'Wednesday of next week',
    'the? <weekday> of|in? the? <which=last|previous|past|this|current|next|following|coming> week',
    ({ weekday, which }) => weekdayOfWeek(weekday, weeks[which as Which]),
  ),
  rule(
    'day',
    "next week's Wednesday",
    'the? <which=last|previous|this|current|next|following|coming> week on|,? <weekday>',
    ({ weekday, which }) => weekdayOfWeek(weekday, weeks[which as Which]),
  ),
  rule(
    'day',
    'Monday six weeks from now',
    '<weekday> ,? <count> <unit> from now',
    ({ weekday, count, unit }) =>
      inWeekOf(
        weekday,
        movedBy(
          fixed(({ today }) => ({ date: today })),
          count,
          unit,
          1,
        ),
        unit,
      ),
  ),
  rule('day', 'Monday in two weeks', '<weekday> in <count> <unit> time?', ({ weekday, count, unit }) =>
    inWeekOf(
      weekday,
      movedBy(
        fixed(({ today }) => ({ date: today })),
        count,
        unit,
        1,
      ),
      unit,
    ),
  ),
  rule('day', 'Monday six weeks ago', '<weekday> ,? <count> <unit> ago|back', ({ weekday, count, unit }) =>
    inWeekOf(
      weekday,
      movedBy(
        fixed(({ today }) => ({ date: today })),
        count,
        unit,
        -1,
      ),
      unit,
    ),
  ),
  rule('day', 'two Sundays ago', '<count> <weekdays> ago|back', ({ count, weekdays: weekday }) =>
    count.exact ? shifted(lastWeekday(weekday), -7 * (count.number - 1)) : fixed(() => ambiguous),
  ),
  rule('day', 'two Sundays from now', '<count> <weekdays> from now', ({ count, weekdays: weekday }) =>
    count.exact ? shifted(comingWeekday(weekday), 7 * (count.number - 1)) : fixed(() => ambiguous),
  ),
  rule(
    'day',
    'first Monday in May',
    'the? <nth=last> <weekday> of|in <month> ,? of|in? <year>?',
    ({ weekday, month, year }) => nthWeekdayOf(-1, weekday, month, year),
  ),
  rule(
    'day',
    'last Monday in May',
    'the? <ord> <weekday> of|in <month> ,? of|in? <year>?',
    ({ ord, weekday, month, year }) => nthWeekdayOf(ord, weekday, month, year),
  ),
  rule('day', 'first Friday of next month', 'the? <ord> <weekday> of|in <span>', ({ ord, weekday, span }) =>
    nthWeekdayIn(ord, weekday, span),
  ),
  rule('day', 'last Friday of next month', 'the? last <weekday> of|in <span>', ({ weekday, span }) =>
    nthWeekdayIn(-1, weekday, span),
  ),
  rule('day', 'third Tuesday', 'the? <ord> <weekday>', ({ ord, weekday }) =>
    unsure(fixed(({ today }) => resolved(nthWeekday(ord, weekday, yearOf(today), monthOfDay(today))))),
  ),
];

function inWeekOf(weekday: number, day: When, unit: Unit): When {
  return changed(day, ({ from }) => {
    if (unit === 'week' || unit === 'fortnight') return { date: addDays(weekOf(from).from, weekday - 1) };
    return { date: weekdayOf(from) === weekday ? from : addDays(from, daysUntilWeekday(from, weekday)) };
  });
}
