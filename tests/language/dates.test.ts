import { describe, expect, it } from 'vitest';
import { asDay } from '../../src/calendar/day.js';
import { datesIn } from '../../src/language/dates.js';

const now = {
  today: asDay('2026-05-20'),
  timeNow: '09:30',
  zone: 'Europe/London',
  dateOrder: 'DMY',
} as const;

describe('datesIn', () => {
  it('finds a phrase in running text with its place and both leanings', () => {
    expect(datesIn('potted on 6 of them a wk last Sun, 3in', now)).toMatchObject([
      { text: 'a wk last Sun', start: 20, past: { date: '2026-05-10' }, certain: true },
    ]);
  });

  it('leans to the past and to the future', () => {
    expect(datesIn('Tuesday', now)).toMatchObject([
      { past: { date: '2026-05-19' }, future: { date: '2026-05-26' } },
    ]);
  });

  it('asks about a day that no calendar has', () => {
    expect(datesIn('struck 4 on 31 April', now)).toMatchObject([{ past: { problem: 'impossible' } }]);
  });

  it('passes over what it is told to', () => {
    expect(datesIn('sold the Tuesday Kettle on Tuesday', now, { exclude: [[9, 23]] })).toMatchObject([
      { text: 'on Tuesday' },
    ]);
  });
});
