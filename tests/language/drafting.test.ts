/** Holds each case of drafting to what it says of itself: in its phrasings it decides. */
import { afterEach, describe, expect, it, vi } from 'vitest';
import { countCases } from '../../src/language/acts/drafting/count-cases.js';
import { leftOutCases } from '../../src/language/acts/drafting/left-out.js';
import { dayCases, placeCases } from '../../src/language/acts/drafting/place-and-day-cases.js';
import { plantCases } from '../../src/language/acts/drafting/plant-cases.js';
import { mediumCases, sizeCases } from '../../src/language/acts/drafting/size-and-medium-cases.js';
import { potCases } from '../../src/language/acts/drafting/pot-cases.js';
import { wordCases } from '../../src/language/acts/drafting/word-cases.js';
import type { NoteContext } from '../../src/language/note.js';
import { read } from '../../src/language/read.js';

const context: NoteContext = {
  varieties: [
    { name: 'Salt Harrier', crop: 'pelargonium' },
    { name: 'Tallow Bell', crop: 'fuchsia' },
    { name: 'Ember Fox', crop: 'dahlia' },
  ],
  batches: [
    { label: 'SH1', variety: 'Salt Harrier', crop: 'pelargonium', count: 14, place: 'propagator' },
    { label: 'TB1', variety: 'Tallow Bell', crop: 'fuchsia', count: 8, place: 'greenhouse' },
  ],
  places: ['propagator', 'greenhouse'],
};

afterEach(() => {
  vi.restoreAllMocks();
});

describe.each([
  ['what is left out', leftOutCases],
  ['a plant', plantCases],
  ['a number', countCases],
  ['containers', potCases],
  ['media', mediumCases],
  ['sizes', sizeCases],
  ['a word', wordCases],
  ['a place', placeCases],
  ['a day', dayCases],
] as const)('a case for %s', (_, cases) => {
  it.each(cases.map((each) => [each.name, each] as const))('decides "%s"', (_, each) => {
    const does = vi.spyOn(each, 'does');
    expect(each.phrasings).not.toEqual([]);
    for (const text of each.phrasings) {
      does.mockClear();
      read({ text, now: Date.parse('2026-05-09T09:00:00Z'), zone: 'Europe/London', context });
      expect(does, text).toHaveBeenCalled();
    }
  });

  it('has a name of its own', () => {
    expect(new Set(cases.map(({ name }) => name)).size).toBe(cases.length);
  });
});
