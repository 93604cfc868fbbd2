/** Lists under an act, a line each or behind a colon, and plans under "to do". */
import { describe, expect, it } from 'vitest';
import { asDay } from '../../src/calendar/day.js';
import { read } from '../../src/language/read.js';

const context = {
  varieties: [
    { name: 'Salt Harrier', crop: 'salvia' },
    { name: 'Tallow Bell', crop: 'fuchsia' },
  ],
  batches: [
    {
      label: 'SH1',
      variety: 'Salt Harrier',
      crop: 'salvia',
      struck: asDay('2026-03-20'),
      count: 12,
      pots: 3,
    },
    { label: 'TB1', variety: 'Tallow Bell', crop: 'fuchsia', struck: asDay('2026-03-25'), count: 8, pots: 2 },
  ],
  places: ['propagator'],
};

/** Each entry in short: its kind, plant, number and day. */
const told = (text: string): string[] =>
  read({ text, now: Date.parse('2026-05-02T10:00:00+01:00'), zone: 'Europe/London', context }).entries.map(
    ({ entry }) => {
      const { kind, variety, count, rooted, date, to } = entry as unknown as Record<string, unknown>;
      return [kind, variety, count ?? rooted, date, to].filter((slot) => slot !== undefined).join(' ');
    },
  );

describe('a list under its act', () => {
  it.each([
    ['Took cuttings today:\nFuchsia Captain Mott x6\nFuchsia Bell Aldous x4'],
    ['Took today\nCaptain Mott 6\nBell Aldous 4'],
    ['Took today:\n• Captain Mott - 6\n• Bell Aldous: 4'],
    ['Cuttings 2/5\n6 Captain Mott\n4 Bell Aldous'],
    ['Struck today: Captain Mott 6, Bell Aldous 4'],
    ['Cuttings taken today - Captain Mott 6 and Bell Aldous 4'],
  ])('reads %j as two strikes', (text) => {
    expect(told(text)).toEqual(['strike Captain Mott 6 2026-05-02', 'strike Bell Aldous 4 2026-05-02']);
  });

  it.each([
    ['Rooted:\nSalt Harrier 4/12\nTallow Bell all', ['check Salt Harrier 4', 'check Tallow Bell all']],
    ['Rooted: Salt Harrier 4/12, Tallow Bell 8/8', ['check Salt Harrier 4', 'check Tallow Bell 8']],
    ['Losses today: 3 Salt Harrier', ['loss Salt Harrier 3 2026-05-02']],
    [
      'Sales today\nSalt Harrier 2\nTallow Bell 1',
      ['dispatch Salt Harrier 2 2026-05-02', 'dispatch Tallow Bell 1 2026-05-02'],
    ],
    [
      'Given to Jan: Salt Harrier x2, Tallow Bell x1',
      ['dispatch Salt Harrier 2 Jan', 'dispatch Tallow Bell 1 Jan'],
    ],
    ['Pinched:\nSalt Harrier\nTallow Bell', ['pinch Salt Harrier', 'pinch Tallow Bell']],
    [
      'Took:\nCaptain Mott 6\nLost:\nTallow Bell 2\nPotted on 3 Salt Harrier',
      ['strike Captain Mott 6', 'loss Tallow Bell 2', 'potOn Salt Harrier 3'],
    ],
  ])('reads %j by its headings', (text, entries) => {
    expect(told(text)).toEqual(entries);
  });

  it('leaves lines that tell of themselves alone', () => {
    expect(told('Salt Harrier 4 rooted\nTallow Bell 2 dead')).toEqual([
      'check Salt Harrier 4',
      'loss Tallow Bell 2',
    ]);
  });
});

describe('plans under a heading', () => {
  it.each([
    ['To do:\n- pot on Salt Harrier\n- pinch Tallow Bell'],
    ['TODO\ntake 12 Salt Harrier'],
    ['Things to do: pot on Salt Harrier; pinch Tallow Bell'],
    ['Need to: pot on Salt Harrier, pinch Tallow Bell'],
    ['next: pot on Salt Harrier'],
  ])('logs nothing of %j', (text) => {
    expect(told(text)).toEqual([]);
  });

  it('keeps those of a day as a reminder, and takes what was done under one', () => {
    expect(told('Tomorrow\npot on Salt Harrier')).toEqual(['remind Salt Harrier 2026-05-03']);
    expect(told('Saturday\ntook 6 Salt Harrier\npotted on 4 Tallow Bell')).toEqual([
      'strike Salt Harrier 6 2026-05-02',
      'potOn Tallow Bell 4 2026-05-02',
    ]);
  });
});

describe('people who are called as months are', () => {
  it('are given plants, and are no days', () => {
    expect(told('Gave 2 Salt Harrier to Jan, 3 Tallow Bell to April')).toEqual([
      'dispatch Salt Harrier 2 Jan',
      'dispatch Tallow Bell 3 April',
    ]);
    expect(told('gave Salt Harrier x2 to Sue')).toEqual(['dispatch Salt Harrier 2 Sue']);
  });
});
