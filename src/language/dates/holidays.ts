/** What is said of holidays: "next Easter", "over Christmas", "bank hol Mon", "the May bank holiday weekend". */
import { easterSunday } from '../../calendar/customary-days.js';
import { addDays, asDay, type Day, month as monthOfDay, weekday } from '../../calendar/day.js';
import { publicHolidays } from '../../calendar/holidays.js';
import type { Span } from '../../calendar/span.js';
import {
  changed,
  fixed,
  impossible,
  type Moment,
  nearestDay,
  nearestSpan,
  type When,
  when,
} from './meaning.js';
import { type Holiday, holidayNames } from './holiday-names.js';
import { rule, type Rule } from './pattern.js';

const nearest = (of: Holiday): When =>
  when((leaning, now) => nearestDay((year) => of(year, now.zone)).mean(leaning, now));

/** All bank holidays that pass a test, the nearest by the phrase's leaning. */
function nearestBankHoliday(wanted: (day: Day) => boolean): When {
  return when((leaning, { today, zone }) => {
    const year = Number(today.slice(0, 4));
    const days = [year - 1, year, year + 1]
      .flatMap((each) => publicHolidays(zone, each).map(({ day }) => day))
      .filter(wanted);
    const day =
      leaning === 'past' ? days.findLast((each) => each <= today) : days.find((each) => each > today);
    return day === undefined ? impossible : { date: day };
  });
}

const saturdayBefore = (day: Day): Day => addDays(day, -((weekday(day) + 1) % 7));

/** Friday or Monday holidays lengthen their weekend. */
function longWeekend(day: Day): Span {
  if (weekday(day) === 5) return { from: day, to: addDays(day, 2) };
  const saturday = saturdayBefore(day);
  return { from: saturday, to: weekday(day) === 1 ? day : addDays(saturday, 1) };
}

/** What is kept over more than a day. */
function kept(name: string, pattern: string, ofYear: (year: number) => Span): Rule {
  return rule('span', name, pattern, () => nearestSpan(ofYear));
}

const easterSpan = (year: number): Span => ({
  from: addDays(easterSunday(year), -2),
  to: addDays(easterSunday(year), 1),
});

const patricksWeekend: When = nearestSpan((year) => longWeekend(asDay(`${year}-03-17`)));

export const holidays: Rule[] = [
  rule('span', 'the long weekend', 'over? the? <which=last|next|this>? long weekend', ({ which }) =>
    bankWeekend(which),
  ),
  rule('span', "St Patrick's weekend", 'over? saint|st? .? patricks weekend', () => patricksWeekend),
  rule('span', 'July 4th weekend', 'over? the? <calendar> weekend', ({ calendar }) =>
    changed(calendar, ({ from }) => longWeekend(from)),
  ),
  ...holidayNames,
  rule('day', 'Easter Monday', 'the? <holiday>', ({ holiday: of }) => nearest(of)),
  rule('day', 'Easter Monday 2026', '<holiday> ,? of|in? <year>', ({ holiday: of, year }) =>
    fixed(({ zone }) => resolved(of(year, zone))),
  ),
  rule('day', 'this Good Friday', 'this <holiday>', ({ holiday: of }) =>
    fixed((now: Moment) =>
      of(Number(now.today.slice(0, 4)), now.zone) === now.today
        ? resolved(now.today)
        : nearest(of).mean('future', now),
    ),
  ),
  rule('day', 'next Easter', 'next|coming <holiday>', ({ holiday: of }) =>
    fixed((now: Moment) => nearest(of).mean('future', now)),
  ),
  rule('day', 'last Easter', 'last|previous|past <holiday>', ({ holiday: of }) =>
    fixed(({ today, zone }) => {
      const year = Number(today.slice(0, 4));
      return resolved(
        [year, year - 1].map((each) => of(each, zone)).find((day) => day !== null && day < today) ?? null,
      );
    }),
  ),
  rule('day', 'Christmas gone', '<holiday> just? gone|past', ({ holiday: of }) =>
    fixed((now: Moment) => nearestDay((year) => of(year, now.zone)).mean('past', now)),
  ),
  rule('day', 'Easter last year', '<holiday> <which=last|this|next> year', ({ holiday: of, which }) =>
    fixed(({ today, zone }) =>
      resolved(of(Number(today.slice(0, 4)) + (which === 'last' ? -1 : which === 'next' ? 1 : 0), zone)),
    ),
  ),
  kept('over Easter', 'over|during the? easter weekend|holiday?', easterSpan),
  kept('Easter weekend', 'the? easter bank? holiday? weekend', easterSpan),
  kept('Easter week', 'easter week', (year) => ({
    from: addDays(easterSunday(year), 1),
    to: addDays(easterSunday(year), 7),
  })),
  kept('over Christmas', 'over|during christmas holiday?', (year) => ({
    from: asDay(`${year}-12-24`),
    to: asDay(`${year}-12-26`),
  })),
  kept('over New Year', 'over|during the? new year', (year) => ({
    from: asDay(`${year}-12-31`),
    to: asDay(`${year + 1}-01-01`),
  })),
  kept('between Christmas and New Year', 'between christmas and new year', (year) => ({
    from: asDay(`${year}-12-25`),
    to: asDay(`${year + 1}-01-01`),
  })),
  rule('span', 'Thanksgiving weekend', 'over? the? <holiday> long? weekend', ({ holiday: of }) =>
    changed(nearest(of), ({ from }) => longWeekend(from)),
  ),
  rule('day', 'bank holiday Monday', 'the? bank|public holiday <weekday>', ({ weekday: wanted }) =>
    nearestBankHoliday((day) => weekday(day) === wanted),
  ),
  rule('day', 'the bank holiday', 'the? bank|public holiday', () => nearestBankHoliday(() => true)),
  rule('day', 'last bank holiday', 'the? last|previous bank|public holiday monday?', () =>
    fixed((now) => nearestBankHoliday((day) => weekday(day) < 6 && day < now.today).mean('past', now)),
  ),
  rule('day', 'next bank holiday', 'the? next bank|public holiday monday?', () =>
    fixed((now) => nearestBankHoliday(() => true).mean('future', now)),
  ),
  rule('day', 'June bank holiday', 'the? <month> bank|public holiday monday?', ({ month }) =>
    nearestBankHoliday((day) => monthOfDay(day) === month),
  ),
  rule('day', 'June holiday Monday', 'the? <month> holiday monday', ({ month }) =>
    nearestBankHoliday((day) => monthOfDay(day) === month && weekday(day) === 1),
  ),
  rule('span', 'June holiday weekend', 'over|the? the? <month> holiday|long weekend', ({ month }) =>
    changed(
      nearestBankHoliday((day) => monthOfDay(day) === month && weekday(day) === 1),
      ({ from }) => longWeekend(from),
    ),
  ),
  rule(
    'span',
    'bank holiday weekend',
    'over|the? the? <which=last|next|this>? bank|public holiday long? weekend',
    ({ which }) => bankWeekend(which),
  ),
  rule(
    'span',
    'May bank holiday weekend',
    'over|the? the? <month> bank|public holiday long? weekend',
    ({ month }) =>
      changed(
        nearestBankHoliday((day) => monthOfDay(day) === month),
        ({ from }) => longWeekend(from),
      ),
  ),
];

function resolved(day: Day | null) {
  return day === null ? impossible : { date: day };
}

function bankWeekend(which: 'last' | 'next' | 'this' | undefined): When {
  const monday = nearestBankHoliday((day) => weekday(day) === 1);
  const weekend = changed(monday, ({ from }) => longWeekend(from));
  if (which === undefined) return weekend;
  return fixed((now) => weekend.mean(which === 'last' ? 'past' : 'future', now));
}
