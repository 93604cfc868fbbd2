/** The names by which growers call holidays and customary days, each with the day it falls on. */
import { countryOf } from '../../calendar/country.js';
import {
  adventSunday,
  easterSunday,
  fathersDay,
  mothersDay,
  nthWeekdayOfMonth,
  orthodoxEaster,
} from '../../calendar/customary-days.js';
import { addDays, asDay, type Day, dayOf, weekday } from '../../calendar/day.js';
import { publicHolidays } from '../../calendar/holidays.js';
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
/** The Monday before a day that is none itself. */
const mondayBefore =
  (month: number, day: number): Holiday =>
  (year) => {
    const last = addDays(asDay(`${year}-${String(month).padStart(2, '0')}-${day}`), -1);
    return addDays(last, 1 - weekday(last));
  };
/** The country's public holiday whose English name matches; else, where given, a custom. */
const byLaw =
  (name: RegExp, otherwise: Holiday = () => null): Holiday =>
  (year, zone) =>
    publicHolidays(zone, year).find((each) => name.test(each.name))?.day ?? otherwise(year, zone);

/** The first Monday after Epiphany. */
function ploughMonday(year: number): Day {
  const seventh = asDay(`${year}-01-07`);
  return addDays(seventh, (8 - weekday(seventh)) % 7);
}

function holiday(name: string, patterns: readonly string[], day: Holiday): Rule[] {
  return patterns.map((pattern) => rule('holiday', name, pattern, () => day));
}

export const holidayNames: Rule[] = [
  holiday("New Year's Eve", ['new year|years evening|eve', 'hogmanay'], yearly(12, 31)),
  holiday("New Year's Day", ['new year|years day?'], yearly(1, 1)),
  holiday('Twelfth Night', ['twelfth night'], yearly(1, 5)),
  holiday('Epiphany', ['epiphany', 'little|women|womens christmas'], yearly(1, 6)),
  holiday('Burns Night', ['burns night'], yearly(1, 25)),
  holiday('Plough Monday', ['plough monday'], ploughMonday),
  holiday('Australia Day', ['australia day'], yearly(1, 26)),
  holiday("St Brigid's Day", ['saint|st? .? brigids day', 'imbolc'], yearly(2, 1)),
  holiday('Candlemas', ['candlemas day?'], yearly(2, 2)),
  holiday('Cinco de Mayo', ['cinco de mayo'], yearly(5, 5)),
  holiday('Groundhog Day', ['groundhog day'], yearly(2, 2)),
  holiday('Waitangi Day', ['waitangi day?'], yearly(2, 6)),
  holiday("Valentine's Day", ['saint|st? .? valentines day', 'valentines'], yearly(2, 14)),
  holiday('Shrove Tuesday', ['shrove tuesday', 'pancake day|tuesday', 'mardi gras'], easter(-47)),
  holiday('Ash Wednesday', ['ash wednesday'], easter(-46)),
  holiday("St David's Day", ['saint|st .? davids day'], yearly(3, 1)),
  holiday("St Patrick's Day", ['saint|st? .? patricks day'], yearly(3, 17)),
  holiday('Mothering Sunday', ['mothering sunday'], easter(-21)),
  holiday("Mother's Day", ['mothers day'], (year, zone) => mothersDay(year, codeOf(zone))),
  holiday("Father's Day", ['fathers day'], (year, zone) => fathersDay(year, codeOf(zone))),
  holiday('Lady Day', ['lady day'], yearly(3, 25)),
  holiday('Passion Sunday', ['passion sunday'], easter(-14)),
  holiday('Low Sunday', ['low sunday'], easter(7)),
  holiday('Rogation Sunday', ['rogation sunday'], easter(35)),
  holiday('Palm Sunday', ['palm sunday'], easter(-7)),
  holiday('Maundy Thursday', ['maundy|holy thursday'], easter(-3)),
  holiday('Good Friday', ['good friday', 'easter friday'], easter(-2)),
  holiday('Easter Saturday', ['easter|holy saturday', 'easter evening|eve'], easter(-1)),
  holiday('Easter Sunday', ['easter sunday|day', 'easter'], easter(0)),
  holiday('Easter Monday', ['easter monday', 'easter bank holiday monday?'], easter(1)),
  holiday('Orthodox Easter', ['orthodox|greek easter sunday|day?'], orthodoxEaster),
  holiday("April Fools' Day", ['april fools day?'], yearly(4, 1)),
  holiday('Earth Day', ['earth day'], yearly(4, 22)),
  holiday("Women's Day", ['international? women|womens day'], yearly(3, 8)),
  holiday('Black Friday', ['black friday'], (year) => addDays(nthWeekdayOfMonth(year, 11, 4, 4), 1)),
  holiday('Cyber Monday', ['cyber monday'], (year) => addDays(nthWeekdayOfMonth(year, 11, 4, 4), 4)),
  holiday('Stir-up Sunday', ['stir up sunday'], (year) => addDays(adventSunday(year), -7)),
  holiday('Trinity Sunday', ['trinity sunday'], easter(56)),
  holiday('All Souls', ['all souls day?'], yearly(11, 2)),
  holiday('Easter Tuesday', ['easter tuesday'], easter(2)),
  holiday("St George's Day", ['saint|st .? georges day'], yearly(4, 23)),
  holiday('Anzac Day', ['anzac day?'], yearly(4, 25)),
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
  holiday('Ascension Day', ['ascension day|thursday'], easter(39)),
  holiday('Whit Sunday', ['whit sunday', 'pentecost sunday?', 'whitsun'], easter(49)),
  holiday('Whit Monday', ['whit|pentecost monday'], easter(50)),
  holiday('Corpus Christi', ['corpus christi'], easter(60)),
  holiday('Memorial Day', ['memorial day'], nth(-1, 1, 5)),
  holiday('Juneteenth', ['juneteenth'], yearly(6, 19)),
  holiday('Midsummer Day', ['midsummer day?'], yearly(6, 24)),
  holiday("St Swithin's Day", ['saint|st .? swithins|swithin day?'], yearly(7, 15)),
  holiday('Canada Day', ['canada day'], yearly(7, 1)),
  holiday('Independence Day', ['independence day'], yearly(7, 4)),
  holiday(
    'Summer bank holiday',
    ['summer bank holiday monday?', 'late? august bank holiday monday?'],
    byLaw(/summer bank holiday|First Monday in August/i, nth(-1, 1, 8)),
  ),
  holiday('Labor Day', ['labor day?'], byLaw(/labou?r day|eight hours day|workers' day/i, yearly(5, 1))),
  holiday("King's Day", ['king|kings day', 'koningsdag'], byLaw(/king's day|koningsdag/i)),
  holiday("King's Birthday", ['king|kings|queens birthday'], byLaw(/(?:king|queen)'?s'? birthday/i)),
  holiday('Matariki', ['matariki'], byLaw(/matariki/i)),
  // Not every province keeps it by law; its weekend opens the season in all of them.
  holiday('Victoria Day', ['victoria day'], mondayBefore(5, 25)),
  holiday('Family Day', ['family day'], byLaw(/family day/i, nth(3, 1, 2))),
  holiday('Civic Holiday', ['civic holiday monday?'], nth(1, 1, 8)),
  holiday('Human Rights Day', ['human rights day'], byLaw(/human rights day/i)),
  holiday('Freedom Day', ['freedom day'], byLaw(/freedom day/i)),
  holiday('Youth Day', ['youth day'], byLaw(/youth day/i)),
  holiday('Heritage Day', ['heritage day'], byLaw(/heritage day/i)),
  holiday('Day of Reconciliation', ['reconciliation day', 'day of reconciliation'], byLaw(/reconciliation/i)),
  holiday("Presidents' Day", ['presidents day'], nth(3, 1, 2)),
  holiday('Martin Luther King Day', ['martin luther king jr? .? day', 'mlk day'], nth(3, 1, 1)),
  holiday('Columbus Day', ['columbus day'], nth(2, 1, 10)),
  holiday('Veterans Day', ['veterans day'], yearly(11, 11)),
  holiday('Bastille Day', ['bastille day'], yearly(7, 14)),
  holiday('Lammas', ['lammas day?', 'lughnasa'], yearly(8, 1)),
  holiday('Martinmas', ['martinmas day?'], yearly(11, 11)),
  holiday('Michaelmas', ['michaelmas day?'], yearly(9, 29)),
  holiday("St Luke's Day", ['saint|st .? luke|lukes day'], yearly(10, 18)),
  holiday('Halloween', ['halloween night?', 'all hallows evening|eve'], yearly(10, 31)),
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
