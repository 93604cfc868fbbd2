/** Days to plant out, and what they rest on. */
import { describe, expect, it } from 'vitest';
import { asDay } from '../../src/calendar/day.js';
import { plantOutDay, recordedFrostDates, statedFrostDates } from '../../src/horticulture/plant-out.js';

describe('a usual last frost, stated', () => {
  it('is the even chance; one in ten comes 16 days later', () => {
    expect(statedFrostDates('05-05', 'spring', 'north')).toEqual({
      from: 'stated',
      half: 'spring',
      evenChance: '05-05',
      oneInTen: '05-21',
    });
  });

  it('counts backwards for the first of autumn, across New Year in the south', () => {
    expect(statedFrostDates('10-15', 'autumn', 'north').oneInTen).toBe('09-29');
    expect(statedFrostDates('12-28', 'spring', 'south').oneInTen).toBe('01-13');
  });

  // Common practice, no source: a cool northern English garden, usual last frost in the first week of May.
  it('makes a cool northern English garden safe in the third or fourth week of May', () => {
    const { oneInTen } = statedFrostDates('05-05', 'spring', 'north');
    expect(oneInTen! >= '05-15' && oneInTen! <= '05-28').toBe(true);
  });
});

describe('a record of minima', () => {
  const minima = [2021, 2022, 2023, 2024].flatMap((year) =>
    Array.from({ length: 212 }, (_, index) => {
      const date = new Date(Date.UTC(year, 0, 1 + index)).toISOString().slice(0, 10);
      return { date: asDay(date), celsius: date.endsWith('04-10') ? -1 : date.endsWith('04-28') ? 1.5 : 9 };
    }),
  );

  it('advises tender growth by a screen minimum of 2 °C, hardier growth by frost itself', () => {
    const of = (tender: boolean) =>
      recordedFrostDates(minima, { half: 'spring', hemisphere: 'north', tender })?.evenChance;
    expect(of(true)).toBe('04-28');
    expect(of(false)).toBe('04-10');
  });

  it('says nothing where fewer than two years had frost', () => {
    expect(recordedFrostDates([], { half: 'spring', hemisphere: 'north', tender: true })).toBeNull();
  });
});

describe('the day to plant out', () => {
  const frost = { last: '05-21', first: '10-10' };

  it('waits for the last frost', () => {
    expect(plantOutDay(asDay('2026-04-20'), frost)).toBe('2026-05-21');
  });

  it('is the day on which the plant is ready, in summer', () => {
    expect(plantOutDay(asDay('2026-06-10'), frost)).toBe('2026-06-10');
  });

  it('lies in the next calendar year for what is ready too late to take hold', () => {
    expect(plantOutDay(asDay('2026-09-13'), frost)).toBe('2027-05-21');
    expect(plantOutDay(asDay('2026-12-30'), frost)).toBe('2027-05-21');
  });

  it('turns about New Year in the south', () => {
    const southern = { last: '10-25', first: '04-15' };
    expect(plantOutDay(asDay('2026-09-01'), southern)).toBe('2026-10-25');
    expect(plantOutDay(asDay('2027-01-20'), southern)).toBe('2027-01-20');
    expect(plantOutDay(asDay('2027-04-01'), southern)).toBe('2027-10-25');
  });

  it('does not wait where there is no frost to wait for', () => {
    expect(plantOutDay(asDay('2026-02-01'), { last: null, first: null })).toBe('2026-02-01');
  });
});
