/** Which of several hearings is taken where the likeliest tells something already. */
import { describe, expect, it } from 'vitest';
import type { NoteContext } from '../../src/language/note.js';
import { plainestHearing } from '../../src/language/hearing/plainest-hearing.js';
import { readingOf } from '../../src/language/read.js';

const context: NoteContext = {
  varieties: [{ name: 'Salt Harrier', crop: 'dahlia' }, { name: 'Hazel Bonnet' }],
};
/** `others`: each with how far it is behind. */
const taken = (likeliest: string, others: Record<string, number>, p = 0.7): string | undefined =>
  plainestHearing(
    {
      words: likeliest.split(' ').map((word) => ({ word, p })),
      others: Object.keys(others),
      lags: Object.values(others),
    },
    context,
    (text) => readingOf({ text, now: Date.parse('2026-05-09T09:00:00Z'), zone: 'Europe/London', context }),
  )
    ?.map(({ word, p }) => (p === 0 ? `${word}?` : word))
    .join(' ');

describe('the likeliest hearing', () => {
  it.each([
    [
      'lacks the number that another has',
      'planted the salt harrier under the window',
      { 'planted three salt harrier under the window': 9 },
      'planted three? salt harrier under the window',
    ],
    [
      'tells of a second thing done to the same plants',
      'took six cuttings of salt harrier in the shed and lost four',
      { 'took six cuttings of salt harrier in the shed at last four': 1 },
      'took six cuttings of salt harrier in the shed at? last? four',
    ],
  ])('gives way where it %s', (_, likeliest, others, meant) => {
    expect(taken(likeliest, others)).toBe(meant);
  });

  it.each<[string, string, Record<string, number>]>([
    ['another is as plain', 'lost three salt harrier', { 'lost two salt harrier': 1 }],
    [
      'another has its number and is far behind by sound',
      'planted the salt harrier under the window',
      { 'planted three salt harrier under the window': 60 },
    ],
    ['it answers', 'yes', { 'lost three salt harrier': 0 }],
    ['it puts right', 'that should be seven salt harrier not six', { 'lost seven salt harrier': 0 }],
    ['it asks', 'how many salt harrier have i got', { 'lost eight salt harrier': 0 }],
    ['it is an instruction', 'snooze everything for a week', { 'lost eight salt harrier': 0 }],
    ['the other asks', 'moved the salt harrier', { 'how many salt harrier have i got': 0 }],
    ['the other tells nothing', 'moved the salt harrier', { 'lovely morning out there': 0 }],
    ['nothing else was heard', 'moved the salt harrier', {}],
  ])('stands where %s', (_, likeliest, others) => {
    expect(taken(likeliest, others)).toBeUndefined();
  });

  it('stands where it is so sure that nothing is asked', () => {
    const others = { 'moved three salt harrier to the shed': 0 };
    expect(taken('moved the salt harrier to the shed', others)).toMatch(/three\?/);
    expect(taken('moved the salt harrier to the shed', others, 0.999)).toBeUndefined();
  });

  it('stands where it is not known how far others are behind', () => {
    const words = 'planted the salt harrier out'.split(' ').map((word) => ({ word, p: 0.7 }));
    const others = ['planted three salt harrier out'];
    const read = (text: string) => readingOf({ text, now: 0, zone: 'UTC', context });
    expect(plainestHearing({ words, others }, context, read)).toBeUndefined();
    expect(plainestHearing({ words, others, lags: [5] }, context, read)).toBeDefined();
  });

  it('gives way to one that names a plant where it tells nothing, and to none off the subject', () => {
    expect(taken('salt area dead tree', { 'lost three salt harrier': 40 })).toMatch(/harrier/);
    expect(taken('three nil down at half time', { 'three nil town at half time': 1 })).toBeUndefined();
  });
});
