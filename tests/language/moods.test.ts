/** Holds each case of mood to what it says of itself: in its phrasings it decides. */
import { afterEach, describe, expect, it, vi } from 'vitest';
import { moodCases } from '../../src/language/mood/cases.js';
import { read } from '../../src/language/read.js';

const context = {
  varieties: [{ name: 'Salt Harrier', crop: 'pelargonium' }],
  batches: [{ label: 'SH1', variety: 'Salt Harrier', crop: 'pelargonium', count: 14, place: 'propagator' }],
  places: ['propagator', 'greenhouse'],
};

afterEach(() => {
  vi.restoreAllMocks();
});

describe('a case of mood', () => {
  it.each(moodCases.map((each) => [each.name, each] as const))('decides "%s"', (_, each) => {
    const when = vi.spyOn(each, 'when');
    expect(each.phrasings).not.toEqual([]);
    for (const text of each.phrasings) {
      when.mockClear();
      read({ text, now: Date.parse('2026-05-09T09:00:00Z'), zone: 'Europe/London', context });
      expect(
        when.mock.results.map(({ value }) => value as boolean),
        text,
      ).toContain(true);
    }
  });

  it('has a name of its own', () => {
    expect(new Set(moodCases.map(({ name }) => name)).size).toBe(moodCases.length);
  });
});
