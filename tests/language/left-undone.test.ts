/** Holds what is named as left undone to its phrasings: it is not logged beside what was done, and what merely sounds so is. */
import { describe, expect, it } from 'vitest';
import {
  leftPhrases,
  notReachedPhrases,
  wantedPhrases,
} from '../../src/language/acts/left-undone/phrases.js';
import type { NoteContext } from '../../src/language/note.js';
import { read } from '../../src/language/read.js';

const context: NoteContext = {
  varieties: ['Salt Harrier', 'Tallow Bell', 'Marble Wren'].map((name) => ({ name, crop: 'fuchsia' })),
  batches: [
    { label: 'SH1', variety: 'Salt Harrier', crop: 'fuchsia', count: 14, place: 'propagator' },
    { label: 'TB1', variety: 'Tallow Bell', crop: 'fuchsia', count: 8, place: 'greenhouse' },
    { label: 'MW1', variety: 'Marble Wren', crop: 'fuchsia', count: 6, place: 'greenhouse' },
  ],
  places: ['propagator', 'greenhouse', 'porch'],
};

const done = (text: string): readonly string[] =>
  read({ text, now: Date.parse('2026-05-20T17:00:00Z'), zone: 'Europe/London', context })
    .entries.map(({ entry }) => entry)
    .flatMap((entry) => (entry.kind === 'potOn' ? [(entry as { variety?: string }).variety ?? ''] : []));

const phrases = [...leftPhrases, ...notReachedPhrases, ...wantedPhrases];

describe('what was left undone', () => {
  it.each(phrases.flatMap(({ phrasings }) => phrasings))('leaves out "%s"', (phrasing) => {
    expect(done(`potted on the Salt Harrier, ${phrasing}`)).toEqual(['Salt Harrier']);
  });

  it.each(phrases.flatMap(({ mustNot = [] }) => mustNot))('keeps "%s"', (phrasing) => {
    expect(done(`potted on the Salt Harrier, ${phrasing}`)).toEqual(['Salt Harrier', 'Tallow Bell']);
  });
});
