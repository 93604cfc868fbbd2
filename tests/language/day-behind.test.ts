/** The day of what a note tells, in a sentence of its own behind it. */
import { describe, expect, it } from 'vitest';
import { read } from '../../src/language/read.js';

const context = {
  varieties: [{ name: 'Salt Harrier', crop: 'pelargonium' }],
  batches: [{ label: 'SH1', variety: 'Salt Harrier', crop: 'pelargonium', count: 14, place: 'propagator' }],
  places: ['propagator', 'bench'],
};

/** Each entry as its kind and day. */
function told(text: string): string {
  const { entries } = read({ text, now: Date.parse('2026-05-12T09:00:00Z'), zone: 'Europe/London', context });
  return entries
    .map(({ entry }) => [entry.kind, 'date' in entry ? entry.date : ''].join(' ').trim())
    .join(', ');
}

describe('a day in a sentence of its own', () => {
  it.each([
    ['Lost 3 Salt Harrier. Yesterday.', 'loss 2026-05-11'],
    ['lost 3 Salt Harrier. Raging. Yesterday', 'loss 2026-05-11'],
    ['Misted everything. That was on Sunday.', 'tend 2026-05-10'],
    ['6 Salt Harrier rooted!! (this morning)', 'check 2026-05-12'],
    ['Potted on 6 Salt Harrier. Lost one. Both on Sunday', 'potOn 2026-05-10, loss 2026-05-10'],
  ])('is that of what was told before: “%s”', (text, expected) => {
    expect(told(text)).toBe(expected);
  });

  it.each([
    ['Lost 3 Salt Harrier yesterday. Today.', 'loss 2026-05-11'],
    ['Lost 3 Salt Harrier. Tomorrow.', 'loss'],
    ['Lost 3 Salt Harrier. On Sunday?', 'loss'],
    ['Lost 3 Salt Harrier. Sunday was lovely.', 'loss'],
    ['That was Sunday.', 'amend'],
  ])('is left alone where it is no such thing: “%s”', (text, expected) => {
    expect(told(text)).toBe(expected);
  });
});
