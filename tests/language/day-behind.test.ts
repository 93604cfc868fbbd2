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

describe('a day said once in a sentence', () => {
  it.each([
    ['Misted the bench and lost two Salt Harrier on Sunday', 'tend 2026-05-10, loss 2026-05-10'],
    [
      'Misted the bench first thing, then lost two Salt Harrier yesterday',
      'tend 2026-05-11, loss 2026-05-11',
    ],
    ["Lost 3 Salt Harrier, dried right out while we were at Mum's yesterday", 'loss 2026-05-11'],
    ['Misted the bench after lunch on Sunday', 'tend 2026-05-10'],
    [
      'Potted on 6 Salt Harrier, the two that had snapped went in the bin on Sunday',
      'potOn 2026-05-10, loss 2026-05-10',
    ],
    ['On Sunday 4 of the Salt Harrier have rooted', 'check 2026-05-10'],
  ])('is of all its deeds: “%s”', (text, expected) => {
    expect(told(text)).toBe(expected);
  });

  it.each([
    ['Misted the bench yesterday and lost two Salt Harrier today', 'tend 2026-05-11, loss 2026-05-12'],
    ['Misted the bench, lost two Salt Harrier to the frost last night', 'tend, loss 2026-05-11'],
    ['Moved the Salt Harrier to the bench, bar the six which were sold Sunday', 'move, dispatch 2026-05-10'],
    ['Took 3 Salt Harrier, Jean took two of hers on Sunday', 'strike'],
    ['Misted the bench, the Salt Harrier sad since the frost on Sunday', 'tend'],
    ['Misted the bench because Jim is calling on Sunday', 'tend'],
  ])('is of one where it plainly tells another time: “%s”', (text, expected) => {
    expect(told(text)).toBe(expected);
  });
});

describe('a day that heads a note', () => {
  it.each([
    ['Yesterday: misted the bench. Lost two Salt Harrier.', 'tend 2026-05-11, loss 2026-05-11'],
    ['Yesterday: misted the bench. Two Salt Harrier rooted now.', 'tend 2026-05-11, check'],
    ['Sunday: misted the bench. Lost two Salt Harrier yesterday.', 'tend 2026-05-10, loss 2026-05-11'],
    ['Sunday: stock plants delivered: Salt Harrier x 12', 'stock 2026-05-10'],
  ])('is of all its sentences where no other is told: “%s”', (text, expected) => {
    expect(told(text)).toBe(expected);
  });
});
