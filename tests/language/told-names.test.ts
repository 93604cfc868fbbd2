/** Holds each announcement of a name to what it says of itself, by it alone too. */
import { describe, expect, it } from 'vitest';
import type { Note } from '../../src/language/note.js';
import { piecesOf } from '../../src/language/read.js';
import { announcements } from '../../src/language/pieces/told-names/announcements.js';

const noteOf = (text: string): Note => ({
  text,
  now: Date.parse('2026-07-15T09:00:00Z'),
  zone: 'Europe/London',
  context: {},
});

const namesIn = (text: string): string[] =>
  piecesOf(noteOf(text)).pieces.flatMap((piece) =>
    piece.is === 'plant' && piece.plant.variety !== undefined ? [piece.plant.variety] : [],
  );

describe.each(announcements.map((one) => [one.name, one] as const))('%s', (_, announcement) => {
  it.each(announcement.phrasings)('"%s" names Tin Whistler', (text) => {
    const { tokens } = piecesOf(noteOf(text)).utterance;
    const end = tokens.findIndex(({ text: word }) => word === 'tin');
    expect([1, 2].some((back) => announcement.endsAt(tokens, end - back))).toBe(true);
    expect(namesIn(text)).toEqual(['Tin Whistler']);
  });

  it.each(announcement.mustNot ?? [])('"%s" names none', (text) => {
    expect(namesIn(text)).toEqual([]);
  });
});

it('names what stands before "by name"', () => {
  expect(namesIn('Two crowns, Ragged Sunday by name')).toEqual(['Ragged Sunday']);
});
