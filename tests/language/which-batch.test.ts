/** Notes that say which of several batches of one variety they mean, by day, month, age or place. */
import { describe, expect, it } from 'vitest';
import { asDay } from '../../src/calendar/day.js';
import type { Plant } from '../../src/ledger/entry.js';
import { read } from '../../src/language/read.js';

const readIt = (text: string) =>
  read({
    text,
    now: Date.parse('2026-05-03T16:25:00+01:00'),
    zone: 'Europe/London',
    context: {
      varieties: [{ name: 'Copper Lantern', crop: 'dahlia' }],
      batches: [
        {
          label: 'CL1',
          variety: 'Copper Lantern',
          crop: 'dahlia',
          struck: asDay('2026-03-10'),
          count: 9,
          place: 'greenhouse',
        },
        {
          label: 'CL2',
          variety: 'Copper Lantern',
          crop: 'dahlia',
          struck: asDay('2026-04-08'),
          count: 11,
          place: 'heated propagator',
        },
      ],
    },
  });

describe('which batch is meant', () => {
  it.each([
    ['the March lot of Copper Lantern: 5 rooted', 'CL1'],
    ['5 of the 9 March Copper Lantern have rooted', 'CL1'],
    ['potted on the April Copper Lantern', 'CL2'],
    ['potted on 9 of the 10 March Copper Lantern, 9cm', 'CL1'],
    ['pinched the 8 April Copper Lantern', 'CL2'],
    ['10 March Copper Lantern: 4 rooted, 1 rotted', 'CL1'],
    ['5 of the Copper Lantern from March have rooted', 'CL1'],
    ['lost 2 of the Copper Lantern struck on 8 April', 'CL2'],
    ['lost two of the older Copper Lantern', 'CL1'],
    ['pinched the younger Copper Lantern', 'CL2'],
    ['potted on 9 Copper Lantern, these from 10 March', 'CL1'],
    ['lost 2 Copper Lantern, those of 8 April', 'CL2'],
    ['lost 2 from the March lot', 'CL1'],
    ['3 of the 8/4 Copper Lantern rooted now', 'CL2'],
    ['lost 2 of the 10/3 Copper Lantern', 'CL1'],
    ['the first lot of Copper Lantern, 4 rooted', 'CL1'],
    ['2 of the Copper Lantern in the propagator rooted', 'CL2'],
    ['bit of yellowing on the greenhouse Copper Lantern', 'CL1'],
    ['greenhouse Copper Lantern: getting leggy', 'CL1'],
    ['the Copper Lantern are looking leggy in the propagator', 'CL2'],
    ['had a look at the March lot of Copper Lantern: 5 rooted, potted those on', 'CL1'],
    ['Copper Lantern, first lot: three have roots!', 'CL1'],
    ['slugs ate two of the last lot of Copper Lantern', 'CL2'],
  ])('%s', (text, label) => {
    const { entries, asks } = readIt(text);
    expect(asks).toEqual([]);
    expect(entries.map(({ entry }) => (entry as Plant).batch)).toEqual(entries.map(() => label));
    expect(entries.length).toBeGreaterThan(0);
  });

  it.each([
    'the Copper Lantern look leggy',
    'the Copper Lantern look leggier than those in the propagator',
    'the Copper Lantern look sad and want to be in the propagator',
    'the Copper Lantern are not as leggy as in the propagator',
  ])('is all of them: %s', (text) => {
    const { entries, asks } = readIt(text);
    expect(asks).toEqual([]);
    expect(entries.map(({ entry }) => [entry.kind, (entry as Plant).batch])).toEqual([['remark', undefined]]);
  });

  it('takes the day of a lot for no day of the act', () => {
    for (const text of ['pinched the 8 April Copper Lantern', '10 March Copper Lantern: 4 rooted, 1 rotted'])
      for (const { entry } of readIt(text).entries) expect(entry).not.toHaveProperty('date');
    expect(readIt('12 April Copper Lantern: 4 rooted').entries[0]?.entry).toMatchObject({
      rooted: 4,
      date: '2026-04-12',
    });
  });

  it.each([
    ['potted on 7 of the 10 March Copper Lantern and 4 of the 8 April Copper Lantern, 9cm', 7, 4],
    ['potted on 7 Copper Lantern (10 March) and 4 Copper Lantern (8 April)', 7, 4],
    ['potted on seven of the older Copper Lantern and four of the younger', 7, 4],
    ['lost 2 of the greenhouse Copper Lantern and 1 of the propagator Copper Lantern', 2, 1],
    ['threw out 1 of the first lot and 2 of the second lot of Copper Lantern', 1, 2],
    ['gave Ines 2 Copper Lantern from 10 March and 1 from 8 April', 2, 1],
    ['moved 5 of the older Copper Lantern to the shed and 3 of the younger to the porch', 5, 3],
  ])('is one lot and then the other: %s', (text, first, second) => {
    const { entries, asks } = readIt(text);
    expect(asks).toEqual([]);
    expect(entries.map(({ entry }) => entry)).toMatchObject([
      { batch: 'CL1', count: first },
      { batch: 'CL2', count: second },
    ]);
    for (const { entry } of entries) expect(entry).not.toHaveProperty('date');
  });

  it.each([
    'lost 2 of the Copper Lantern',
    'the June lot of Copper Lantern: 5 rooted',
    'the first of the Copper Lantern has rooted',
  ])('is asked of: %s', (text) => {
    expect(readIt(text).asks.map(({ slot }) => slot)).toContain('batch');
  });
});
