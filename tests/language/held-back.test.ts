/** What was kept back from a deed, in its sentence or the next: all but those. */
import { expect, it } from 'vitest';
import { read } from '../../src/language/read.js';

const context = {
  batches: [
    {
      label: 'SH1',
      variety: 'Salt Harrier',
      crop: 'pelargonium',
      struck: '2026-02-01' as never,
      count: 8,
      rooted: 8,
    },
  ],
  places: ['cold frame'],
};

const entriesOf = (text: string) =>
  read({ text, now: Date.parse('2026-05-25T09:00:00Z'), zone: 'Europe/London', context }).entries.map(
    ({ entry }) => entry,
  );

it.each([
  ['planted out the Salt Harrier, kept two back for Mum', 'plantOut', 6],
  ['planted out the Salt Harrier. Kept two back for Mum', 'plantOut', 6],
  ['planted out the Salt Harrier, left two in the cold frame', 'plantOut', 6],
  ['planted out the Salt Harrier and held 2 back as spares', 'plantOut', 6],
  ['potted on the Salt Harrier but left three', 'potOn', 5],
  ['pinched the Salt Harrier and left one to flower', 'pinch', 7],
  ['sold the Salt Harrier, holding two back', 'dispatch', 6],
  ['gave Mum the Salt Harrier, kept two for me', 'dispatch', 6],
  ['planted out five Salt Harrier, kept three', 'plantOut', 5],
])('“%s” is a %s of %i', (text, kind, count) => {
  expect(entriesOf(text)).toMatchObject([{ kind, count }]);
});

it.each([
  'planted out the Salt Harrier, left the label off',
  'planted out the Salt Harrier. Left two dead ones in the pot',
  'planted out the Salt Harrier and left for work',
])('“%s” is of all', (text) => {
  expect(entriesOf(text)).toMatchObject([{ kind: 'plantOut' }]);
  expect(entriesOf(text)[0]).not.toHaveProperty('count');
});
