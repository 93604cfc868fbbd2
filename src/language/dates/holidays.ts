/** Holidays by the names that growers use, and what is said of them: "over Easter", "bank hol Mon", "Mothering Sunday". */
import { countryOf } from '../../calendar/country.js';
import {
  adventSunday,
  easterSunday,
  fathersDay,
  mothersDay,
  nthWeekdayOfMonth,
} from '../../calendar/customary-days.js';
import { addDays, asDay, type Day, dayOf, month as monthOfDay, weekday } from '../../calendar/day.js';
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
import { rule, type Rule } from './pattern.js';

/** The day of a holiday in one year; null where that year or country has none. */
export type Holiday = (year: number, zone: string) => Day | null;

const codeOf = (zone: string) => countryOf(zone)?.code;
const yearly =
  (month: number, day: number): Holiday =>
  (year) =>
    dayOf(year, month, day);
const easter =
  (days: number): Holiday =>
  (year) =>
    addDays(easterSunday(year), days);
const nth =
  (nth: number, weekday: number, month: number): Holiday =>
  (year) =>
    nthWeekdayOfMonth(year, month, nth, weekday);
/** The country's public holiday whose English name matches; else, where given, a custom. */
const byLaw =
  (name: RegExp, otherwise: Holiday = () => null): Holiday =>
  (year, zone) =>
    publicHolidays(zone, year).find((each) => name.test(each.name))?.day ?? otherwise(year, zone);

function holiday(name: string, patterns: readonly string[], day: Holiday): Rule[] {
  return patterns.map((pattern) => rule('holiday', name, pattern, () => day));
}

const names: Rule[] = [
  holiday("New Year's Eve", ['new year evening|eve', 'hogmanay'], yearly(12, 31)),
  holiday("New Year's Day", ['new year day?'], yearly(1, 1)),
  holiday('Twelfth Night', ['twelfth night'], yearly(1, 5)),
  holiday('Epiphany', ['epiphany'], yearly(1, 6)),
  holiday('Burns Night', ['burns night'], yearly(1, 25)),
  holiday('Australia Day', ['australia day'], yearly(1, 26)),
  holiday("St Brigid's Day", ['saint|st .? brigids day'], yearly(2, 1)),
  holiday('Candlemas', ['candlemas day?'], yearly(2, 2)),
  holiday('Groundhog Day', ['groundhog day'], yearly(2, 2)),
  holiday('Waitangi Day', ['waitangi day?'], yearly(2, 6)),
  holiday("Valentine's Day", ['saint|st? .? valentines day', 'valentines'], yearly(2, 14)),
  holiday('Shrove Tuesday', ['shrove tuesday', 'pancake day|tuesday'], easter(-47)),
  holiday('Ash Wednesday', ['ash wednesday'], easter(-46)),
  holiday("St David's Day", ['saint|st .? davids day'], yearly(3, 1)),
  holiday("St Patrick's Day", ['saint|st? .? patricks day'], yearly(3, 17)),
  holiday('Mothering Sunday', ['mothering sunday'], easter(-21)),
  holiday("Mother's Day", ['mothers day'], (year, zone) => mothersDay(year, codeOf(zone))),
  holiday("Father's Day", ['fathers day'], (year, zone) => fathersDay(year, codeOf(zone))),
  holiday('Lady Day', ['lady day'], yearly(3, 25)),
  holiday('Palm Sunday', ['palm sunday'], easter(-7)),
  holiday('Maundy Thursday', ['maundy thursday'], easter(-3)),
  holiday('Good Friday', ['good friday', 'easter friday'], easter(-2)),
  holiday('Easter Saturday', ['easter saturday'], easter(-1)),
  holiday('Easter Sunday', ['easter sunday|day', 'easter'], easter(0)),
  holiday('Easter Monday', ['easter monday', 'easter bank holiday monday?'], easter(1)),
  holiday('Easter Tuesday', ['easter tuesday'], easter(2)),
  holiday("St George's Day", ['saint|st .? georges day'], yearly(4, 23)),
  holiday('Anzac Day', ['anzac day'], yearly(4, 25)),
  holiday('May Day', ['may day'], yearly(5, 1)),
  holiday(
    'May Day bank holiday',
    ['may day bank holiday monday?', 'early|first may bank holiday monday?'],
    nth(1, 1, 5),
  ),
  holiday(
    'Spring bank holiday',
    ['spring|whit|whitsun bank holiday monday?', 'late|second|end may bank holiday monday?'],
    nth(-1, 1, 5),
  ),
  holiday('Ascension Day', ['ascension day'], easter(39)),
  holiday('Whit Sunday', ['whit sunday', 'pentecost sunday?', 'whitsun'], easter(49)),
  holiday('Whit Monday', ['whit|pentecost monday'], easter(50)),
  holiday('Corpus Christi', ['corpus christi'], easter(60)),
  holiday('Memorial Day', ['memorial day'], nth(-1, 1, 5)),
  holiday('Juneteenth', ['juneteenth'], yearly(6, 19)),
  holiday('Midsummer Day', ['midsummer day?'], yearly(6, 24)),
  holiday('Canada Day', ['canada day'], yearly(7, 1)),
  holiday('Independence Day', ['independence day'], yearly(7, 4)),
  holiday(
    'Summer bank holiday',
    ['summer bank holiday monday?', 'august bank holiday monday?'],
    byLaw(/summer bank holiday|First Monday in August/i, nth(-1, 1, 8)),
  ),
  holiday('Labor Day', ['labor day'], byLaw(/labou?r day|workers' day/i, yearly(5, 1))),
  holiday("King's Birthday", ['kings|queens birthday'], byLaw(/(?:king|queen)'?s'? birthday/i)),
  holiday('Matariki', ['matariki'], byLaw(/matariki/i)),
  holiday('Victoria Day', ['victoria day'], byLaw(/victoria day/i)),
  holiday("Presidents' Day", ['presidents day'], nth(3, 1, 2)),
  holiday('Martin Luther King Day', ['martin luther king jr? .? day', 'mlk day'], nth(3, 1, 1)),
  holiday('Columbus Day', ['columbus day'], nth(2, 1, 10)),
  holiday('Veterans Day', ['veterans day'], yearly(11, 11)),
  holiday('Michaelmas', ['michaelmas day?'], yearly(9, 29)),
  holiday('Halloween', ['halloween night?'], yearly(10, 31)),
  holiday("All Saints' Day", ['all saints day'], yearly(11, 1)),
  holiday('Melbourne Cup Day', ['melbourne? cup day'], nth(1, 2, 11)),
  holiday('Bonfire Night', ['bonfire|fireworks night', 'guy fawkes night|day?'], yearly(11, 5)),
  holiday('Remembrance Sunday', ['remembrance sunday'], nth(2, 7, 11)),
  holiday('Armistice Day', ['armistice|remembrance day'], yearly(11, 11)),
  holiday('Thanksgiving', ['thanksgiving day?'], (year, zone) =>
    codeOf(zone) === 'CA' ? nthWeekdayOfMonth(year, 10, 2, 1) : nthWeekdayOfMonth(year, 11, 4, 4),
  ),
  holiday("St Andrew's Day", ['saint|st .? andrews day'], yearly(11, 30)),
  holiday('Advent Sunday', ['advent sunday'], adventSunday),
  holiday('Christmas Eve', ['christmas evening|eve'], yearly(12, 24)),
  holiday('Christmas Day', ['christmas day?'], yearly(12, 25)),
  holiday('Boxing Day', ['boxing day', 'saint|st? .? stephens day'], yearly(12, 26)),
].flat();

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

export const holidays: Rule[] = [
  ...names,
  rule('day', 'Easter Monday', '<holiday>', ({ holiday: of }) => nearest(of)),
  rule('day', 'Easter Monday 2026', '<holiday> ,? of|in? <year>', ({ holiday: of, year }) =>
    fixed(({ zone }) => resolved(of(year, zone))),
  ),
  rule('day', 'next Easter', 'next|coming|this <holiday>', ({ holiday: of }) =>
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
  rule('span', 'Thanksgiving weekend', 'over? the? <holiday> weekend', ({ holiday: of }) =>
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
  rule(
    'span',
    'bank holiday weekend',
    'over|the? the? <which=last|next|this>? bank|public holiday weekend',
    ({ which }) => bankWeekend(which),
  ),
  rule(
    'span',
    'May bank holiday weekend',
    'over|the? the? <month> bank|public holiday weekend',
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
