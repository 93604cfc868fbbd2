/** The words in which the bot says what is due. */
import { describe, expect, it } from 'vitest';
import { asDay } from '../../src/calendar/day.js';
import { crops } from '../../src/horticulture/crops.js';
import { statedFrostDates } from '../../src/horticulture/plant-out.js';
import { digestOf } from '../../src/outlook/digest.js';
import { cautionWords } from '../../src/words/caution-words.js';
import { digestText, dueText } from '../../src/words/digest-text.js';
import { dueLine } from '../../src/words/due-line.js';
import { promptAnswers, promptText } from '../../src/words/due-prompt.js';
import { frostWords } from '../../src/words/due-reason.js';
import { celsiusWords, sayOf } from '../../src/words/say.js';
import { ledgerOf, seen, the } from '../outlook/scene.js';

const struck = { kind: 'strike', label: 'EF1', variety: 'Ember Fox', crop: 'dahlia', count: 10, place: 'propagator', date: '2026-03-02' } as const; // prettier-ignore

describe('a prompt', () => {
  it('asks one short question, and says that its ground is a starting guess', () => {
    const text = promptText(the('check', seen(ledgerOf(struck), '2026-03-14')));
    expect(text).toMatch(/^EF1 Ember Fox, day 1\d: how many of the 10 cuttings have rooted\?\n/);
    expect(text).toContain('a starting guess from the crop table, 10–14 days');
    expect(text.split('\n').every((line) => line.length <= 130)).toBe(true);
  });

  it('offers the answers that it waits for', () => {
    expect(promptAnswers('check')).toEqual(['All', 'Some', 'None yet']);
    expect(promptAnswers('potOn')).toEqual(['Done', 'Not yet']);
  });

  it('says the frost at two risks where planting out depends on it', () => {
    const ledger = ledgerOf(
      struck,
      { kind: 'potOn', batch: 'EF1', date: '2026-03-20' },
      { kind: 'hardenOff', batch: 'EF1', date: '2026-05-12' },
    );
    expect(promptText(the('plantOut', seen(ledger, '2026-05-22')))).toBe(
      'EF1 Ember Fox: are the 10 planted out?\nHardening since 12 May; frost after 5 May in one year of two, after 21 May in one of ten.',
    );
  });
});

describe('a line', () => {
  it('names task, batch and ground', () => {
    const ledger = ledgerOf(struck, { kind: 'check', batch: 'EF1', rooted: 6, date: '2026-03-15' });
    expect(dueLine(the('potOn', seen(ledger, '2026-03-16')), asDay('2026-03-16'))).toBe(
      'Pot on EF1 Ember Fox, 6 cuttings (6 of 10 seen rooted; when roots show at the holes)',
    );
  });

  it('says that it is late', () => {
    const ledger = ledgerOf(struck, { kind: 'check', batch: 'EF1', rooted: 6, date: '2026-03-15' });
    expect(dueLine(the('potOn', seen(ledger, '2026-04-16')), asDay('2026-04-16'))).toMatch(
      /^Late: Pot on EF1/,
    );
  });

  it('speaks American, in °F, where the grower does', () => {
    const us = sayOf('US', 'us');
    expect(celsiusWords(-2, us)).toBe('28.4 °F');
    expect(frostWords(statedFrostDates('05-05', 'spring', 'north'), us)).toBe(
      'frost after May 5 in one year of two, after May 21 in one of ten',
    );
  });
});

describe('the digest in words', () => {
  const told = [struck, { ...struck, label: 'MW1', variety: 'Marble Wren', place: 'greenhouse' }];
  const today = asDay('2026-03-16');

  it('heads each place, and tends last', () => {
    const digest = digestOf(seen(ledgerOf(...told), today), { today, lastDay: null });
    const text = digestText(digest!);
    expect(text).toMatch(/^2 things for 16 March\n\nPropagator\n• /);
    expect(text).toContain('\n\nGreenhouse\n• ');
    expect(text.split('\n').at(-1)).toBe(
      'Greenhouse and propagator: mist if dry, let in air, take out what moulds.',
    );
    expect(text.split('\n').every((line) => line.length <= 110)).toBe(true);
  });

  it('answers what is due by day', () => {
    expect(dueText([], today)).toBe('Nothing is due.');
    const due = seen(ledgerOf(...told), today).filter(({ kind }) => kind === 'check');
    expect(dueText(due, today)).toMatch(/^Today\n• /);
  });
});

describe('cautions', () => {
  it('are worded for every crop that has one', () => {
    const missing = crops.flatMap(({ cautions }) => cautions).filter(({ is }) => !cautionWords[is]);
    expect(missing).toEqual([]);
  });
});
