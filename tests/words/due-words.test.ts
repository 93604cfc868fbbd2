/** The words in which the bot says what is due, and why. */
import { describe, expect, it } from 'vitest';
import { asDay } from '../../src/calendar/day.js';
import { crops } from '../../src/horticulture/crops.js';
import { statedFrostDates } from '../../src/horticulture/plant-out.js';
import { digestOf } from '../../src/outlook/digest.js';
import { cautionWords } from '../../src/words/cautions.js';
import { frostRiskWords, groundsWords } from '../../src/words/due-reason.js';
import { digestWords, promptWords } from '../../src/words/prompts.js';
import type { Speech } from '../../src/words/speech.js';
import { ledgerOf, seen, the } from '../outlook/scene.js';

const struck = { kind: 'strike', label: 'EF1', variety: 'Ember Fox', crop: 'dahlia', count: 10, place: 'propagator', date: '2026-03-02' } as const; // prettier-ignore
const british = (today: string): Speech => ({ wording: 'GB', units: 'metric', today: asDay(today) });

describe('a prompt', () => {
  it('asks one short question, gives a range, and says that its ground is a starting guess', () => {
    const text = promptWords(the('check', seen(ledgerOf(struck), '2026-03-14')), british('2026-03-14'));
    expect(text).toMatch(/day 1\d, time to look for roots\. How many of 10 have rooted\?\nLikely ready /);
    expect(text).toContain('(10–14 days is usual, a starting guess)');
    expect(text.split('\n').every((line) => line.length <= 110)).toBe(true);
  });

  it('says the frost at two risks where planting out depends on it', () => {
    const ledger = ledgerOf(
      struck,
      { kind: 'potOn', batch: 'EF1', date: '2026-03-20' },
      { kind: 'hardenOff', batch: 'EF1', date: '2026-05-12' },
    );
    expect(promptWords(the('plantOut', seen(ledger, '2026-05-22')), british('2026-05-22'))).toBe(
      'EF1 Ember Fox, propagator: 10 plants may go out now. Planted?\nHardening off since Tue 12 May; frost after 5 May in one year of two, after 21 May in one of ten.',
    );
  });

  it('names the sign by which a rooted cutting is known to be ready for its pot', () => {
    const ledger = ledgerOf(struck, { kind: 'check', batch: 'EF1', rooted: 6, date: '2026-03-15' });
    expect(promptWords(the('potOn', seen(ledger, '2026-03-16')), british('2026-03-16'))).toContain(
      '\n6 of 10 seen rooted; pot them on when roots show at the holes.',
    );
  });
});

describe('grounds', () => {
  const grounds = { usualDays: [10, 14], usualFrom: 'table', earlier: null, batches: 0, here: true, temperatures: false } as const; // prettier-ignore

  it('are the grower’s own records as soon as there are some', () => {
    const earlier = { batches: 9, within: 7, from: 11, to: 16 };
    expect(groundsWords({ ...grounds, batches: 9, earlier })).toBe(
      '7 of 9 earlier batches here took 11–16 days',
    );
  });

  it('say whose guess they are before that', () => {
    expect(groundsWords({ ...grounds, usualFrom: 'grower' })).toBe(
      '10–14 days by your word, a starting guess',
    );
    expect(groundsWords({ ...grounds, usualFrom: 'anyCutting' })).toContain('for most soft cuttings');
  });

  it('speak American where the grower does', () => {
    const us: Speech = { wording: 'US', units: 'us', today: asDay('2026-03-01') };
    expect(frostRiskWords(statedFrostDates('05-05', 'spring', 'north'), us)).toBe(
      'frost after May 5 in one year of two, after May 21 in one of ten',
    );
  });
});

describe('the digest in words', () => {
  it('heads each place, and tends last', () => {
    const today = asDay('2026-03-16');
    const told = [struck, { ...struck, label: 'MW1', variety: 'Marble Wren', place: 'mist bench' }];
    const digest = digestOf(seen(ledgerOf(...told), today), { today, lastDay: null });
    const lines = digestWords(digest!, british(today)).split('\n');
    expect(lines).toContain('Propagator:');
    expect(lines).toContain('Mist bench:');
    expect(lines.at(-1)).toMatch(/^While you’re there: mist and air the mist bench and the propagator\.$/);
  });
});

describe('tending', () => {
  it('does not mist what rots under a cover', () => {
    const geranium = { ...struck, crop: 'pelargonium', place: 'windowsill' };
    const words = promptWords(the('check', seen(ledgerOf(geranium), '2026-04-04')), {
      ...british('2026-04-04'),
      asides: seen(ledgerOf(geranium), '2026-03-10').filter(({ kind }) => kind === 'tend'),
    });
    expect(words).toContain('While you’re there: water sparingly, uncovered: the windowsill.');
  });
});

describe('cautions', () => {
  it('are worded for every crop that has one', () => {
    const missing = crops.flatMap(({ cautions, name }) =>
      cautions.filter(({ is }) => cautionWords(is, name) === null),
    );
    expect(missing).toEqual([]);
  });
});
