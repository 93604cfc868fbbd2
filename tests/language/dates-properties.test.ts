import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { addDays, asDay, type Day, parseDay } from '../../src/calendar/day.js';
import { dateOf, datesIn, type Moment, type Resolved } from '../../src/language/dates.js';
import { phrasesOf, written } from './dates-fixtures.js';

const now: Moment = { today: asDay('2026-05-20'), timeNow: '09:30', zone: 'Europe/London', dateOrder: 'DMY' };
const phrases = ['british', 'second-language', 'slips'].flatMap((name) => phrasesOf(name).phrases);
const words = [...new Set(phrases.flatMap(({ text }) => text.split(' ')))];

const aDay = fc.integer({ min: 0, max: 20_000 }).map((days) => addDays(asDay('2000-01-01'), days));
const wordy = fc.array(fc.constantFrom(...words, '1', '31', '2026', '/', '-', ',', '.'), { maxLength: 60 });
const anyText = fc.oneof(
  fc.string({ maxLength: 300 }),
  fc.string({ unit: 'binary', maxLength: 300 }),
  wordy.map((each) => each.join(' ')),
  wordy.map((each) => each.join('')),
);

function daysOf(resolved: Resolved): Day[] {
  if ('problem' in resolved) return [];
  return 'date' in resolved ? [resolved.date] : [resolved.from, resolved.to];
}

describe('whatever the text', () => {
  it('finds lie inside it, in order and apart, and their days exist', () => {
    fc.assert(
      fc.property(anyText, aDay, (text, today) => {
        let last = 0;
        for (const found of datesIn(text, { ...now, today })) {
          expect(found.start).toBeGreaterThanOrEqual(last);
          expect(found.end).toBeGreaterThan(found.start);
          expect(found.end).toBeLessThanOrEqual(text.length);
          expect(text.slice(found.start, found.end)).toBe(found.text);
          last = found.end;
          for (const leaning of [found.past, found.future]) {
            for (const day of daysOf(leaning)) expect(parseDay(day)).toBe(day);
            if ('from' in leaning) expect(leaning.from <= leaning.to).toBe(true);
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  it('nothing is thrown at 4,096 characters of words of time', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...words), { minLength: 600, maxLength: 600 }), (each) => {
        datesIn(each.join(' ').slice(0, 4096), now);
      }),
      { numRuns: 5 },
    );
  });

  it('case and spacing change nothing', () => {
    fc.assert(
      fc.property(fc.constantFrom(...phrases), ({ text, past }) => {
        const found = dateOf(`  ${text.toUpperCase().replaceAll(' ', '   ')} `, now);
        expect(found && written(found.past)).toBe(past);
      }),
    );
  });
});

describe('beside luxon', () => {
  const luxon = (day: Day) => DateTime.fromISO(day, { zone: 'utc' });
  const past = (text: string, today: Day) => dateOf(text, { ...now, today })?.past;

  it('counts back the same days, weeks, months and years', () => {
    fc.assert(
      fc.property(
        aDay,
        fc.integer({ min: 1, max: 40 }),
        fc.constantFrom('day', 'week', 'month', 'year'),
        (today, number, unit) => {
          const expected = luxon(today)
            .minus({ [`${unit}s`]: number })
            .toISODate();
          expect(past(`${number} ${unit}s ago`, today)).toEqual({ date: expected });
        },
      ),
    );
  });

  it('takes the same weeks and weekdays', () => {
    const names = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
    fc.assert(
      fc.property(aDay, fc.integer({ min: 1, max: 7 }), (today, weekday) => {
        const monday = luxon(today).startOf('week');
        expect(past('last week', today)).toEqual({
          from: monday.minus({ weeks: 1 }).toISODate(),
          to: monday.minus({ days: 1 }).toISODate(),
        });
        expect(past(`next ${names[weekday - 1]}`, today)).toEqual({
          date: monday.plus({ weeks: 1, days: weekday - 1 }).toISODate(),
        });
        let latest = luxon(today);
        while (latest.weekday !== weekday) latest = latest.minus({ days: 1 });
        expect(past(`${names[weekday - 1]}`, today)).toEqual({ date: latest.toISODate() });
      }),
    );
  });

  it('numbers the same weeks of the year', () => {
    fc.assert(
      fc.property(aDay, (day) => {
        const { weekNumber, weekYear } = luxon(day);
        const week = past(`week ${weekNumber} of ${weekYear}`, day);
        expect(week && 'from' in week && week.from <= day && day <= week.to).toBe(true);
      }),
    );
  });
});
