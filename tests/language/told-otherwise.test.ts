/** What is told in another order, in a dialect or in spoken marks, and reads as if it were told plainly. */
import { describe, expect, it } from 'vitest';
import type { NoteContext } from '../../src/language/note.js';
import { read } from '../../src/language/read.js';

const context: NoteContext = {
  varieties: [
    { name: 'Salt Harrier', crop: 'fuchsia' },
    { name: 'Tallow Bell', crop: 'dahlia' },
  ],
  batches: [
    { label: 'SH1', variety: 'Salt Harrier', crop: 'fuchsia', count: 8, pots: 2, place: 'propagator' },
    { label: 'TB1', variety: 'Tallow Bell', crop: 'dahlia', count: 10, pots: 10, place: 'tunnel 1' },
  ],
  places: ['propagator', 'cold frame', 'tunnel 1', 'greenhouse'],
};

const OF_INTEREST = ['kind', 'variety', 'count', 'rooted', 'pots', 'place', 'care', 'to', 'hormone', 'date'];

/** Each entry with its plainest slots, and what is asked. */
function told(text: string, known = context): string {
  const { entries, asks } = read({
    text,
    now: Date.parse('2026-05-09T12:00:00Z'),
    zone: 'Europe/London',
    context: known,
    byRules: true,
  });
  const said = entries.map(({ entry }) => {
    const slots = entry as unknown as Readonly<Record<string, unknown>>;
    return OF_INTEREST.flatMap((slot) => (slots[slot] === undefined ? [] : [String(slots[slot])])).join(' ');
  });
  return [...said, ...asks.map(({ slot }) => `${slot}?`)].join(', ');
}

describe('marks that are spoken', () => {
  it.each([
    [
      'took nine salt harrier all in the one pot comma propagator full stop',
      'strike Salt Harrier 9 1 propagator',
    ],
    [
      'lost two salt harrier full stop watered the greenhouse full stop',
      'loss Salt Harrier 2, tend greenhouse water',
    ],
    ['took six salt harrier comma lost two tallow bell period', 'strike Salt Harrier 6, loss Tallow Bell 2'],
    ['saw a comma butterfly on the tallow bell', ''],
    ['lost two salt harrier in a dry period', 'loss Salt Harrier 2'],
  ])('"%s"', (text, expected) => {
    expect(told(text)).toBe(expected);
  });
});

it('leaves them where they stand in a known name', () => {
  const varieties = [{ name: 'Comma Lady', crop: 'coleus' }];
  expect(told('took six comma lady', { varieties })).toBe('strike Comma Lady 6');
});

describe('a day as a diary tells it', () => {
  it.each([
    ['I throw away half of Salt Harrier today', 'loss Salt Harrier 4 2026-05-09'],
    ['today we bring the Salt Harrier inside the greenhouse', 'move Salt Harrier greenhouse 2026-05-09'],
    ['I throw away the mouldy Salt Harrier every Sunday', ''],
    ['if I throw away four Salt Harrier today I have four left', ''],
  ])('"%s"', (text, expected) => {
    expect(told(text)).toContain(expected);
    if (expected === '') expect(told(text)).toBe('');
  });
});

describe('a plant told as that of which some were taken', () => {
  it.each([
    [
      'moved the Salt Harrier to the cold frame and from the Tallow Bell the frost took two',
      'move Salt Harrier cold frame, loss Tallow Bell 2',
    ],
    [
      'potted on the Salt Harrier, and of the Tallow Bell the slugs ate two',
      'potOn Salt Harrier, loss Tallow Bell 2',
    ],
    [
      'pinched the Salt Harrier and off the Tallow Bell I took four cuttings',
      'pinch Salt Harrier, strike Tallow Bell 4',
    ],
    ['potted on the Tallow Bell I took in March', 'potOn Tallow Bell'],
  ])('"%s"', (text, expected) => {
    expect(told(text)).toBe(expected);
  });
});

describe('a name told behind', () => {
  it.each([
    ['took five off the new dahlia, the one the raiser is calling Tin Whistler', 'strike Tin Whistler 5'],
    ["took six of the dahlia he's calling Tin Whistler", 'strike Tin Whistler 6'],
    ["36 fuchsia plugs in off the van, one I haven't grown before, Plum Gaiters", 'receive Plum Gaiters 36'],
    ['took 6 fuchsia cuttings, a new one for me: Plum Gaiters', 'strike Plum Gaiters 6'],
    ["took 6 fuchsia cuttings, haven't had time to label, Edna Pike", 'strike 6'],
  ])('"%s"', (text, expected) => {
    expect(told(text)).toBe(expected);
  });
});

describe('what each pot holds, told behind its word', () => {
  it.each([
    ['stuck four pots with Salt Harrier, in every pot four pieces', 'strike Salt Harrier 16 4'],
    ['stuck four pots of Salt Harrier, each pot has four cuttings', 'strike Salt Harrier 16 4'],
    ['stuck four pots of Salt Harrier, in every pot four pieces of crock', 'strike Salt Harrier 4, count?'],
  ])('"%s"', (text, expected) => {
    expect(told(text)).toBe(expected);
  });
});

describe('and besides', () => {
  it.each([
    // Whose vents they are, and where what came in was set.
    ['tunnel 1 - 4 Salt Harrier dumped. Vents open.', 'loss Salt Harrier 4, tend tunnel 1 vent'],
    ['36 Salt Harrier plugs in. Set in the greenhouse till Friday.', 'receive Salt Harrier 36 greenhouse'],
    // Who had them, behind the day; what somebody else was about.
    ['last week the Lions bought six Salt Harrier off me', 'dispatch Salt Harrier 6 Lions [object Object]'],
    ['yesterday he bought six Salt Harrier off me', 'dispatch Salt Harrier 6 2026-05-08'],
    ['potted on six Salt Harrier, Dale needed his bench back', 'potOn Salt Harrier 6'],
    // Powder, dialect, and a slip in a month.
    ['6 Salt Harrier stuck, powdered', 'strike Salt Harrier 6 true'],
    ['stuck 6 Salt Harrier in powdered pumice', 'strike Salt Harrier 6'],
    ['hardened aff the Salt Harrier in the cold frame, sun’s splitting the sky', 'hardenOff Salt Harrier cold frame'],
    ["I'll pot on the Salt Harrier the morn", 'remind Salt Harrier 2026-05-10'],
    ['six Salt Harrier wanted for the show on the 29th of augast', 'target Salt Harrier 6 2026-08-29'],
    // The grower's own word, and another's.
    ["I've said they'll get fifty Salt Harrier by 30 May", 'target Salt Harrier 50 2026-05-30'],
    ["Ken said they'll get fifty Salt Harrier from Hexley", ''],
  ])('"%s"', (text, expected) => {
    expect(told(text)).toBe(expected);
  });
}); // prettier-ignore
