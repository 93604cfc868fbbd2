/** Names however they are written: in a note with capitals throughout, behind a number or before one, in part. */
import { expect, it } from 'vitest';
import { read } from '../../src/language/read.js';

const context = {
  varieties: [{ name: 'Marmalade Tom', crop: 'pelargonium' }],
  batches: [
    { label: 'MT1', variety: 'Marmalade Tom', crop: 'pelargonium', struck: '2026-02-01' as never, count: 8 },
  ],
};

const entriesOf = (text: string) =>
  read({ text, now: Date.parse('2026-05-25T09:00:00Z'), zone: 'Europe/London', context }).entries.map(
    ({ entry }) => entry,
  );

it.each([
  ['stuck 24 Nine Bob Duchess pelargonium', [{ variety: 'Nine Bob Duchess', count: 24 }]],
  ['took 12 Half Crown dahlia', [{ variety: 'Half Crown', crop: 'dahlia', count: 12 }]],
  ['Took 12 Cuttings Of Marsh Tiger', [{ variety: 'Marsh Tiger', count: 12 }]],
  ['Took 12 Softwood Cuttings of Marsh Tiger', [{ variety: 'Marsh Tiger', count: 12, cutting: 'softwood' }]],
  [
    'took Copper Vicar x4 and Tin Sermon x 3',
    [
      { variety: 'Copper Vicar', count: 4 },
      { variety: 'Tin Sermon', count: 3 },
    ],
  ],
])('“%s” is a strike', (text, entries) => {
  expect(entriesOf(text)).toMatchObject(entries.map((entry) => ({ kind: 'strike', ...entry })));
});

it('takes no word of the deed for a name', () => {
  expect(entriesOf('Potted On 6 Marmalade Tom Into 9cm Pots')).toMatchObject([
    { kind: 'potOn', variety: 'Marmalade Tom', count: 6, potSize: '9cm' },
  ]);
});

it('knows a short word of a name behind an article or a number, and else takes it for a person', () => {
  expect(entriesOf('Lost a Tom')).toMatchObject([{ kind: 'loss', variety: 'Marmalade Tom', count: 1 }]);
  expect(entriesOf('Tom came by')).toEqual([]);
});
