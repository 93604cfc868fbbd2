/** A crop that heads the list of its varieties is no entry of its own; what it says is theirs. */
import { expect, it } from 'vitest';
import { read } from '../../src/language/read.js';

const context = {
  varieties: [
    { name: 'Rust Duchess', crop: 'dahlia' },
    { name: 'Salt Harrier', crop: 'pelargonium' },
  ],
  places: ['greenhouse', 'shed'],
};

const entriesOf = (text: string) =>
  read({ text, now: Date.parse('2026-03-09T09:00:00Z'), zone: 'Europe/London', context }).entries.map(
    ({ entry }) => entry,
  );

const fox = { variety: 'Ember Fox', crop: 'dahlia', count: 3 };
const duchess = { variety: 'Rust Duchess', crop: 'dahlia', count: 2 };

it.each([
  'potted up the dahlia tubers in the greenhouse, 3 Ember Fox and 2 Rust Duchess',
  'brought the dahlia tubers out of the shed and potted them up in the greenhouse, 3 Ember Fox and 2 Rust Duchess',
])('“%s” is of two varieties, both in the greenhouse', (text) => {
  const kind = { kind: 'stock', place: 'greenhouse' };
  expect(entriesOf(text)).toEqual([
    { ...kind, ...fox },
    { ...kind, ...duchess },
  ]);
});

it.each([
  [
    'potted on all the dahlias into 1L, that’s 3 Ember Fox and 2 Rust Duchess',
    { kind: 'potOn', potSize: '1l' },
  ],
  ['took 5 dahlia cuttings today, 3 Ember Fox and 2 Rust Duchess', { kind: 'strike', date: '2026-03-09' }],
  ['took some dahlia cuttings today, 3 Ember Fox and 2 Rust Duchess', { kind: 'strike', date: '2026-03-09' }],
  ['did the dahlias today: Ember Fox 3, Rust Duchess 2', { kind: 'strike', date: '2026-03-09' }],
  ['dahlia cuttings taken today, Ember Fox 3, Rust Duchess 2', { kind: 'strike', date: '2026-03-09' }],
  ['Dahlia cuttings today\n- Ember Fox x3\n- Rust Duchess x2', { kind: 'strike', date: '2026-03-09' }],
  ['took dahlia cuttings: Ember Fox 3, Rust Duchess 2', { kind: 'strike' }],
  ['Dahlias: 3 Ember Fox, 2 Rust Duchess potted on into 1L', { kind: 'potOn', potSize: '1l' }],
])('“%s” shares its crop', (text, own) => {
  expect(entriesOf(text)).toEqual([
    { ...own, ...fox },
    { ...own, ...duchess },
  ]);
});

it.each([
  // Of another crop, of another number, and side by side.
  'potted on the dahlias, 3 Salt Harrier and 2 Rust Duchess',
  'potted on 6 dahlias, 3 Ember Fox and 2 Rust Duchess',
  'potted on dahlias and 2 Rust Duchess',
])('“%s” is of the crop as well', (text) => {
  expect(entriesOf(text)[0]).toMatchObject({ kind: 'potOn', crop: 'dahlia' });
  expect(entriesOf(text)[0]).not.toHaveProperty('variety');
});
