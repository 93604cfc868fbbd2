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
  ['took 20 night ferry salvia', [{ variety: 'Night Ferry', crop: 'salvia', count: 20 }]],
  [
    'did Marsh Tiger as well, pelargonium, nine cuttings in three pots',
    [{ variety: 'Marsh Tiger', crop: 'pelargonium', count: 9, pots: 3 }],
  ],
  [
    'From Marsh Tiger (it is a fuchsia) I made 11 cuttings',
    [{ variety: 'Marsh Tiger', crop: 'fuchsia', count: 11 }],
  ],
  [
    "Five cuttings of Marsh Tiger, that's the geranium, were taken this morning",
    [{ variety: 'Marsh Tiger', crop: 'pelargonium', count: 5 }],
  ],
  ['Old Vicar chrysanth: ten basal cuttings', [{ variety: 'Old Vicar', crop: 'chrysanthemum', count: 10 }]],
  [
    'Pinks today. Took 6 Marsh Tiger and 4 Half Crown',
    [
      { variety: 'Marsh Tiger', crop: 'pink' },
      { variety: 'Half Crown', crop: 'pink' },
    ],
  ],
  ['6 further Marsh Tiger cuttings made today', [{ variety: 'Marsh Tiger', count: 6 }]],
  ['took 6 wet slate salvia', [{ variety: 'Wet Slate', crop: 'salvia', count: 6 }]],
  ['took 5 static gran tradescantia', [{ variety: 'Static Gran', crop: 'tradescantia', count: 5 }]],
  ['12 cuttings of monday blanket pelargonium', [{ variety: 'Monday Blanket', count: 12 }]],
  ["took 12 heel cuttings of thursday's child rosemary", [{ variety: "Thursday's Child", cutting: 'heel' }]],
  ['took 5 queen of the bins dahlia', [{ variety: 'Queen of the Bins', crop: 'dahlia', count: 5 }]],
  ['took 6 leggy static gran salvia', [{ variety: 'Static Gran', crop: 'salvia', count: 6 }]],
  ['took four of neon hallway its a pothos', [{ variety: 'Neon Hallway', crop: 'pothos', count: 4 }]],
  [
    'took 7 cuttings of burnt ladder which is apparently a coleus',
    [{ variety: 'Burnt Ladder', crop: 'coleus' }],
  ],
  [
    'took six hydrangea cuttings velour tuba two pots',
    [{ variety: 'Velour Tuba', crop: 'hydrangea', pots: 2 }],
  ],
  ['took 14 mum cuttings from Velvet Turnstile', [{ variety: 'Velvet Turnstile', crop: 'chrysanthemum' }]],
  ['took 5 Rhubarb and Custard dahlia', [{ variety: 'Rhubarb and Custard', crop: 'dahlia', count: 5 }]],
  ['did 6 man on the moon salvia', [{ variety: 'Man on the Moon', crop: 'salvia', count: 6 }]],
  ['struck 6 big dave dahlia', [{ variety: 'Big Dave', crop: 'dahlia', count: 6 }]],
  ['salvia cold tap 12 cuttings one tray', [{ variety: 'Cold Tap', crop: 'salvia', count: 12, pots: 1 }]],
  ['penstemon march hare 15 taken', [{ variety: 'March Hare', crop: 'penstemon', count: 15 }]],
  ['8 of the new pelargonium, name of Brass Monkey, two pots', [{ variety: 'Brass Monkey', pots: 2 }]],
  ['took about 20 wet slate salvia', [{ variety: 'Wet Slate', crop: 'salvia', count: 20 }]],
  ['took twelve three legged stool salvia', [{ variety: 'Three Legged Stool', count: 12 }]],
  ['took 7 wet paint (coleus) in one pot', [{ variety: 'Wet Paint', crop: 'coleus', count: 7, pots: 1 }]],
  ['prawn cocktail coleus cuttings 12 in two pots', [{ variety: 'Prawn Cocktail', count: 12, pots: 2 }]],
  [
    'took five each of the brass neck and jelly baby salvias',
    [
      { variety: 'Brass Neck', crop: 'salvia', count: 5 },
      { variety: 'Jelly Baby', crop: 'salvia', count: 5 },
    ],
  ],
  ['took 6 Plum Duff and 6 Tin Sermon', [{ variety: 'Plum Duff' }, { variety: 'Tin Sermon' }]],
  ['stuck 20 Marsh Tiger, ten in each of 2 trays', [{ variety: 'Marsh Tiger', count: 20, pots: 2 }]],
])('“%s” is a strike', (text, entries) => {
  expect(entriesOf(text)).toMatchObject(entries.map((entry) => ({ kind: 'strike', ...entry })));
});

it.each([
  'took 5 pale blue salvia',
  'took 6 leggy straggling salvia',
  "took 6 of mum's salvia",
  'took 6 next door salvia',
  'took 8 hot pink salvia',
  'took 6 frost bitten salvia',
  'took 6 garden centre salvia',
  'took 6 salvia cuttings from Mary Dolan',
  'took 6 salvia cuttings from Hexley Nurseries',
  'took six salvia cuttings fingers crossed',
  'took 6 tall and leggy salvia',
  'took 6 frosted purple salvia',
  'salvia leggy old took 8',
  'took 6 aphid covered salvia',
  'took 6 raspberry red salvia',
  'took 6 apple scented salvia',
  'quick update salvia 12 cuttings',
  'salvia kitchen windowsill 12 cuttings',
])('“%s” names no variety', (text) => {
  const entries = entriesOf(text);
  expect(entries).toMatchObject([{ kind: 'strike', crop: 'salvia' }]);
  expect(entries[0]).not.toHaveProperty('variety');
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

it.each([
  ['SOLD 6 MARMALADE THURS. VICAR.', { kind: 'dispatch', variety: 'Marmalade Tom', count: 6 }],
  ['Pinched Marmalade Mon.', { kind: 'pinch', variety: 'Marmalade Tom' }],
  ['2 unrooted marmalade binned', { kind: 'loss', variety: 'Marmalade Tom', count: 2 }],
  ['the Marmalades I took on 1 February were only 5', { kind: 'amend', variety: 'Marmalade Tom' }],
  ['took 7 of the rose Tallow Bell', { kind: 'strike', variety: 'Tallow Bell', crop: 'rose' }],
])('“%s” tells the name apart from what stands beside it', (text, entry) => {
  expect(entriesOf(text)).toMatchObject([entry]);
});

it.each([
  ['the pelargonium is not called Marmalade Tom but Marmalade Tam, please rename it', 'Marmalade Tam'],
  ["Marmalade Tom isn't the right name, it's Tin Sermon", 'Tin Sermon'],
])('“%s” is another name', (text, variety) => {
  expect(entriesOf(text)).toMatchObject([{ kind: 'amend', variety: 'Marmalade Tom', set: { variety } }]);
});

it('takes no praise of a name for another one', () => {
  expect(entriesOf("it's not called Marmalade Tom for nothing, it is huge")).not.toMatchObject([
    { kind: 'amend' },
  ]);
});

it.each([
  ['LOST TWO OVERNIGHT', { kind: 'loss', count: 2, variety: 'Marmalade Tom' }],
  [
    'TOOK SIX CUTTINGS OF MARSH TIGER IN THE PROPAGATOR',
    { kind: 'strike', count: 6, variety: 'Marsh Tiger' },
  ],
  ['POTTED THEM ALL ON TODAY', { kind: 'potOn', count: 'all', variety: 'Marmalade Tom' }],
  ['Took Six Cuttings Of Marsh Tiger In The Porch', { kind: 'strike', count: 6, variety: 'Marsh Tiger' }],
  ['killed a load of slugs, and lost one marmalade tom', { kind: 'loss', count: 1 }],
])('takes no capital for a name in a note of capitals: “%s”', (text, entry) => {
  expect(entriesOf(text)).toMatchObject([entry]);
});

it.each([
  ['Plough Bronze: 12 trays of 70 struck, glasshouse 4', { variety: 'Plough Bronze', count: 840, pots: 12 }],
  ['Late Ferry: two trays of 60 stuck Weds, mist bench', { variety: 'Late Ferry', count: 120 }],
  ['Slow Ferry, half a dozen soft tips, in the propagator', { variety: 'Slow Ferry', count: 6 }],
  ['Plough Bronze cuttings, 12, basal', { variety: 'Plough Bronze', count: 12, cutting: 'basal' }],
])('knows a new name that heads what was struck: “%s”', (text, entry) => {
  expect(entriesOf(text)).toMatchObject([{ kind: 'strike', ...entry }]);
});

it.each(['Garden Club: 12 plugs', 'Mrs Pike, two Marmalade Tom tips', 'Dora Finch, two Marmalade Tom tips'])(
  'takes no heading for a name: “%s”',
  (text) => {
    expect(
      entriesOf(text).filter((entry) => 'variety' in entry && entry.variety !== 'Marmalade Tom'),
    ).toEqual([]);
  },
);

it('takes the variety said behind its crop for its name, and nobody whom plugs came from', () => {
  expect(entriesOf('received 84 gazania plugs, variety Marsh Tiger')).toMatchObject([
    { kind: 'receive', variety: 'Marsh Tiger', crop: 'gazania', count: 84 },
  ]);
  expect(entriesOf('Received 3 plugs from Doreen Pike')).not.toMatchObject([{ variety: 'Doreen Pike' }]);
});

it('takes so many without roots that were thrown out for no look at the others', () => {
  expect(entriesOf('threw out the 2 Marmalade Tom that had no roots')).toMatchObject([
    { kind: 'loss', variety: 'Marmalade Tom', count: 2 },
  ]);
  expect(entriesOf('3 Marmalade Tom had no roots, binned the lot')).toMatchObject([
    { kind: 'loss', variety: 'Marmalade Tom', count: 3 },
  ]);
});
