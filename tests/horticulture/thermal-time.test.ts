/** Thermal time, against sums worked out in R on Seattle's daily temperatures. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import answers from '../../fixtures/statistics/thermal.json' with { type: 'json' };
import { addDays, asDay, daysBetween } from '../../src/calendar/day.js';
import { forecast } from '../../src/horticulture/rooting-forecast.js';
import { learn } from '../../src/horticulture/rooting-learning.js';
import { priorFromRange } from '../../src/horticulture/rooting-prior.js';
import { clockFrom, firstDayReaching, plainClock, thermalDay } from '../../src/horticulture/thermal-time.js';

const [header = '', ...rows] = readFileSync('node_modules/vega-datasets/data/seattle-weather.csv', 'utf8')
  .trim()
  .split('\n');
const columns = header.split(',');
const seattle = rows.map((row) => {
  const cells = row.split(',');
  const number = (name: string) => Number(cells[columns.indexOf(name)]);
  return {
    date: asDay(cells[columns.indexOf('date')]!.slice(0, 10)),
    mean: (number('temp_max') + number('temp_min')) / 2,
  };
});

describe('thermal time', () => {
  it.each(answers.cases)('reaches $target on $reached from $strike above $base °C', (each) => {
    const start = seattle.findIndex(({ date }) => date === each.strike);
    // One unit is one degree-day; the answers count the strike day as day 1.
    const units = seattle
      .slice(start)
      .map(({ mean }) => thermalDay(mean + each.shift, each.base + 1, each.base));
    expect(firstDayReaching(units, each.target)).toBe(each.days);
    expect(addDays(asDay(each.strike), each.days - 1)).toBe(each.reached);
    const sum = (days: number) => units.slice(0, days).reduce((all, unit) => all + unit, 0);
    expect(sum(each.days)).toBeCloseTo(each.sum_at, 8);
    expect(sum(each.days - 1)).toBeCloseTo(each.sum_before, 8);
  });

  it('counts the day after striking as day 1 and comes back from where it went', () => {
    const struckOn = asDay('2014-06-15');
    const means = new Map(
      seattle
        .filter(({ date }) => date > struckOn)
        .slice(0, 40)
        .map(({ date, mean }) => [daysBetween(struckOn, date), mean]),
    );
    const clock = clockFrom(means, 20);
    expect(clock.thermal(1)).toBeCloseTo(thermalDay(means.get(1)!, 20), 12);
    for (const day of [0.5, 1, 7.25, 40, 63]) expect(clock.day(clock.thermal(day))).toBeCloseTo(day, 9);
  });

  it('gives days not told the mean of those told', () => {
    const clock = clockFrom(
      new Map([
        [2, 14],
        [4, 20],
      ]),
      20,
    );
    expect(clock.thermal(1)).toBeCloseTo(thermalDay(17, 20), 12);
    expect(clock.thermal(10) - clock.thermal(9)).toBeCloseTo(thermalDay(17, 20), 12);
  });

  it('lets warmth hurry and cold delay a forecast by the ratio of the paces', () => {
    const learnt = learn(priorFromRange([10, 21]), []);
    const at = (celsius: number) =>
      forecast(learnt, {
        batch: { struck: 10, checks: [] },
        today: 0,
        clock: celsius === 20 ? plainClock : clockFrom(new Map([[1, celsius]]), 20),
      }).ready!.p50;
    expect(at(26) / at(20)).toBeCloseTo(12 / 18, 1);
    expect(at(14) / at(20)).toBeCloseTo(12 / 6, 1);
  });
});
