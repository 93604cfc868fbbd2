/** Holds the names said behind what was taken of their crop to their phrasings, each beside its crop; the must-nots name nothing there. */
import { expect, it } from 'vitest';
import { mustNot, phrasings } from '../../src/language/joined/new-names/behind-cuttings.js';
import type { Note } from '../../src/language/note.js';
import { piecesOf, read } from '../../src/language/read.js';

const noteOf = (text: string): Note => ({
  text,
  now: Date.parse('2026-07-15T09:00:00Z'),
  zone: 'Europe/London',
  context: {},
});

it.each(phrasings)('"%s" names %s', (text, name) => {
  const plants = piecesOf(noteOf(text)).pieces.filter(({ is }) => is === 'plant');
  expect(plants).toHaveLength(2);
  const { entries, asks } = read(noteOf(text));
  expect(entries).toMatchObject([{ entry: { variety: name } }]);
  expect(asks).toEqual([]);
});

it.each(mustNot)('"%s" names nothing there', (text) => {
  expect(
    piecesOf(noteOf(text)).pieces.filter((piece) => piece.is === 'plant' && piece.besideCuttings),
  ).toEqual([]);
});
