/** What was planned, given up, done by others or read somewhere is logged only where a deed is told too. */
import { describe, expect, it } from 'vitest';
import type { NoteContext } from '../../src/language/note.js';
import { read } from '../../src/language/read.js';

const context: NoteContext = {
  varieties: ['Salt Harrier', 'Tallow Bell'].map((name) => ({ name, crop: 'fuchsia' })),
  batches: [
    { label: 'SH1', variety: 'Salt Harrier', crop: 'fuchsia', count: 14, place: 'propagator' },
    { label: 'TB1', variety: 'Tallow Bell', crop: 'fuchsia', count: 8, place: 'greenhouse' },
  ],
  places: ['propagator', 'greenhouse', 'cold frame'],
};

const told = (text: string): string =>
  read({ text, now: Date.parse('2026-05-20T17:00:00Z'), zone: 'Europe/London', context })
    .entries.map(({ entry }) => {
      const { kind, count, date, place } = entry as unknown as Readonly<Record<string, unknown>>;
      return [kind, count, date, place].filter((value) => value !== undefined).join(' ');
    })
    .join(', ');

describe('a plan and its deed', () => {
  it.each([
    ['meant to take ten Salt Harrier, only got six in before the light went', 'strike 6'],
    ['should have pinched the Salt Harrier last week, did all fourteen this morning', 'pinch 14 2026-05-20'],
    ['been meaning to pot on the Salt Harrier, did it today', 'potOn 2026-05-20'],
    [
      "remember I said I'd shift the Salt Harrier to the cold frame? Did it last night",
      'move 2026-05-19 cold frame',
    ],
    ['meant to pinch the Salt Harrier, did the crossword instead', ''],
    ['meant to take ten Salt Harrier, got six pots ready', ''],
    ["said I'd water the greenhouse, did I heck", ''],
    ['was going to water the greenhouse tonight but it rained', ''],
    [
      'was going to carry the Salt Harrier out today but the wind put me off, so it will have to be Friday',
      'remind 2026-05-22',
    ],
    ['was planning to pinch the Salt Harrier on Friday', 'remind 2026-05-22'],
    ['SH1 to go out to the cold frame next week', 'remind [object Object]'],
  ])('reads "%s"', (text, entries) => {
    expect(told(text)).toBe(entries);
  });
});

describe('a doing named and left undone', () => {
  it.each([
    'decided against pinching the Salt Harrier',
    'gave the watering a miss',
    'postponed potting on the Salt Harrier',
    'rain stopped me potting on the Salt Harrier',
    'rather than pot on the Salt Harrier I had a nap',
    'Salt Harrier potting put back a week',
    'the pinching got rained off',
    'the Salt Harrier are crying out to be potted on',
    'Tallow Bell overdue a pinch',
    'I want the Salt Harrier potted on before the weekend',
    'provided the frost holds off the Salt Harrier can be moved to the cold frame',
    'moved the car off the drive',
    'resisted taking any more cuttings',
    'high time I pinched the Tallow Bell',
    'about time somebody watered the greenhouse',
    'hardly watered a thing this week',
    'jobs: pot on Salt Harrier, pinch Tallow Bell, feed the Salt Harrier',
    'on the list for this week: pinching the Tallow Bell',
    'fixing to set out the Salt Harrier soon as it warms up',
    'went to plant out the Salt Harrier, bed was waterlogged',
    "started potting on the Salt Harrier but the phone went before I'd done one",
    'shaded my eyes and stared at the propagator',
    'the dog took two sausages off the table',
    'at the garden centre they had 1,000 pots to water',
    'planted myself in the deckchair with a beer',
  ])('logs nothing of "%s"', (text) => {
    expect(told(text)).toBe('');
  });

  it.each([
    ['need 15 Salt Harrier potted by 20 June', 'target 15 2026-06-20'],
    ['got to have 24 Tallow Bell hardened off by 6 June', 'target 24 2026-06-06'],
    ['just back from watering the greenhouse', 'tend greenhouse'],
    ['gave the Tallow Bell their overdue pinch', 'pinch'],
    ['it looks like six Salt Harrier rooted', 'check'],
    ['needed the space so potted on the Salt Harrier', 'potOn'],
    ['watered the greenhouse not the cold frame', 'tend greenhouse'],
    ['took six Salt Harrier instead of Tallow Bell', 'strike 6'],
    ['instead of the Tallow Bell I took six Salt Harrier', 'strike 6'],
    ['moved the Salt Harrier to the cold frame instead of the greenhouse', 'move cold frame'],
    ['jobs done: potted on the Salt Harrier', 'potOn'],
    ['Salt Harrier getting moved to the cold frame next Monday', 'remind 2026-05-25'],
    ['went to plant out the Salt Harrier, eight in the end', 'plantOut 8'],
    ["watered the greenhouse before I'd had my tea", 'tend greenhouse'],
    ['took six Salt Harrier before I had any breakfast', 'strike 6'],
    ['the six Salt Harrier I wanted have rooted', 'check'],
    ['time flies, potted on six Salt Harrier', 'potOn 6'],
    ['managed to get six Salt Harrier potted on', 'potOn 6'],
    ['had to get six Salt Harrier potted on before the rain', 'potOn 6'],
    ['on the forum they swear by it so took six Salt Harrier in water', 'strike 6'],
    ['watered the baby fuchsias', 'tend'],
    ['no use moaning, lost three Salt Harrier', 'loss 3'],
    ['must pot on the Salt Harrier, got six at the fair', ''],
    ['sold 3 pots @ 4 each of Salt Harrier', 'dispatch 2026-05-20'],
    ['potted on the Salt Harrier into 2 x 40 cell trays', 'potOn'],
    ['potted on the Tallow Bell. Only two Salt Harrier alive', 'potOn, loss 12'],
    ['bought a Felco Secateurs from the show', ''],
    ['rename Salt Harrier to 3 Sisters', 'amend'],
    ["couldn't resist taking six Salt Harrier", 'strike 6'],
    ['meant to take ten Salt Harrier but took six', 'strike 6'],
    ['need to pot on the Tallow Bell next, did the Salt Harrier this morning', 'potOn 2026-05-20'],
    ['moved the Salt Harrier to the cold frame, left the rest where they were', 'move cold frame'],
  ])('reads "%s"', (text, entries) => {
    expect(told(text)).toBe(entries);
  });
});

describe('habits and other times', () => {
  it.each([
    'I always take my cuttings with a heel',
    'on Sundays I water the greenhouse',
    'every day I mist the propagator',
    "I've always potted on in May",
    'lost the whole lot in the bad winter of 2010',
    'the year before last I took 50 and lost 48',
    'when we lived in Devon we planted out in April',
    'in my old garden I planted out forty every year',
    'fuchsias I pinch three times',
    'fuchsias get planted out in the second week of June here',
    "I only take cuttings when the moon's waxing",
    "it's a good idea to water before you take cuttings",
    'last time I planted out this early I lost the lot',
    'first time I took cuttings I killed every one',
    'years ago I sold these at the market',
    'I remember planting out the Salt Harrier in snow one year',
  ])('logs nothing of "%s"', (text) => {
    expect(told(text)).toBe('');
  });

  it.each([
    ['I usually pot on in May, potted on six Salt Harrier yesterday', 'potOn 6 2026-05-19'],
    ['I usually pot the Salt Harrier on in May, potted on six yesterday', 'potOn 6 2026-05-19'],
    ['as always, took five Salt Harrier too many', 'strike 5'],
    ['on the whole looking good, lost two Salt Harrier', 'loss 2'],
    ['took six Salt Harrier while the kids were at school', 'strike 6'],
    ['potted on five Salt Harrier when the kids had gone to bed', 'potOn 5'],
    ['every summer I forget to shade the greenhouse, so today I shaded it', 'tend 2026-05-20 greenhouse'],
    ['they say 9cm but I potted the six Salt Harrier into 1 litre', 'potOn 6'],
    ["first time I've taken Salt Harrier cuttings, six in", 'strike 6'],
    ['last time I looked six Salt Harrier had rooted', 'check'],
    ['watered the greenhouse every day this week', 'tend [object Object] greenhouse'],
    ['took six Salt Harrier cuttings from the plant in my old garden', 'strike 6'],
  ])('reads "%s"', (text, entries) => {
    expect(told(text)).toBe(entries);
  });
});

describe("others' doings", () => {
  it.each([
    'Bill next door has rooted nine of his Salt Harrier in a jam jar',
    'Jim at the club pinched out his Salt Harrier already',
    "lost six of Nuala's fuchsias",
    'some chap at the club had minus 4 in his greenhouse on Monday',
    'it was minus 3 at Edna’s last night',
    'oh to have somebody water the greenhouse for me of an evening',
    'guy on the forum: pinch at 6 leaves, pot to 4in at week 5',
    "Turned up Grandad's diary. 14 March 1961: 'Put in 40 geraniums. Lost 6.' Bless him.",
    'next door have planted out already',
    'on telly they were potting on fuchsias',
    'Mavis was telling me she lost the lot to vine weevil',
    'saw on Facebook that someone took 200 cuttings from one plant',
    "the vicar took ten cuttings of my neighbour's geranium",
    'nan planted hers out last week',
    'half the street lost their fuchsias',
    'packet: sow at 18C, prick out at two leaves',
    'as a rule Salt Harrier gets potted at five weeks',
  ])('logs nothing of "%s"', (text) => {
    expect(told(text)).toBe('');
  });

  it.each([
    ['Jim rooted nine of the Salt Harrier for me', 'check'],
    ["took six of Edna's Salt Harrier", 'strike 6'],
    ['cheekily took six of her Salt Harrier', 'strike 6'],
    ['my neighbour watered the greenhouse', 'tend greenhouse'],
    ["the frost took every one of Nuala's fuchsias, and just the one of my Salt Harrier", 'loss 1'],
    ['we had minus 4 in the greenhouse on Monday', 'reading 2026-05-18 greenhouse'],
  ])('keeps "%s"', (text, entries) => {
    expect(told(text)).toBe(entries);
  });
});
