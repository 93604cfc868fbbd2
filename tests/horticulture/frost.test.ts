/** Frost days against printed tables, open daily series and hand-made years. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import lastFrosts from '../../fixtures/weather/last-frosts.json' with { type: 'json' };
import mixedRows from '../../fixtures/weather/frost-probability-mixed-rows.json' with { type: 'json' };
import tables from '../../fixtures/weather/frost-probability-tables.json' with { type: 'json' };
import { addDays, asDay, type Day } from '../../src/calendar/day.js';
import { type FrostOutlook, frostDay, frostOutlook, frostSpread } from '../../src/horticulture/frost.js';
import { type DailyMinimum, frostRecord } from '../../src/horticulture/frost-record.js';
import { type FrostSeason, seasonDay } from '../../src/horticulture/frost-season.js';

const spring: FrostSeason = { half: 'spring', hemisphere: 'north' };
const autumn: FrostSeason = { half: 'autumn', hemisphere: 'north' };
const southernSpring: FrostSeason = { half: 'spring', hemisphere: 'south' };
const southernAutumn: FrostSeason = { half: 'autumn', hemisphere: 'south' };
const zeroOrBelow = { thresholdCelsius: 0, orBelow: true };

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** "May 16" as the day of a common year. */
function printedDay(text: string): number {
  const [name = '', number = ''] = text.split(' ');
  const month = months.indexOf(name) + 1;
  return seasonDay(spring, asDay(`2001-${String(month).padStart(2, '0')}-${number.padStart(2, '0')}`));
}

/** The normal distribution, as the t with boundless degrees of freedom and no doubt about its mean. */
function printedSpread(mean: number, sd: number, share = 1) {
  return { share, n: Number.POSITIVE_INFINITY, mean, sd, degreesOfFreedom: 1e9 };
}

function numberOf(day: string | null): number | null {
  return day === null ? null : seasonDay(spring, asDay(`2001-${day}`));
}

/** Apart by how many days, across New Year too. */
function apart(a: number, b: number): number {
  const days = Math.abs(a - b) % 365;
  return Math.min(days, 365 - days);
}

// Mean and sd were fitted to these printed dates, so this checks the step from a spread to a date only.
describe('printed tables of freeze probability', () => {
  it.each(tables)('$station at $thresholdF °F is met within a day', ({ dates, mean, sd }) => {
    for (const [index, printed] of dates.entries()) {
      const got = numberOf(frostDay(printedSpread(mean, sd), spring, (index + 1) / 10));
      expect(apart(got ?? Number.NaN, printedDay(printed)), printed).toBeLessThanOrEqual(1);
    }
  });

  it.each(mixedRows)(
    '$row, with years without a freeze, is met within a day',
    ({ dates, mean, sd, share }) => {
      for (const [index, printed] of dates.entries()) {
        const got = numberOf(frostDay(printedSpread(mean, sd, share), spring, (index + 1) / 10));
        if (printed === '--') expect(got, `P${(index + 1) * 10}`).toBeNull();
        else expect(apart(got ?? Number.NaN, printedDay(printed)), printed).toBeLessThanOrEqual(1);
      }
    },
  );
});

function vegaMinima(location: string): DailyMinimum[] {
  const path = new URL('../../node_modules/vega-datasets/data/weather.csv', import.meta.url);
  return readFileSync(path, 'utf8')
    .split('\n')
    .map((line) => line.split(','))
    .filter(([name]) => name === location)
    .map((cells) => ({ date: asDay(cells[1] ?? ''), celsius: Number(cells[4]) }));
}

function chicagoMinima(): DailyMinimum[] {
  const path = new URL('../../fixtures/weather/chicago-daily.csv', import.meta.url);
  return readFileSync(path, 'utf8')
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(','))
    .map((cells) => ({ date: asDay(cells[0] ?? ''), celsius: ((Number(cells[1]) - 32) * 5) / 9 }));
}

// Worked out in Python and in base R from vega-datasets (BSD-3; US Government data) and from modeldata's Chicago (MIT).
describe('last frosts of open daily series', () => {
  const minima: Record<string, DailyMinimum[]> = {
    'vega-Seattle': vegaMinima('Seattle'),
    'vega-New York': vegaMinima('New York'),
    'chicago-modeldata(F)': chicagoMinima(),
  };

  it.each(Object.entries(lastFrosts))('%s are met to the day', (name, { rule, dates }) => {
    const series = minima[name.replace(/ <=?$/, '')] ?? [];
    const { years, dropped } = frostRecord(series, spring, { thresholdCelsius: 0, orBelow: rule === '<=' });
    expect(years.map(({ date }) => date)).toEqual(dates);
    expect(dropped).toEqual([]);
  });

  // By hand from the dates above: 16 years, mean 97.25, sd 7.95 days of a common year, t(0.9, 15) = 1.3406 (R's qt).
  it('Chicago’s even chance falls on 8 April, its one in ten on 19 April', () => {
    const outlook = frostOutlook(chicagoMinima(), spring, zeroOrBelow, [0.5, 0.1]) as FrostOutlook;
    expect(outlook.at.map(({ day }) => day)).toEqual(['04-08', '04-19']);
  });

  // Four years: sd drawn towards 12 days, t(0.9, 11) = 1.3634 (R's qt).
  it('Seattle’s few years widen its one in ten', () => {
    const outlook = frostOutlook(vegaMinima('Seattle'), spring, zeroOrBelow, [0.1]) as FrostOutlook;
    expect(outlook.at[0]?.day).toBe('03-22');
  });
});

/** Every day of the season of these years at 8 °C, but for the frosts named. */
function mildYears(
  from: Day,
  to: Day,
  frosts: readonly string[],
  missing: readonly string[] = [],
): DailyMinimum[] {
  const minima: DailyMinimum[] = [];
  for (let date = from; date <= to; date = addDays(date, 1))
    if (!missing.includes(date)) minima.push({ date, celsius: frosts.includes(date) ? -1 : 8 });
  return minima;
}

describe('the years of a record', () => {
  const frosts = ['2020-04-20', '2021-02-10', '2021-05-02', '2023-04-11'];
  const minima = mildYears(asDay('2020-01-01'), asDay('2023-12-31'), frosts);

  it('have the last frost of spring, or none', () => {
    expect(frostRecord(minima, spring, zeroOrBelow).years).toEqual([
      { year: 2020, date: '2020-04-20' },
      { year: 2021, date: '2021-05-02' },
      { year: 2022, date: null },
      { year: 2023, date: '2023-04-11' },
    ]);
  });

  it('count a frost-free year in the share of years with frost', () => {
    expect(frostSpread(frostRecord(minima, spring, zeroOrBelow), spring)).toMatchObject({
      share: 0.75,
      n: 3,
    });
  });

  it('have no day where frost is rarer than the risk', () => {
    const outlook = frostOutlook(minima, spring, zeroOrBelow, [0.9, 0.75, 0.5]) as FrostOutlook;
    expect(outlook.at.map(({ day }) => day === null)).toEqual([true, true, false]);
  });

  it('hold the threshold itself to be a frost only where told', () => {
    const even = mildYears(asDay('2020-01-01'), asDay('2021-12-31'), []).map((each) =>
      each.date.endsWith('-03-05') ? { ...each, celsius: 0 } : each,
    );
    expect(frostRecord(even, spring, zeroOrBelow).years.map(({ date }) => date)).toEqual([
      '2020-03-05',
      '2021-03-05',
    ]);
    const below = { thresholdCelsius: 0, orBelow: false };
    expect(frostRecord(even, spring, below).years.map(({ date }) => date)).toEqual([null, null]);
  });

  it('drop out where a gap may hide the last frost', () => {
    const gappy = mildYears(asDay('2020-01-01'), asDay('2023-12-31'), frosts, ['2023-04-25']);
    const { years, dropped } = frostRecord(gappy, spring, zeroOrBelow);
    expect(dropped).toEqual([2023]);
    expect(years.map(({ year }) => year)).toEqual([2020, 2021, 2022]);
  });

  it('stay where the gap lies before the last frost, or after every frost of other years', () => {
    const gaps = ['2023-03-02', '2023-05-03', '2023-07-01'];
    const gappy = mildYears(asDay('2020-01-01'), asDay('2023-12-31'), frosts, gaps);
    expect(frostRecord(gappy, spring, zeroOrBelow).dropped).toEqual([]);
  });

  it('drop out while the season is still under way', () => {
    const begun = mildYears(asDay('2020-01-01'), asDay('2024-03-20'), frosts);
    expect(frostRecord(begun, spring, zeroOrBelow).dropped).toEqual([2024]);
  });

  it('are too few with one frost among them', () => {
    const one = mildYears(asDay('2020-01-01'), asDay('2022-12-31'), ['2021-04-04']);
    expect(frostOutlook(one, spring, zeroOrBelow, [0.1])).toMatchObject({
      refused: 'tooFewFrostYears',
      frostYears: 1,
    });
  });

  it('count a day given twice with its lower minimum', () => {
    const twice = [...minima, { date: asDay('2022-05-20'), celsius: -0.2 }];
    expect(frostRecord(twice, spring, zeroOrBelow).years[2]).toEqual({ year: 2022, date: '2022-05-20' });
  });
});

describe('the first frost of autumn', () => {
  it('is the earliest from August on, and its risk counts backwards', () => {
    const frosts = ['2020-10-20', '2020-11-03', '2021-10-30', '2022-10-10'];
    const minima = mildYears(asDay('2020-01-01'), asDay('2022-12-31'), frosts);
    const outlook = frostOutlook(minima, autumn, zeroOrBelow, [0.5, 0.1]) as FrostOutlook;
    expect(outlook.years.map(({ date }) => date)).toEqual(['2020-10-20', '2021-10-30', '2022-10-10']);
    const [even, tenth] = outlook.at.map(({ day }) => day ?? '');
    expect(even).toBe('10-20');
    expect(tenth! < even!).toBe(true);
  });

  it('drops a year out whose gap lies before it', () => {
    const frosts = ['2020-10-20', '2021-10-30', '2022-10-10'];
    const minima = mildYears(asDay('2020-01-01'), asDay('2022-12-31'), frosts, ['2021-10-15']);
    expect(frostRecord(minima, autumn, zeroOrBelow).dropped).toEqual([2021]);
  });
});

describe('the southern hemisphere', () => {
  const frosts = ['2020-09-20', '2021-10-02', '2022-09-11', '2021-05-20', '2022-06-01'];
  const minima = mildYears(asDay('2020-02-01'), asDay('2023-01-31'), frosts);

  it('has its spring from July to January', () => {
    expect(frostRecord(minima, southernSpring, zeroOrBelow).years).toEqual([
      { year: 2020, date: '2020-09-20' },
      { year: 2021, date: '2021-10-02' },
      { year: 2022, date: '2022-09-11' },
    ]);
  });

  it('has its autumn from February to June', () => {
    expect(frostRecord(minima, southernAutumn, zeroOrBelow).years).toEqual([
      { year: 2020, date: null },
      { year: 2021, date: '2021-05-20' },
      { year: 2022, date: '2022-06-01' },
    ]);
  });

  it('answers the same day of the season for the same days of frost', () => {
    const north = mildYears(asDay('2020-01-01'), asDay('2022-12-31'), [
      '2020-04-10',
      '2021-04-20',
      '2022-04-05',
    ]);
    const south = mildYears(asDay('2020-07-01'), asDay('2023-06-30'), [
      '2020-10-08',
      '2021-10-18',
      '2022-10-03',
    ]);
    const day = (minima: DailyMinimum[], season: FrostSeason) => {
      const { at } = frostOutlook(minima, season, zeroOrBelow, [0.1]) as FrostOutlook;
      return seasonDay(season, asDay(`2001-${at[0]?.day}`));
    };
    expect(day(south, southernSpring)).toBe(day(north, spring));
  });
});

describe('leap years', () => {
  it('count 29 February as the 28th, and later days as in any year', () => {
    expect(seasonDay(spring, asDay('2024-02-29'))).toBe(59);
    expect(seasonDay(spring, asDay('2024-03-01'))).toBe(60);
    expect(seasonDay(spring, asDay('2023-03-01'))).toBe(60);
  });

  it('let a frost on 29 February be the last of spring', () => {
    const minima = mildYears(asDay('2023-01-01'), asDay('2024-12-31'), ['2023-02-20', '2024-02-29']);
    expect(frostRecord(minima, spring, zeroOrBelow).years[1]?.date).toBe('2024-02-29');
  });
});
