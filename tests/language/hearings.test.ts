/** Which of several hearings of one sound is asked about. */
import { describe, expect, it } from 'vitest';
import { heardOtherwise, tellsNothing } from '../../src/language/hearing/hearings.js';
import type { HeardWord, NoteContext, ReadNote } from '../../src/language/note.js';
import { read } from '../../src/language/read.js';

const context: NoteContext = {
  varieties: [{ name: 'Salt Harrier', crop: 'dahlia' }],
  batches: [{ label: 'TB1', crop: 'fuchsia' }],
};
const readingOf = (text: string): ReadNote =>
  read({ text, now: Date.parse('2026-05-09T09:00:00Z'), zone: 'Europe/London', context });
const heard = (text: string): HeardWord[] => text.split(' ').map((word) => ({ word, p: 0.7 }));
const meant = (best: string, others: string[]): string | undefined =>
  heardOtherwise(heard(best), others, context, readingOf)
    ?.map(({ word, p }) => (p === 0 ? `${word}?` : word))
    .join(' ');

describe('a hearing that tells of nothing', () => {
  it('gives way to the likeliest other that names a plant of the ledger', () => {
    expect(
      meant('i lost tree of the salt area today', [
        'i lost tree of the salt hair today',
        'i lost three of the salt harrier today',
        'i lost two of the salt harrier today',
      ]),
    ).toBe('i lost three? of? the? salt? harrier? today');
  });

  it('gives way to one that tells of a crop only where none names a plant of the ledger', () => {
    const rose = 'took five rose cuttings';
    expect(meant('looked five rows cut inks', [rose])).toBe('took? five? rose? cuttings?');
    expect(meant('looked five rows cut inks', [rose, 'lost five salt harrier'])).toMatch(/harrier/);
  });

  it('gives way to one that tells of a batch by its label', () => {
    expect(meant('cheque the tea be one', ['checked TB1 three rooted'])).toBe('checked? TB1? three? rooted?');
  });

  it.each([
    ['a plant that the ledger does not know', ['took five cuttings of cellar pike']],
    ['a place alone', ['misted the greenhouse']],
    ['a name of which nothing is told', ['and salt harrier in the sea at']],
    ['nothing else', []],
  ])('stands beside others that tell of %s', (_, others) => {
    expect(meant('looked five rows cut inks', others)).toBeUndefined();
  });

  it('stands where the others name no plant and leave but one to be meant', () => {
    expect(
      heardOtherwise(
        heard('five in here'),
        ['took five more'],
        { varieties: [{ name: 'Salt Harrier' }] },
        readingOf,
      ),
    ).toBeUndefined();
  });

  it('keeps the posteriors of what both hearings have, at either end, and no word twice', () => {
    expect(meant('lost the salt harrier', ['lost the the salt harrier'])).toBe('lost the the? salt harrier');
  });

  it('is one without entry and instruction', () => {
    expect(tellsNothing({ entries: [], asks: [] })).toBe(true);
    expect(tellsNothing(readingOf('misted the propagator'))).toBe(false);
    expect(tellsNothing(readingOf('snooze everything for a week'))).toBe(false);
  });
});
