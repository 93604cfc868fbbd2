import { existsSync, readFileSync } from 'node:fs';
import Holidays from 'date-holidays';
import { describe, expect, it } from 'vitest';
import { countryOf } from '../../src/calendar/country.js';
import {
  adventSunday,
  easterSunday,
  fathersDay,
  mothersDay,
  orthodoxEaster,
} from '../../src/calendar/customary-days.js';
import { hemisphereOf } from '../../src/calendar/hemisphere.js';
import { publicHolidays } from '../../src/calendar/holidays.js';

/** The library's own day of the first holiday so named. */
function byLibrary(country: string, name: string, year: number): string | undefined {
  const all = new Holidays(country, { languages: ['en'] }).getHolidays(year);
  return all.find((each) => each.name === name)?.date.slice(0, 10);
}

const years = Array.from({ length: 41 }, (_, index) => 2010 + index);

describe('customary days', () => {
  it('have the Easter Sundays of the published tables', () => {
    // The Book of Common Prayer's table of Easter, and the US Census Bureau's list; from memory.
    const published = [
      '2000-04-23',
      '2008-03-23',
      '2011-04-24',
      '2024-03-31',
      '2025-04-20',
      '2026-04-05',
      '2027-03-28',
      '2028-04-16',
      '2038-04-25',
    ];
    expect(published.map((day) => easterSunday(Number(day.slice(0, 4))))).toEqual(published);
  });

  it('have the Easter Sundays, Mothering Sundays and Fathers Days of date-holidays', () => {
    for (const year of years) {
      expect(easterSunday(year)).toBe(byLibrary('GB', 'Easter Sunday', year));
      expect(mothersDay(year, 'GB')).toBe(byLibrary('GB', "Mother's Day", year));
      expect(mothersDay(year, 'US')).toBe(byLibrary('US', "Mother's Day", year));
      expect(fathersDay(year, 'GB')).toBe(byLibrary('GB', "Father's Day", year));
      expect(fathersDay(year, 'AU')).toBe(byLibrary('AU', "Father's Day", year));
      expect(adventSunday(year)).toBe(byLibrary('DE', '1. Advent', year));
      expect(orthodoxEaster(year)).toBe(byLibrary('GR', 'Easter Sunday', year));
    }
  });
});

describe('public holidays', () => {
  it.each([
    // Dates set by each government: gov.uk, gov.ie, opm.gov, govt.nz, business.tas.gov.au; from memory.
    ['Europe/London', 2026, '2026-08-31'],
    ['Europe/London', 2022, '2022-06-02'],
    ['Europe/Dublin', 2026, '2026-06-01'],
    ['America/New_York', 2026, '2026-11-26'],
    ['Pacific/Auckland', 2026, '2026-07-10'],
    ['Australia/Hobart', 2026, '2026-06-08'],
  ])('of %s in %i hold %s', (zone, year, day) => {
    expect(publicHolidays(zone, year).map((each) => each.day)).toContain(day);
  });

  it('are none where a zone has no country', () => {
    expect(publicHolidays('UTC', 2026)).toEqual([]);
  });
});

describe('zones', () => {
  const table = '/usr/share/zoneinfo/zone.tab';

  // The table of the time zone database itself: country, coordinates (ISO 6709), zone.
  it.skipIf(!existsSync(table))('lie in the hemisphere and country that the zone table gives', () => {
    const rows = readFileSync(table, 'utf8')
      .split('\n')
      .filter((line) => line !== '' && !line.startsWith('#'))
      .map((line) => line.split('\t'));
    expect(rows.length).toBeGreaterThan(300);
    for (const [code = '', place = '', zone = ''] of rows) {
      expect([zone, hemisphereOf(zone)]).toEqual([zone, place.startsWith('-') ? 'south' : 'north']);
      expect([zone, countryOf(zone)?.code ?? code]).toEqual([zone, code]);
    }
  });
});
