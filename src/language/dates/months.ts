/** Months, years and parts of them: "in March", "back end of May", "June next year", "mid next week". */
import {
  addDays,
  addMonths,
  asDay,
  type Day,
  month as monthOfDay,
  weekday,
  year as yearOf,
} from '../../calendar/day.js';
import { monthOf, type Span } from '../../calendar/span.js';
import { nearestDayOfMonth } from './calendar-days.js';
import { ambiguous, changed, fixed, impossible, nearestSpan, unsure, type When, when } from './meaning.js';
import { rule } from './pattern.js';

const away = {
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
type Which = keyof typeof away;

export function monthSpan(year: number, month: number): Span {
  return monthOf(asDay(`${year}-${String(month).padStart(2, '0')}-01`));
}

function yearSpan(year: number): Span {
  return { from: asDay(`${year}-01-01`), to: asDay(`${year}-12-31`) };
}

function openMonth(month: number): When {
  return nearestSpan((year) => monthSpan(year, month));
}

/** The latest such month over before this one. */
function lastMonth(month: number): When {
  return fixed(({ today }) => {
    const ofYear = monthSpan(yearOf(today), month);
    if (ofYear.to < today) return ofYear;
    if (ofYear.from > today) return monthSpan(yearOf(today) - 1, month);
    return { problem: 'ambiguous', options: [monthSpan(yearOf(today) - 1, month), ofYear] };
  });
}

/** The first such month that has not begun. */
function nextMonth(month: number): When {
  return fixed(({ today }) => monthSpan(yearOf(today) + (monthOfDay(today) < month ? 0 : 1), month));
}

export type Part = 'early' | 'mid' | 'late';

const parts: Record<string, Part> = {
  early: 'early',
  beginning: 'early',
  mid: 'mid',
  late: 'late',
  end: 'late',
};

/** A part of a span: of a month in tens, of a week in days, of longer spans in whole months, of any other in thirds. */
export function partOf(span: Span, part: Part): Span {
  const days = lengthOf(span);
  const cut = (from: number, to: number) => ({ from: addDays(span.from, from), to: addDays(span.from, to) });
  if (days === 7) return part === 'early' ? cut(0, 1) : part === 'mid' ? cut(1, 3) : cut(4, 6);
  if (days < 28) {
    const third = { early: 0, mid: 1, late: 2 }[part];
    const first = Math.floor((days * third) / 3);
    return cut(first, Math.max(first, Math.floor((days * (third + 1)) / 3) - 1));
  }
  if (days <= 31) return part === 'early' ? cut(0, 9) : part === 'mid' ? cut(10, 19) : cut(20, days - 1);
  const months = Math.round(days / 30.4);
  const third = Math.max(1, Math.floor(months / 3));
  const wanted =
    part === 'early'
      ? [0, months > 6 ? 3 : third]
      : part === 'mid'
        ? months > 6
          ? [4, 8]
          : [third, 2 * third]
        : [months > 6 ? 9 : 2 * third, months];
  return {
    from: addMonths(span.from, wanted[0] ?? 0),
    to: addDays(addMonths(span.from, wanted[1] ?? 0), -1),
  };
}

function lengthOf({ from, to }: Span): number {
  return Math.round((Date.parse(to) - Date.parse(from)) / 86_400_000) + 1;
}

const partOfPhrase = (span: When, word: string): When => ({
  ...changed(span, (whole) => partOf(whole, parts[word] ?? 'late')),
  certain: true,
});

export const months = [
  rule('day', 'last day of May', 'the? very? last day of|in <span>', ({ span }) =>
    changed(span, ({ to }) => ({ date: to })),
  ),
  rule('day', 'first day of May', 'the? very? <ord> day of|in <span>', ({ ord, span }) => nthDay(span, ord)),
  rule('day', 'last day of the month', 'the? very? last day of|in the? <unit=week|month|year>', ({ unit }) =>
    changed(currentSpan(unit), ({ to }) => ({ date: to })),
  ),
  rule(
    'day',
    'first day of the month',
    'the? very? <ord> day of|in the? <unit=week|month|year>',
    ({ ord, unit }) => nthDay(currentSpan(unit), ord),
  ),
  rule('day', 'the 12th of the month', 'the? <day:ordDom> of the month', ({ day }) => nearestDayOfMonth(day)),
  rule('span', 'March', '<month>', ({ month }) => openMonth(month)),
  rule('span', 'month of March', 'the? month of <month>', ({ month }) => openMonth(month)),
  rule('span', 'March 2026', '<month> ,|-|/|of|in? <year>', ({ month, year }) =>
    fixed(() => monthSpan(year, month)),
  ),
  rule('span', "March '26", "<month> '|\u2019 <shortYear>", ({ month, shortYear }) =>
    fixed(() => monthSpan(2000 + shortYear, month)),
  ),
  rule('span', '2026 March', '<year> ,|-|/? <month>', ({ month, year }) =>
    fixed(() => monthSpan(year, month)),
  ),
  rule('span', '3/2026', '<int> /|- <year>', ({ int, year }) =>
    int >= 1 && int <= 12 ? fixed(() => monthSpan(year, int)) : null,
  ),
  rule('span', '2026/3', '<year> /|- <int>', ({ int, year }) =>
    int >= 1 && int <= 12 ? fixed(() => monthSpan(year, int)) : null,
  ),
  rule('span', 'last March', 'last|previous|past <month>', ({ month }) => lastMonth(month)),
  rule('span', 'March gone', '<month> just? gone|past', ({ month }) => lastMonth(month)),
  rule('span', 'next March', 'next <month>', ({ month }) => nextMonth(month)),
  rule('span', 'this March', 'this <month>', ({ month }) =>
    fixed(({ today }) => monthSpan(yearOf(today), month)),
  ),
  rule('span', 'the coming March', 'this|the? coming|following <month>', ({ month }) => nextMonth(month)),
  rule('span', 'March after next', '<month> after next', ({ month }) =>
    fixed(({ today }) => monthSpan(yearOf(today) + (monthOfDay(today) < month ? 1 : 2), month)),
  ),
  rule('span', 'March before last', 'the? <month> before last', ({ month }) =>
    fixed(({ today }) => monthSpan(yearOf(today) - (monthOfDay(today) > month ? 1 : 2), month)),
  ),
  rule(
    'span',
    'March last year',
    '<month> of|in? <which=last|previous|this|next|following> year',
    ({ month, which }) => fixed(({ today }) => monthSpan(yearOf(today) + away[which as Which], month)),
  ),
  rule('span', 'May in a year', '<month> in a year', ({ month }) =>
    fixed(({ today }) => monthSpan(yearOf(today) + 1, month)),
  ),
  rule(
    'span',
    'last month',
    'this? the? <which=last|previous|past|this|current|next|following|coming> month',
    ({ which }) => fixed(({ today }) => monthOf(addMonths(firstOf(today), away[which as Which]))),
  ),
  rule('span', 'the month before last', 'the? month before last', () =>
    fixed(({ today }) => monthOf(addMonths(firstOf(today), -2))),
  ),
  rule('span', 'the month after next', 'the? month after next', () =>
    fixed(({ today }) => monthOf(addMonths(firstOf(today), 2))),
  ),
  rule(
    'span',
    '9th month of next year',
    'the? <ord> month of <which=last|this|next> year',
    ({ ord, which }) =>
      ord <= 12 ? fixed(({ today }) => monthSpan(yearOf(today) + away[which as Which], ord)) : null,
  ),
  rule(
    'span',
    'last year',
    'the? <which=last|previous|past|this|current|next|following|coming> year',
    ({ which }) => fixed(({ today }) => yearSpan(yearOf(today) + away[which as Which])),
  ),
  rule('span', 'the year before last', 'the? year before last', () =>
    fixed(({ today }) => yearSpan(yearOf(today) - 2)),
  ),
  rule('span', 'year 2026', 'the? year <year>', ({ year }) => fixed(() => yearSpan(year))),
  rule('span', '2026', '<year>', ({ year }) => unsure(fixed(() => yearSpan(year)))),
  rule('span', 'in 2026', '=|in|during|since <year>', ({ year }) => fixed(() => yearSpan(year))),
  rule('span', 'early May', 'the? <part=early|mid|late> on? of|in|- <span>', ({ part, span }) =>
    partOfPhrase(span, part),
  ),
  rule('span', 'early May', 'the|in? <part=early|mid|late> <span>', ({ part, span }) =>
    partOfPhrase(span, part),
  ),
  rule(
    'span',
    'beginning of May',
    'the? very? <part=beginning|mid|end> of|from the? <span>',
    ({ part, span }) => partOfPhrase(span, part),
  ),
  rule('span', 'end May', '<part=beginning|end> <span>', ({ part, span }) => partOfPhrase(span, part)),
  rule('span', 'early part of May', 'the? <part=early|late> part of the? <span>', ({ part, span }) =>
    partOfPhrase(span, part),
  ),
  rule('span', 'back end of May', 'the? back|tail|fag|tail end of the? <span>', ({ span }) =>
    partOfPhrase(span, 'late'),
  ),
  rule(
    'span',
    'end of the month',
    'the? very? <part=beginning|mid|end> of the? <unit=week|month|year>',
    ({ part, unit }) => partOfPhrase(currentSpan(unit), part),
  ),
  rule('span', 'back end of the month', 'the? back|tail|fag end of the? <unit=week|month|year>', ({ unit }) =>
    partOfPhrase(currentSpan(unit), 'late'),
  ),
  rule('span', 'the back end', 'the back end', () => unsure(fixed(() => ambiguous))),
  rule('span', 'first half of May', 'the? first half|part of <span>', ({ span }) =>
    changed(span, (whole) => halfOf(whole, 1)),
  ),
  rule('span', 'second half of May', 'the? second|latter|last half|part of <span>', ({ span }) =>
    changed(span, (whole) => halfOf(whole, 2)),
  ),
  rule('span', 'rest of the week', 'the? rest of? the|this|current? <unit=week|month|year>', ({ unit }) =>
    changed(currentSpan(unit), ({ to }, { today }) => ({ from: today, to })),
  ),
  rule('span', 'later this week', 'later in? this|the <unit=week|month|year>', ({ unit }) =>
    changed(currentSpan(unit), ({ to }, { today }) => ({
      from: laterFrom(unit, today),
      to,
    })),
  ),
  rule('span', 'earlier this week', 'earlier in? this|the <unit=week|month|year>', ({ unit }) =>
    changed(currentSpan(unit), ({ from }, { today }) => ({ from, to: today })),
  ),
  rule('span', 'the month', 'the|all month', () => unsure(currentSpan('month'))),
];

function nthDay(span: When, nth: number): When {
  return changed(span, ({ from, to }) =>
    addDays(from, nth - 1) <= to ? { date: addDays(from, nth - 1) } : impossible,
  );
}

function firstOf(day: Day): Day {
  return asDay(`${day.slice(0, 8)}01`);
}

function currentSpan(unit: 'week' | 'month' | 'year'): When {
  return when((_, { today }) => {
    if (unit === 'month') return monthOf(today);
    if (unit === 'year') return yearSpan(yearOf(today));
    const monday = addDays(today, 1 - weekday(today));
    return { from: monday, to: addDays(monday, 6) };
  });
}

/** "Later this week" is not its first half. */
function laterFrom(unit: 'week' | 'month' | 'year', today: Day): Day {
  if (unit === 'month') return today;
  const half = unit === 'week' ? addDays(today, 4 - weekday(today)) : asDay(`${yearOf(today)}-07-01`);
  return half > today ? half : today;
}

function halfOf({ from, to }: Span, half: 1 | 2): Span {
  const middle = from.slice(0, 7) === to.slice(0, 7) ? 15 : Math.floor(lengthOf({ from, to }) / 2);
  return half === 1 ? { from, to: addDays(from, middle - 1) } : { from: addDays(from, middle), to };
}
