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
