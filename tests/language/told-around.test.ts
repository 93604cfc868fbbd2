/** What stands around a deed and is none: hopes that came to nothing, forecasts, prices, openings. */
import { describe, expect, it } from 'vitest';
import { mustNot, phrasings } from '../../src/language/joined/beside-others.js';
import { phrasings as looks } from '../../src/language/joined/looked-over.js';
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
  places: ['propagator', 'greenhouse', 'porch'],
};

/** Each entry as its kind and its number, and what is asked. */
function told(text: string): string {
  const { entries, asks } = read({
    text,
    now: Date.parse('2026-05-09T09:00:00Z'),
    zone: 'Europe/London',
    context,
  });
  const said = entries.map(({ entry }) => {
    const { kind, count, rooted } = entry as { kind: string; count?: unknown; rooted?: unknown };
    return [kind, rooted, count].filter((part) => part !== undefined).join(' ');
  });
  return [...said, ...asks.map(({ slot }) => `${slot}?`)].join(', ');
}

describe('plants named beside what is told', () => {
  const plants = (text: string) =>
    read({ text, now: Date.parse('2026-05-09T09:00:00Z'), zone: 'Europe/London', context }).entries.map(
      ({ entry }) => (entry as { variety?: string }).variety,
    );

  it.each(phrasings)('is no plant of its own: "%s"', (text) => {
    expect(plants(text)).toEqual(['Salt Harrier']);
  });

  it.each(looks)('is looked at once where each is told of: "%s"', (text) => {
    expect([...plants(text)].sort()).toEqual(['Salt Harrier', 'Tallow Bell']);
    expect(told(text)).not.toContain('?');
  });

  it.each(mustNot)('is left where another is told: "%s"', (text) => {
    expect(plants(text)).toEqual(['Salt Harrier', 'Tallow Bell']);
  });
});

describe('what stands around a deed', () => {
  it.each([
    ['Was hoping for all twelve of the Salt Harrier but only seven have roots, so the other five went on the compost', 'check 7, loss 5'],
    ['hoped for ten Salt Harrier but only six rooted', 'check 6'],
    ['expected ten Salt Harrier to have roots but they have all rotted', 'loss all'],
    ['wanted twelve Salt Harrier but ended up with five', ''],
    ['was hoping for 20 Salt Harrier by June', 'target 20'],
    ['I want 50 Salt Harrier by June', 'target 50'],
    ['68F in the propagator and 41 in the greenhouse this morning', 'reading, reading'],
    ['20C in the propagator, 9 in the greenhouse and 4 on the porch', 'reading, reading, reading'],
    ['20C in the propagator and 4 in the greenhouse to pot on', 'reading'],
    ['20C in the propagator, four pots in the greenhouse', 'reading'],
    ['did the pelargonium and clean forgot to tell you: 20 Salt Harrier, heel cuttings, on Monday', 'strike 20'],
    ['did the fuchsias today', ''],
    ['Marv says we need a ledger so here goes: took 6 basal cuttings of Tallow Bell, on the heat mat', 'strike 6'],
    ['the 7 Salt Harrier without roots thrown away', 'loss 7'],
    ['the 3 Salt Harrier that never rooted have gone on the heap', 'loss 3'],
    ['forgot, lost two Salt Harrier on Sunday', 'loss 2'],
    ['lost two and the rest are fine', 'loss 2, batch?'],
    ['two lost and the rest are fine', 'loss 2, batch?'],
    ['potted on two but the others can wait', 'potOn 2, batch?'],
    ['lost two and a glove', ''],
    ['the Salt Harrier has its first flower bud, fat as a raspberry!', 'remark'],
    ['took six cuttings of raspberry', 'strike 6'],
    ['none yet dear', 'answer'],
    ['the two Salt Harrier lots may as well be one now, merge them', ''],
    ['put 4 Salt Harrier in the frame, so they can join the others', 'move 4'],
    ['Betty brought one Salt Harrier back, she only wanted one', 'remark'],
    ['took some cuttings! Nine Salt Harrier, three pots', 'strike 9'],
    ['took my first cuttings!! 5 off my fuchsia, it’s called Biscuit Tin', 'strike 5'],
    ['took some cuttings. 3 Salt Harrier died', 'strike, loss 3, variety?, count?'],
    ['got 6 Salt Harrier set aside for the plant stall', ''],
    ['Snow again! Will it ever stop', ''],
    ['meant to say I lost 3 Salt Harrier in the heat', 'loss 3'],
    ['potted on 4 Salt Harrier, did it on Thursday', 'potOn 4'],
    ['potted on 4 Salt Harrier, I did it on Thursday', 'potOn 4'],
    ['the ones struck on 16 March', ''],
    ['one Salt Harrier has gone black at the bottom so that’s one lost, poor thing', 'loss 1'],
    ['Nice day. Twelve cuttings of Rook Bonnet, that’s my old penstemon', 'strike 12'],
    ['had another look at the Salt Harrier, 6 rooted', 'check 6'],
    ["moved the Salt Harrier to the porch, she's meant to hit 38 tomorrow", 'move'],
    ['moved the Salt Harrier to the porch, going to be 30 tomorrow', 'move'],
    ['moved the Salt Harrier to the porch as frost is due tonight', 'move'],
    ['moved the Salt Harrier to the porch tomorrow', 'move, date?'],
    ['tempted to order 50 Salt Harrier plugs but what they want for shipping is nuts', ''],
    ['they want 50 quid for six Salt Harrier', ''],
    ['I finally got round to the Salt Harrier this afternoon! Nine semi-ripe ones, round the edge of one pot', 'strike 9'],
    ['Got round to the Salt Harrier at last. Six dead.', 'loss 6'],
  ])('is no part of it: "%s"', (text, expected) => {
    expect(told(text)).toBe(expected);
  });
}); // prettier-ignore

describe('the day of a heading', () => {
  const days = (text: string) =>
    read({ text, now: Date.parse('2026-05-20T09:00:00Z'), zone: 'Europe/London', context }).entries.map(
      ({ entry }) => ('date' in entry ? entry.date : undefined),
    );

  it('is that of an act told again behind its colon', () => {
    expect(days('TB1 12 May: four sold to Edna, two to Ken')).toEqual(['2026-05-12', '2026-05-12']);
  });

  it('is not that of what came of it later, or of an act with a day of its own', () => {
    expect(days('TB1 12 May: four sold to Edna, two to Ken today')).toEqual(['2026-05-12', '2026-05-20']);
    const [, binned] = days('TB1 12 May: none rooted, now binned');
    expect(binned).not.toBe('2026-05-12');
  });
});
