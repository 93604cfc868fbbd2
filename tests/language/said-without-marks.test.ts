/** Notes as a phone writes down speech: hesitations in them, and no mark where a second thing begins. */
import { describe, expect, it } from 'vitest';
import type { NoteContext } from '../../src/language/note.js';
import { read } from '../../src/language/read.js';

const context: NoteContext = {
  varieties: [
    { name: 'Salt Harrier', crop: 'pelargonium' },
    { name: 'Tallow Bell', crop: 'fuchsia' },
  ],
  batches: [
    { label: 'SH1', variety: 'Salt Harrier', crop: 'pelargonium', count: 14, place: 'propagator' },
    { label: 'TB1', variety: 'Tallow Bell', crop: 'fuchsia', count: 8, place: 'greenhouse' },
  ],
  places: ['propagator', 'greenhouse', 'polytunnel', 'cold frame', 'porch'],
};

/** Each entry as its kind and what it says, by the rules alone. */
function told(text: string): string {
  const now = Date.parse('2026-07-15T09:00:00Z');
  return read({ text, now, zone: 'Europe/London', context, byRules: true })
    .entries.map(({ entry }) => {
      const slots = entry as unknown as Record<string, unknown>;
      return [
        'kind', 'variety', 'count', 'rooted', 'care', 'cause', 'celsius', 'potSize', 'medium', 'hormone', 'fromPlace', 'place', 'how', 'to', 'topic', 'date',
      ].flatMap((slot) => (slots[slot] === undefined ? [] : [String(slots[slot])])).join(' '); // prettier-ignore
    })
    .join(', ');
}

describe('a word said twice', () => {
  it.each([
    ['took took six of of the salt harrier', 'strike Salt Harrier 6'],
    ['three trays of of ten tallow bell stuck', 'strike Tallow Bell 30'],
    ['to of of the tallow bell have died', 'loss Tallow Bell 2'],
    ['moved the tallow bell in the in the porch', 'move Tallow Bell porch'],
    ['i watered i watered the the, er, the salt harrier', 'tend Salt Harrier water'],
    ['lost two of the of the salt harrier', 'loss Salt Harrier 2'],
  ])('was said once: "%s"', (text, expected) => {
    expect(told(text)).toBe(expected);
  });

  it('stays where it says more', () => {
    expect(told('brought in in the rain the tallow bell')).toBe('move Tallow Bell indoors');
  });
}); // prettier-ignore

describe('"like" that likens nothing', () => {
  it.each([
    ['put like the six tallow bell in the porch', 'move Tallow Bell 6 porch'],
    ['lost four of like the salt harrier', 'loss Salt Harrier 4'],
    ['two pots of tallow bell with five like in each stuck today', 'strike Tallow Bell 10 2026-07-15'],
    ['moved them like from the propagator to the porch the salt harrier i mean', 'move Salt Harrier propagator porch'],
  ])('is left out: "%s"', (text, expected) => {
    expect(told(text)).toBe(expected);
  });

  it.each([
    ["i'd like the salt harrier in the porch"],
    ['treated like in the cold frame last year'],
    ['put them out like in the book'],
  ])('stays where something is wished or likened: "%s"', (text) => {
    expect(told(text)).toBe('');
  });
}); // prettier-ignore

describe('a second thing that begins without a mark', () => {
  it.each([
    ['sold two salt harrier gave pauline three tallow bell misted the propagator', 'dispatch Salt Harrier 2 sold, dispatch Tallow Bell 3 given pauline, tend mist propagator'],
    ['swapped four salt harrier with ken for a bag of logs binned the last two riddled with greenfly', 'dispatch Salt Harrier 4 swapped ken, loss Salt Harrier 2 pest'],
    ['greenhouse down to 4 by midnight propagator steady on 20', 'reading 4 greenhouse, reading 20 propagator'],
    ['took salt harrier five tallow bell three', 'strike Salt Harrier 5, strike Tallow Bell 3'],
    ['three tallow bell to brenda two to colin', 'dispatch Tallow Bell 3 brenda, dispatch Tallow Bell 2 colin'],
    ['yesterday fed the greenhouse today took six salt harrier', 'tend feed greenhouse 2026-07-14, strike Salt Harrier 6 2026-07-15'],
    ['on 28.06 i took six salt harrier', 'strike Salt Harrier 6 2026-06-28'],
    ['nipped the tips off four of the salt harrier - no the tallow bell', 'pinch Tallow Bell 4'],
    ['six cuttings in of a hebe called mossy dot pinched from next door', 'strike Mossy Dot 6'],
    ['lost three tallow bell i mean two grey mould again', 'loss Tallow Bell 2 mould'],
  ])('is told of itself: "%s"', (text, expected) => {
    expect(told(text)).toBe(expected);
  });

  it.each([
    ['moved the salt harrier struck in may to the porch', 'move Salt Harrier porch'],
    ['potted on four salt harrier into 9cm pots tallow bell pinched the lot', 'potOn Salt Harrier 4 9cm, pinch Tallow Bell all'],
  ])('is not cut where it is one: "%s"', (text, expected) => {
    expect(told(text)).toBe(expected);
  });
}); // prettier-ignore
