/** Days counted from today: "yesterday", "three weeks ago", "in a fortnight", "tomorrow week". */
import { addDays, weekday } from '../../calendar/day.js';
import {
  ambiguous,
  changed,
  daysFromToday,
  daysSinceWeekday,
  daysUntilWeekday,
  fixed,
  impossible,
  type Leaning,
  clockAfter,
  type Moment,
  shifted,
  type When,
} from './meaning.js';
import type { Count } from './numbers.js';
import type { Unit } from './captures.js';
import { rule } from './pattern.js';

const daysIn: Record<Unit, number> = { day: 1, week: 7, fortnight: 14, month: 0, year: 0 };
const monthsIn: Record<Unit, number> = { day: 0, week: 0, fortnight: 0, month: 1, year: 12 };

/** A phrase moved by so many units; a vague count makes it a doubt. */
export function movedBy(from: When, count: Count, unit: Unit, sign: 1 | -1): When {
  if (!count.exact) return { ...from, certain: true, mean: () => ambiguous };
  return {
    ...shifted(from, sign * count.number * daysIn[unit], sign * count.number * monthsIn[unit]),
    certain: true,
  };
}

const today = daysFromToday(0);
const single: Count = { number: 1, exact: true };

/** So many minutes from now, as if no clock were put on or back meanwhile. */
function minutesAway(minutes: number): When {
  const day = fixed((now: Moment) => ({
    date: addDays(now.today, Math.floor(clockAfter(now, minutes) / 1440)),
  }));
  return { ...day, minutesAway: minutes };
}

const minutesIn = { hour: 60, minute: 1 };
const vague: When = fixed(() => ambiguous);

/** A phrase that says something only of things done, or only of plans. */
function leaningOnly(only: Leaning, phrase: When): When {
  return { ...phrase, mean: (leaning, now) => (leaning === only ? phrase.mean(leaning, now) : ambiguous) };
}

export const relativeDays = [
  rule('day', 'today', 'today', () => today),
  rule('day', 'earlier today', 'earlier|later|just on? today', () => today),
  rule('day', 'tonight', 'tonight', () => today),
  rule('day', 'tomorrow', 'tomorrow', () => daysFromToday(1)),
  rule('day', 'yesterday', 'yesterday', () => daysFromToday(-1)),
  rule('day', 'the day before yesterday', 'the? <count>? day|days before yesterday', ({ count }) =>
    movedBy(daysFromToday(-1), count ?? single, 'day', -1),
  ),
  rule('day', 'the day after tomorrow', 'the? <count>? day|days after tomorrow', ({ count }) =>
    movedBy(daysFromToday(1), count ?? single, 'day', 1),
  ),
  rule('day', 'a week ago', 'around? <count> <unit> ago|back|since now?', ({ count, unit }) =>
    movedBy(today, count, unit, -1),
  ),
  rule('day', 'a week or so ago', 'around? <count> <unit> or so ago|back', ({ count, unit }) =>
    movedBy(today, count, unit, -1),
  ),
  rule('day', 'a week or two ago', '<count> <unit>? or|to|- <more:count> <as:unit>? ago|back', () => vague),
  rule('day', 'over a week ago', 'over|nearly|almost|under|past <count> <unit> ago|back', () => vague),
  rule('day', 'more than a week ago', 'more|at less? than|least <count> <unit> ago|back', () => vague),
  rule('day', 'two and a half weeks ago', '<count> and a? half <unit> ago|back', () => vague),
  rule('day', 'a week and a half ago', '<count> <unit> and a? half ago|back', () => vague),
  rule('day', 'half a week ago', 'half a <unit> ago|back', () => vague),
  rule('day', 'weeks ago', 'days|weeks|months|years|fortnights ago|back', () => vague),
  rule('day', 'fortnight ago', '<unit=week|fortnight|month|year> ago', ({ unit }) =>
    movedBy(today, single, unit, -1),
  ),
  rule('day', 'a good fortnight ago', 'a good|bit|over|under? few|over|under? <unit> ago|back', () => vague),
  rule(
    'day',
    'just over a week ago',
    'just|well|getting over|under|on|short? for|of? <count> <unit> ago|back',
    () => vague,
  ),
  rule('day', 'best part of a month ago', 'the? best|good part of <count> <unit> ago|back', () => vague),
  rule('day', 'a year ago today', '<count> <unit> ago|back today', ({ count, unit }) =>
    movedBy(today, count, unit, -1),
  ),
  rule('day', 'a week ago tomorrow', '<count> <unit> ago|back tomorrow', ({ count, unit }) =>
    movedBy(daysFromToday(1), count, unit, -1),
  ),
  rule('day', 'the day before last', 'the day before last', () => daysFromToday(-2)),
  rule('day', 'ereyesterday', 'ereyesterday', () => daysFromToday(-2)),
  rule('day', 'overmorrow', 'overmorrow', () => daysFromToday(2)),
  rule('phrase', 'over-tomorrow', 'over tomorrow', () => daysFromToday(2)),
  // Translated from languages that count back with "before" and on with "after".
  rule('day', 'before two weeks', 'before <count> <unit>', ({ count, unit }) =>
    leaningOnly('past', movedBy(today, count, unit, -1)),
  ),
  rule('day', 'after two weeks', 'after <count> <unit>', ({ count, unit }) =>
    leaningOnly('future', movedBy(today, count, unit, 1)),
  ),
  rule('span', 'since three weeks', 'since <count> <unit>', ({ count, unit }) =>
    changed(movedBy(today, count, unit, -1), ({ from }, now) => ({ from, to: now.today })),
  ),
  rule('day', 'just now', 'just|right now', () => today),
  rule('whole', 'now', 'now', () => today),
  rule('day', 'ages ago', 'ages|time ago|back', () => vague),
  rule('day', 'a while back', 'a|some|quite? a? while|time ago|back', () => vague),
  rule('day', 'the other day', 'the other day|morning|evening|week|night|afternoon|month', () => vague),
  rule('day', 'recently', 'recently', () => ({ ...vague, certain: false })),
  rule(
    'day',
    'a month and a week ago',
    '<count> <unit> and|,? <more:count> <as:unit> ago|back',
    ({ count, unit, more, as }) => movedBy(movedBy(today, count, unit, -1), more, as, -1),
  ),
  rule('day', 'in a fortnight', 'in around? <count> <unit> or? so? time?', ({ count, unit }) =>
    movedBy(today, count, unit, 1),
  ),
  rule(
    'day',
    'in two days on Friday',
    'in <count> <unit> ,? on <weekday>',
    ({ count, unit, weekday: wanted }) =>
      changed(movedBy(today, count, unit, 1), ({ from }) =>
        weekday(from) === wanted ? { date: from } : impossible,
      ),
  ),
  rule(
    'day',
    'in a week or two',
    'in around? <count> <unit>? or|to|- <more:count> <as:unit>? time?',
    () => vague,
  ),
  rule('day', "a fortnight's time", '<count> <unit> time', ({ count, unit }) =>
    movedBy(today, count, unit, 1),
  ),
  rule('day', 'in an hour and a half', 'in <count> <smallUnit> and a half', ({ count, smallUnit }) =>
    minutesAway((count.number + 0.5) * minutesIn[smallUnit]),
  ),
  rule('day', 'in two and a half hours', 'in <count> and a? half <smallUnit>', ({ count, smallUnit }) =>
    minutesAway((count.number + 0.5) * minutesIn[smallUnit]),
  ),
  rule('day', 'three weeks from now', '<count> <unit> from now', ({ count, unit }) =>
    movedBy(today, count, unit, 1),
  ),
  rule('day', 'a week hence', '<count> <unit> hence|later', ({ count, unit }) =>
    movedBy(today, count, unit, 1),
  ),
  rule(
    'day',
    'two years and a week later',
    '<count> <unit> and|,? <more:count> <as:unit> hence|later',
    ({ count, unit, more, as }) => movedBy(movedBy(today, count, unit, 1), more, as, 1),
  ),
  rule('day', 'a week today', '<count> <unit> from|on? today', ({ count, unit }) =>
    movedBy(today, count, unit, 1),
  ),
  rule('day', 'week today', 'week today', () => daysFromToday(7)),
  rule('day', 'a week tomorrow', '<count> <unit> on? tomorrow', ({ count, unit }) =>
    movedBy(daysFromToday(1), count, unit, 1),
  ),
  rule('day', 'a week yesterday', '<count> <unit> ago? yesterday', ({ count, unit }) =>
    movedBy(daysFromToday(-1), count, unit, -1),
  ),
  rule('day', 'tomorrow week', 'tomorrow <unit=week|fortnight>', ({ unit }) =>
    movedBy(daysFromToday(1), single, unit, 1),
  ),
  rule('day', 'today week', 'today <unit=week|fortnight>', ({ unit }) => movedBy(today, single, unit, 1)),
  rule('day', 'this day week', 'this day <unit=week|fortnight>', ({ unit }) =>
    movedBy(today, single, unit, 1),
  ),
  rule('day', 'yesterday week', 'yesterday <unit=week|fortnight> ago|gone|past?', ({ unit }) =>
    movedBy(daysFromToday(-1), single, unit, -1),
  ),
  rule('day', 'this time last week', 'this|the|same day|time last <unit=week|month|year>', ({ unit }) =>
    movedBy(today, single, unit, -1),
  ),
  rule('day', 'this time next week', 'this|the|same day|time next <unit=week|month|year>', ({ unit }) =>
    movedBy(today, single, unit, 1),
  ),
  rule('day', 'an hour ago', '<count> <smallUnit> ago|back', ({ count, smallUnit }) =>
    count.exact ? minutesAway(-count.number * minutesIn[smallUnit]) : today,
  ),
  rule('day', 'half an hour ago', 'half an hour ago|back', () => minutesAway(-30)),
  rule('day', 'in an hour', 'in <count> <smallUnit> time?', ({ count, smallUnit }) =>
    count.exact ? minutesAway(count.number * minutesIn[smallUnit]) : vague,
  ),
  rule('day', 'in half an hour', 'in half an hour', () => minutesAway(30)),
];

/** Rules that count from another day. */
export const countedFromADay = [
  rule('phrase', 'three days before Christmas', '<count> <unit> before|prior <day>', ({ count, unit, day }) =>
    movedBy(day, count, unit, -1),
  ),
  rule('phrase', 'three weeks after Easter', '<count> <unit> after|from <day>', ({ count, unit, day }) =>
    movedBy(day, count, unit, 1),
  ),
  rule('phrase', 'the day before Easter', 'the day before <day>', ({ day }) =>
    changed(day, ({ from }) => ({ date: addDays(from, -1) })),
  ),
  rule('phrase', 'the Saturday before Easter', 'the? <weekday> before <day>', ({ weekday: on, day }) =>
    // Of a long weekend before its second day: the Saturday before Easter is that of Holy Week.
    changed(day, ({ from, to }) => {
      const eve = addDays(from, from === to ? -1 : 1);
      return { date: addDays(eve, -daysSinceWeekday(eve, on)) };
    }),
  ),
  rule('phrase', 'the Tuesday after Easter', 'the? <weekday> after <day>', ({ weekday: on, day }) =>
    changed(day, ({ to }) => ({ date: addDays(to, daysUntilWeekday(to, on)) })),
  ),
  rule('phrase', 'the day after Easter', 'the day after <day>', ({ day }) =>
    changed(day, ({ to }) => ({ date: addDays(to, 1) })),
  ),
];
