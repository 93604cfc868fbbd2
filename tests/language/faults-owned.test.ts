/** Faults that a grower owns up to, and what has their words and puts nothing right. */
import { describe, expect, it } from 'vitest';
import type { Note } from '../../src/language/note.js';
import { read } from '../../src/language/read.js';

const note = (text: string): Note => ({
  text,
  now: Date.parse('2026-04-22T17:20:00Z'),
  zone: 'Europe/London',
  context: {
    varieties: [
      { name: 'Salt Harrier', crop: 'dahlia' },
      { name: 'Tallow Bell', crop: 'fuchsia' },
    ],
    batches: [
      { label: 'SH1', variety: 'Salt Harrier', crop: 'dahlia', count: 15 },
      { label: 'TB1', variety: 'Tallow Bell', crop: 'fuchsia', count: 18 },
    ],
    places: ['greenhouse', 'porch'],
  },
});
const amendsOf = (text: string) =>
  read(note(text)).entries.flatMap(({ entry }) => (entry.kind === 'amend' ? [entry.set] : []));

describe('a fault owned up to', () => {
  it.each<readonly [string, object]>([
    ['Got the day wrong for the Salt Harrier, that was Monday', { date: '2026-04-20' }],
    ['The date on the Salt Harrier is out, it was yesterday', { date: '2026-04-21' }],
    ['the salt harrier entrys wrong it was 4', { count: 4 }],
    ['Wrong place for the Salt Harrier, they are in the porch', { place: 'porch' }],
    ['Miscounted the Salt Harrier. 3 is the right number', { count: 3 }],
    ['ignore the number I gave you just now, make it 3', { count: 3 }],
    ['she says 16 but it was 18 Salt Harrier, I counted', { count: 18 }],
    ['Did I say Salt Harrier? I meant Tallow Bell', { variety: 'Tallow Bell' }],
    ['Put Salt Harrier where I wrote Tallow Bell', { variety: 'Salt Harrier' }],
    ["You've got rot down for the Salt Harrier but it was slugs", { cause: 'pest' }],
  ])('puts right: %s', (text, set) => {
    expect(amendsOf(text)).toEqual([expect.objectContaining(set)]);
  });

  it.each([
    'the thermometer says 12 but it was 10',
    'the label says 12 but it was 10',
    'i said 5 but it rained',
    'did i put 4 salt harrier in the greenhouse',
    'Did I say Salt Harrier?',
    '3 Salt Harrier slipped off the bench',
    'I got the lid wrong, took 3 Salt Harrier',
    'the Salt Harrier number is out',
    'you have Salt Harrier in the greenhouse but 4 in the porch',
    'please correct the light in the greenhouse',
  ])('is none: %s', (text) => {
    expect(amendsOf(text)).toEqual([]);
  });
});
