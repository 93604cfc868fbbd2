/** Talk round a deed neither hides it nor makes one up: habits, visits, sources, weather, names, and what "whatever" and "both" mean. */
import { describe, expect, it } from 'vitest';
import type { NoteContext } from '../../src/language/note.js';
import { read } from '../../src/language/read.js';

const context: NoteContext = {
  varieties: ['Salt Harrier', 'Tallow Bell', 'Marble Wren', 'Porch Light Lou'].map((name) => ({
    name,
    crop: 'fuchsia',
  })),
  batches: [
    { label: 'SH1', variety: 'Salt Harrier', crop: 'fuchsia', count: 14, place: 'propagator' },
    { label: 'TB1', variety: 'Tallow Bell', crop: 'fuchsia', count: 8, place: 'greenhouse' },
  ],
  places: ['propagator', 'greenhouse', 'porch'],
};

const reading = (text: string) =>
  read({ text, now: Date.parse('2026-05-20T17:00:00Z'), zone: 'Europe/London', context });

/** Kind, variety, number and place of each entry, and what is asked. */
const told = (text: string): string => {
  const { entries, asks } = reading(text);
  return entries
    .map(({ entry }, at) => {
      const { kind, variety, count, rooted, place } = entry as unknown as Readonly<Record<string, unknown>>;
      const asked = asks.filter((ask) => ask.entry === at).map(({ slot }) => `${slot}?`);
      return [kind, variety, count, rooted, place, ...asked].filter((each) => each !== undefined).join(' ');
    })
    .join(', ');
};

describe('a name put right', () => {
  it('is a name', () => {
    const [amended] = reading(
      'That Porch Light Lou is really Porch Light Lulu, I read the tag wrong',
    ).entries;
    expect(amended?.entry).toMatchObject({ kind: 'amend', set: { variety: 'Porch Light Lulu' } });
  });

  it.each([
    ['The Tallow Bell is really bell shaped', 'remark Tallow Bell'],
    ['Marble Wren is really marble white', 'remark Marble Wren'],
    ['The Salt Harrier is really salt tolerant', 'remark Salt Harrier'],
    ['SH1 is really Coming On', 'remark Salt Harrier'],
    ['Salt Harrier are actually Rooting Well', 'check Salt Harrier some'],
    ['Salt Harrier is really Bushing Out Nicely', 'remark Salt Harrier'],
  ])('is not what is said in "%s"', (text, entries) => {
    expect(told(text)).toBe(entries);
  });
});

describe('numbers that are told apart', () => {
  it.each([
    ['took 8 Marble Wren in one pot and 4 in the other', 'strike Marble Wren 12'],
    ['5 Marble Wren cuttings in a jar, 4 in another', 'strike Marble Wren 9'],
    ['took 9 Marble Wren, 5 in one pot and 4 in the other', 'strike Marble Wren 9'],
    ['3 Tallow Bell rooted in one pot and 4 in the other', 'check Tallow Bell 7'],
    ['lost 3 Tallow Bell in one pot, 4 in the other are fine', 'loss Tallow Bell 3'],
    [
      'took 5 Marble Wren in one pot and 4 Tallow Bell in the other',
      'strike Marble Wren 5, strike Tallow Bell 4',
    ],
    ['took loads of Marble Wren cuttings, call it 40', 'strike Marble Wren 40'],
    ['lost a few Tallow Bell, say three', 'loss Tallow Bell 3'],
    ['no i lost 1 tallow bell', 'loss Tallow Bell 1'],
    ['no roots on the tallow bell', 'check Tallow Bell none'],
  ])('count in "%s"', (text, entries) => {
    expect(told(text)).toBe(entries);
  });
});

describe('talk that makes up no deed', () => {
  it.each([
    ['Lost 3 Tallow Bell. Another 5 Salt Harrier today', 'loss Tallow Bell 3'],
    ['Tallow Bell all mush. Another 5 Salt Harrier today', 'loss Tallow Bell all'],
    ['Took 10 Tallow Bell. Another 5 Salt Harrier today', 'strike Tallow Bell 10, strike Salt Harrier 5'],
    ['need 30. Another 4 Salt Harrier today', ''],
    ['Moved whatever was rooted to the porch', 'move porch count?'],
    ['Binned whatever had rotted, Salt Harrier', 'loss Salt Harrier count?'],
    ['Moved whatever was in the porch to the greenhouse', 'move all greenhouse'],
    ['whatever was the reason, lost 2 Salt Harrier', 'loss Salt Harrier 2'],
    ['Hail got 3 greenhouse panes', ''],
    ['wind took two fence panels by the Salt Harrier', ''],
    ['put six Salt Harrier in by the side of the pond', 'plantOut Salt Harrier 6 side of the pond'],
    ['Did two trays of Salt Harrier today, five in each had roots', 'check Salt Harrier 10'],
    ['Guy on the forum: lost all my Salt Harrier to vine weevil', ''],
    ['Magazine: potted on five Salt Harrier', ''],
    ['I usually take ten Salt Harrier', ''],
    ['Advice from a forum: took six cuttings per pot', ''],
    ['As a rule, we potted on the Salt Harrier in May', ''],
    ['potting on of the Salt Harrier not finished', ''],
    [
      'took 5 Salt Harrier and 6 Tallow Bell, both now in the porch',
      'strike Salt Harrier 5 porch, strike Tallow Bell 6 porch',
    ],
    [
      'took 5 Salt Harrier and 6 Tallow Bell and put both in the porch',
      'strike Salt Harrier 5 porch, strike Tallow Bell 6 porch',
    ],
  ])('reads "%s"', (text, entries) => {
    expect(told(text)).toBe(entries);
  });
});

describe('talk that hides no deed', () => {
  it.each([
    ['Every year I lose some, lost two Salt Harrier', 'loss Salt Harrier 2'],
    ['Most years the slugs get them, lost four Salt Harrier', 'loss Salt Harrier 4'],
    ['Usually I lose some, lost two Salt Harrier', 'loss Salt Harrier 2'],
    [
      'Spent the morning potting on fuchsias, then took 10 Salt Harrier',
      'potOn batch?, strike Salt Harrier 10',
    ],
    ['Started on the fuchsias by pinching them, lost 2 Salt Harrier', 'pinch batch?, loss Salt Harrier 2'],
    ['Salt Harrier potting on due, did six', 'potOn Salt Harrier 6'],
    ['Potting on Salt Harrier today, six done, nothing due', 'potOn Salt Harrier 6'],
    ['Sold five Salt Harrier for eleven quid', 'dispatch Salt Harrier 5'],
    ['Nothing rooted in the propagator', 'check Salt Harrier none'],
    ['Salt Harrier, nothing has rooted', 'check Salt Harrier none'],
    ['Forum meet today: sold 5 Salt Harrier', 'dispatch Salt Harrier 5'],
    ['Watched a video: potted on five Salt Harrier meanwhile', 'potOn Salt Harrier 5'],
    ['Good advice from Ken: potted on the Salt Harrier', 'potOn Salt Harrier'],
    ['Took 5 Salt Harrier and got 6 off Tallow Bell', 'strike Salt Harrier 5, strike Tallow Bell 6'],
    ['Gave Ken 5 Salt Harrier and got 3 Tallow Bell off him', 'dispatch Salt Harrier 5'],
    ['gave 5 Salt Harrier to Ken and got 6 from Tallow Bell', 'dispatch Salt Harrier 5'],
  ])('reads "%s"', (text, entries) => {
    expect(told(text)).toBe(entries);
  });

  it('takes "we\'d" for no Wednesday', () => {
    const [potted] = reading("we'd the eight Tallow Bell potted").entries;
    expect(potted?.entry).toMatchObject({ kind: 'potOn', count: 8 });
    expect(potted?.entry).not.toHaveProperty('date');
  });
});

describe('a number put right', () => {
  it.each([
    ['The Marble Wren should be 8 by June', 'target Marble Wren 8'],
    ['The Marble Wren should be 8', 'amend Marble Wren'],
  ])('“%s” is told from one that is wished for', (text, entries) => {
    expect(told(text)).toBe(entries);
  });
});

describe('an ordinal', () => {
  it.each([
    ['the first two Salt Harrier have rooted', 'check Salt Harrier 2'],
    ['undo the last one, the second two were only sulking', 'undo'],
  ])('“%s” names no day', (text, entries) => {
    expect(told(text)).toBe(entries);
  });
});

describe('two deeds of two plants in one sentence', () => {
  it.each([
    [
      'potted on half the Salt Harrier and my sister gave me a Tallow Bell mother plant',
      'potOn Salt Harrier 7, stock Tallow Bell 1',
    ],
    [
      'potted on the Tallow Bell and bought three Salt Harrier tubers',
      'potOn Tallow Bell, stock Salt Harrier 3',
    ],
    [
      'a neighbour dropped in six rooted Tallow Bell plants and potted up two Salt Harrier tubers',
      'receive Tallow Bell 6, stock Salt Harrier 2',
    ],
    ['7 Tallow Bell basals in and fed the Salt Harrier', 'strike Tallow Bell 7, tend Salt Harrier'],
    [
      'lost two Tallow Bell but Edna gave me three rooted Salt Harrier',
      'loss Tallow Bell 2, receive Salt Harrier 3',
    ],
    ['Tallow Bell watered and Salt Harrier > greenhouse', 'tend Tallow Bell, move Salt Harrier greenhouse'],
    [
      'Salt Harrier to the greenhouse and Tallow Bell x4 sold',
      'move Salt Harrier greenhouse, dispatch Tallow Bell 4',
    ],
    ['Tallow Bell h/off started, 3 Salt Harrier gone, rot', 'hardenOff Tallow Bell, loss Salt Harrier 3'],
    ['2 Tallow Bell to Len and Salt Harrier soft pinch', 'dispatch Tallow Bell 2, pinch Salt Harrier'],
    ['watered the Tallow Bell from below and the Salt Harrier to 3L', 'tend Tallow Bell, potOn Salt Harrier'],
    [
      'half the Tallow Bell have rooted, then the Salt Harrier have graduated to 10cm pots',
      'check Tallow Bell 4, potOn Salt Harrier',
    ],
    ['pinched out the Tallow Bell, then Salt Harrier: 5 rooted', 'pinch Tallow Bell, check Salt Harrier 5'],
    [
      'sold four Tallow Bell at the gate and the Salt Harrier all rooted',
      'dispatch Tallow Bell 4, check Salt Harrier all',
    ],
    ['2 Tallow Bell to Len, sold the rest at the fete', 'dispatch Tallow Bell 2, dispatch Tallow Bell rest'],
    // One deed, or one that leans on the other.
    [
      'took 6 Tallow Bell and 4 Salt Harrier, both in the greenhouse',
      'strike Tallow Bell 6 greenhouse, strike Salt Harrier 4 greenhouse',
    ],
    ['potted on 3 Tallow Bell and the 4 rooted Salt Harrier', 'potOn Tallow Bell 3, potOn Salt Harrier 4'],
    [
      'potted on 3 Tallow Bell and the 4 rooted Salt Harrier while she was out',
      'potOn Tallow Bell 3, potOn Salt Harrier 4',
    ],
    ['potted on 3 Tallow Bell and 4 Salt Harrier, 9cm the lot', 'potOn Tallow Bell 3, potOn Salt Harrier 4'],
    [
      'watered the Tallow Bell and the Salt Harrier, vented the greenhouse',
      'tend Tallow Bell, tend Salt Harrier, tend greenhouse',
    ],
    ['must get the Tallow Bell to the greenhouse and the Salt Harrier potted on', ''],
    [
      '4 Tallow Bell off the bench and 3 Salt Harrier sold',
      'dispatch Tallow Bell 4, dispatch Salt Harrier 3',
    ],
    ['lost 3 Tallow Bell to slugs and 2 Salt Harrier to the cat', 'loss Tallow Bell 3, loss Salt Harrier 2'],
    ['pinched the Tallow Bell to 10cm and the Salt Harrier to 15cm', 'pinch Tallow Bell, pinch Salt Harrier'],
    ['potted on the Tallow Bell and the Salt Harrier', 'potOn Tallow Bell, potOn Salt Harrier'],
    ['took 6 Tallow Bell and put them in the greenhouse', 'strike Tallow Bell 6 greenhouse'],
  ])('are read each by its own words: “%s”', (text, expected) => {
    expect(told(text)).toBe(expected);
  });
});
