import { describe, expect, it } from 'vitest';
import { addDays, asDay } from '../../src/calendar/day.js';
import { instantAt, localDay, localTime } from '../../src/calendar/zone.js';
import { dateOf, datesIn, type Moment } from '../../src/language/dates.js';
import { linesOf, phrasesOf, written } from './dates-fixtures.js';

const now: Moment = { today: asDay('2026-05-20'), timeNow: '09:30', zone: 'Europe/London', dateOrder: 'DMY' };
const families = [
  'british',
  'british-autumn',
  'united-states',
  'canada',
  'ireland',
  'antipodes',
  'second-language',
  'slips',
];

describe.each(families)('phrases of time: %s', (family) => {
  const { now, phrases } = phrasesOf(family);

  it.each(phrases)('$text', ({ text, past, future, time }) => {
    const found = dateOf(text, now);
    expect(found && { past: written(found.past), future: written(found.future), time: found.time }).toEqual({
      past,
      future,
      time,
    });
  });
});

describe('datesIn', () => {
  it('finds a phrase in running text with its place and both leanings', () => {
    expect(datesIn('potted on 6 of them a wk last Sun, 3in', now)).toMatchObject([
      { text: 'a wk last Sun', start: 20, past: { date: '2026-05-10' }, certain: true },
    ]);
  });

  it('finds several, in order', () => {
    const found = datesIn('10 on the 4th, 12 on the 5th and 6 yesterday', now);
    expect(found.map(({ text, past }) => [text, written(past)])).toEqual([
      ['on the 4th', '2026-05-04'],
      ['on the 5th', '2026-05-05'],
      ['yesterday', '2026-05-19'],
    ]);
  });

  it('asks about a day that no calendar has, and about a weekday that is not that day', () => {
    expect(datesIn('struck 4 on 31 April', now)).toMatchObject([{ past: { problem: 'impossible' } }]);
    expect(datesIn('struck 4 on Monday 5 May 2026', now)).toMatchObject([
      { past: { problem: 'impossible' } },
    ]);
  });

  it('asks about a done day that only last year could hold, more than six months back', () => {
    expect(datesIn('struck 4 on 3 November', now)).toMatchObject([
      {
        past: { problem: 'tooFarBack', options: ['2025-11-03', '2026-11-03'] },
        future: { date: '2026-11-03' },
      },
    ]);
  });

  it('passes over what it is told to', () => {
    const text = 'sold the Tuesday Kettle on Tuesday';
    expect(datesIn(text, now, { exclude: [[9, 23]] }).map((each) => each.text)).toEqual(['on Tuesday']);
  });

  it('is unsure of what could as well be something else', () => {
    const unsure = (text: string) => datesIn(text, now).map((each) => [each.text, each.certain]);
    expect(unsure('they sat in the frame')).toEqual([['sat', false]]);
    expect(unsure('took 3 may lodger')).toEqual([['3 may', false]]);
    expect(unsure('3/4 rooted')).toEqual([['3/4', false]]);
    expect(unsure('struck on the 3rd')).toEqual([['on the 3rd', true]]);
  });

  it('does not understand a phrase beside which a word that changes it is left over', () => {
    expect(datesIn('nearly a week on Sunday', now)).toMatchObject([{ past: { problem: 'ambiguous' } }]);
  });

  it.each(linesOf('not-dates'))('finds nothing in "$text"', ({ text = '' }) => {
    expect(datesIn(text, now)).toEqual([]);
  });

  it('keeps places right around full-width digits and invisible marks', () => {
    const text = 'took ５ on the ３rd\u200B, 2 on Mon\u00ADday';
    for (const { start, end, text: found } of datesIn(text, now)) expect(text.slice(start, end)).toBe(found);
    expect(datesIn(text, now).map(({ past }) => written(past))).toEqual(['2026-05-03', '2026-05-18']);
  });
});

describe('around midnight and when the clocks change', () => {
  const at = (day: string, time: string, zone: string): Moment => {
    const instant = instantAt(asDay(day), time, zone);
    return { ...now, today: localDay(instant, zone), timeNow: localTime(instant, zone), zone };
  };
  const past = (text: string, moment: Moment) =>
    written(dateOf(text, moment)?.past ?? { problem: 'ambiguous' });

  it('reads last night as the calendar day before, also at half past midnight', () => {
    expect(past('last night', at('2026-05-20', '00:30', 'Europe/London'))).toBe('2026-05-19');
    expect(past('last night', at('2026-05-20', '23:50', 'Europe/London'))).toBe('2026-05-19');
  });

  it('counts days, not hours, over a change of the clocks', () => {
    expect(past('yesterday', at('2026-03-30', '00:10', 'Europe/London'))).toBe('2026-03-29');
    expect(past('a week ago', at('2026-11-01', '00:10', 'Europe/London'))).toBe('2026-10-25');
    expect(past('yesterday', at('2026-09-07', '00:30', 'America/Santiago'))).toBe('2026-09-06');
  });

  it('takes the local day of the zone', () => {
    expect(past('today', at('2026-01-01', '00:15', 'Pacific/Apia'))).toBe('2026-01-01');
  });

  it('counts hours back over midnight', () => {
    expect(past('two hours ago', at('2026-05-20', '01:15', 'Europe/London'))).toBe('2026-05-19');
  });

  it('puts a time that has gone by on the next day for plans', () => {
    const moment = at('2026-05-20', '18:00', 'Europe/London');
    expect(dateOf('at 5', moment)).toMatchObject({ future: { date: '2026-05-21' }, time: '17:00' });
    expect(dateOf('at 7pm', moment)).toMatchObject({ future: { date: '2026-05-20' }, time: '19:00' });
  });
});

describe('seasons', () => {
  it.each([
    ['Europe/London', '2026-03-01..2026-05-31'],
    ['Australia/Hobart', '2025-09-01..2025-11-30'],
    ['America/Santiago', '2025-09-01..2025-11-30'],
    ['Pacific/Apia', '2025-09-01..2025-11-30'],
  ])('lie where the hemisphere of %s has them', (zone, expected) => {
    const found = dateOf('in the spring', { ...now, zone });
    expect(found && written(found.past)).toBe(expected);
  });
});

describe('the leanings', () => {
  it('let today count as done, and as a plan only where it is said', () => {
    const wednesday = dateOf('Wednesday', now);
    expect(wednesday).toMatchObject({ past: { date: now.today }, future: { date: addDays(now.today, 7) } });
    expect(dateOf('today', now)).toMatchObject({ future: { date: now.today } });
  });

  it('take the order of numbers from the note', () => {
    expect(dateOf('3/4', now)).toMatchObject({ past: { date: '2026-04-03' } });
    expect(dateOf('3/4', { ...now, dateOrder: 'MDY' })).toMatchObject({ past: { date: '2026-03-04' } });
    expect(dateOf('25/5/2026', { ...now, dateOrder: 'MDY' })).toMatchObject({ past: { date: '2026-05-25' } });
  });
});
