/** Cuttings of one deed shared out between places or media, and what is counted that is no plant. */
import { describe, expect, it } from 'vitest';
import { read } from '../../src/language/read.js';

const context = {
  varieties: [
    { name: 'Salt Harrier', crop: 'dahlia' },
    { name: 'Copper Moth', crop: 'salvia' },
  ],
  batches: [{ label: 'SH1', variety: 'Salt Harrier', crop: 'dahlia', count: 12, place: 'propagator' }],
  places: ['propagator', 'cold frame', 'bench'],
};

const told = (text: string): string[] =>
  read({ text, now: Date.parse('2026-05-02T10:00:00+01:00'), zone: 'Europe/London', context }).entries.map(
    ({ entry }) => {
      const { kind, count, place, medium } = entry as unknown as Record<string, unknown>;
      return [kind, count, place, medium].filter((slot) => slot !== undefined).join(' ');
    },
  );

describe('what was shared out between places or media', () => {
  it.each([
    ['took 12 Copper Moth, 7 in the propagator, 5 on the bench', ['strike 7 propagator', 'strike 5 bench']],
    [
      'took 12 Copper Moth: 7 for the propagator and 5 for the bench',
      ['strike 7 propagator', 'strike 5 bench'],
    ],
    [
      'struck 7 Copper Moth into the propagator and 5 into the cold frame',
      ['strike 7 propagator', 'strike 5 cold frame'],
    ],
    [
      '20 Copper Moth struck, half in the propagator, half in the cold frame',
      ['strike 10 propagator', 'strike 10 cold frame'],
    ],
    [
      'took 20 Copper Moth, 8 in the propagator and the rest in the cold frame',
      ['strike 8 propagator', 'strike 12 cold frame'],
    ],
    ['took ten Copper Moth, 4 in water and 6 in perlite', ['strike 4 water', 'strike 6 perlite']],
    [
      'took 20 Copper Moth and put 8 in the propagator and the other 12 in the cold frame',
      ['strike 8 propagator', 'strike 12 cold frame'],
    ],
    [
      'took 20 Copper Moth and put 8 in the propagator and the rest in the cold frame',
      ['strike 8 propagator', 'strike 12 cold frame'],
    ],
    [
      'got 10 Copper Moth plugs, six in the propagator and four on the bench',
      ['receive 6 propagator', 'receive 4 bench'],
    ],
  ])('“%s”', (text, entries) => {
    expect(told(text)).toEqual(entries);
  });

  it.each([
    // So many do not come to what was taken.
    ['took 12 Copper Moth, 4 in the propagator, 5 on the bench', ['strike 12 propagator']],
    ['took 12 Copper Moth in the propagator and watered', ['strike 12 propagator', 'tend']],
    ['took 8 Copper Moth, 2 in each pot in the propagator', ['strike 8 propagator']],
    ['took 8 Copper Moth in the propagator and 3 Salt Harrier have rooted', ['strike 8 propagator', 'check']],
  ])('“%s” tells of no shares', (text, entries) => {
    expect(told(text)).toEqual(entries);
  });
});

describe('what was counted and is no plant', () => {
  it.each([
    '6 slugs killed round the Salt Harrier',
    'squashed 4 vine weevils in the Salt Harrier pot',
    '4 aphids squashed on the Salt Harrier',
    'binned 3 bags of rubbish',
    'threw out 2 sacks of weeds',
  ])('“%s” is no loss', (text) => {
    expect(told(text)).toEqual([]);
  });

  it.each([
    ['slugs killed 4 Salt Harrier', ['loss 4']],
    ['found two slugs and 3 Salt Harrier eaten', ['loss 3']],
    ['four killed by slugs', ['loss 4']],
  ])('“%s” is one', (text, entries) => {
    expect(told(text)).toEqual(entries);
  });
});

describe('a share beside what it is a share of', () => {
  it.each([
    ['half of my twelve Salt Harrier went into the long border', ['plantOut 6 long border']],
    ['of the twelve Salt Harrier, half went into the long border', ['plantOut 6 long border']],
    ['of my twelve Salt Harrier, two I gave to the school this morning', ['dispatch 2']],
    ['sold a third of the 12 Salt Harrier', ['dispatch 4']],
  ])('“%s” is so many', (text, entries) => {
    expect(told(text)).toEqual(entries);
  });

  it('is asked about where it comes out at no whole number', () => {
    expect(told('half of the 11 Copper Moth went into the long border')).toEqual(['plantOut long border']);
  });
});

describe('heat in a bare number', () => {
  it.each([
    ['43 in the propagator today and the Salt Harrier cooked', ['reading propagator', 'loss']],
    [
      'was 42 in the tunnel yesterday so I chucked the shade cloth over it',
      ['reading tunnel', 'tend tunnel'],
    ],
    ['38 in the tunnel, opened the vents', ['reading tunnel', 'tend tunnel']],
    // So many plants, it may be.
    ['38 in the tunnel, watered them', ['tend tunnel']],
    ['12 in the tunnel, opened the vents', ['tend tunnel']],
  ])('“%s”', (text, entries) => {
    expect(told(text)).toEqual(entries);
  });
});
