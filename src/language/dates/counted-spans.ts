/** So many days, weeks or months together: "last two weeks", "within a fortnight", "the first ten days of May". */
import { addDays, asDay } from '../../calendar/day.js';
import type { Span } from '../../calendar/span.js';
import {
  ambiguous,
  boundsOf,
  changed,
  daysFromToday,
  fixed,
  isDoubt,
  type Resolved,
  shifted,
  type When,
} from './meaning.js';
import type { Count } from './numbers.js';
import type { Unit } from './captures.js';
import { rule } from './pattern.js';
import { movedBy } from './relative-days.js';

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

/** So long from a day on, its last day counted. */
export function within(count: Count, unit: Unit, from: When = today): When {
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

export const countedSpans = [
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
    'last two weeks',
    'in|over|for|during? the|these? last|past|previous <count> <unit>',
    ({ count, unit }) => lastUnits(count, unit),
  ),
  rule('span', '6 previous weeks', '<count> past|previous <unit>', ({ count, unit }) =>
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
