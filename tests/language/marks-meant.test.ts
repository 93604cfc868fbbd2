/** Holds each record of a mark that speech leaves out to what it says of itself: its phrasings get the mark as written, by it alone too. */
import { describe, expect, it } from 'vitest';
import { markingBy, marksMeant, withMarks } from '../../src/language/joined/marks-meant.js';
import type { MarkMeant } from '../../src/language/joined/marks-meant/record.js';
import type { Note } from '../../src/language/note.js';
import { piecesOf } from '../../src/language/read.js';
import type { Piece } from '../../src/language/pieces/pieces.js';

const noteOf = (text: string): Note => ({
  text,
  now: Date.parse('2026-07-15T09:00:00Z'),
  zone: 'Europe/London',
  context: {
    varieties: [
      { name: 'Salt Harrier', crop: 'pelargonium' },
      { name: 'Tallow Bell', crop: 'fuchsia' },
    ],
    batches: [],
    places: ['propagator', 'greenhouse', 'porch'],
  },
});

/** The kinds of a row's pieces, its marks as they are. */
const shapeOf = (pieces: readonly Piece[]): string =>
  pieces.map((piece) => (piece.is === 'break' ? piece.mark : piece.is)).join(' ');

const written = (text: string): string => shapeOf(piecesOf(noteOf(text)).pieces);
const marked = (text: string, records: readonly MarkMeant[]): string =>
  shapeOf(markingBy(records)(piecesOf(noteOf(text)).pieces));

describe.each(marksMeant.map((record) => [record.name, record] as const))('%s', (_, record) => {
  it.each(record.phrasings)('"%s" is "%s"', (said, meant) => {
    expect(marked(said, [record])).toBe(written(meant));
    expect(shapeOf(withMarks(piecesOf(noteOf(said)).pieces))).toBe(written(meant));
  });

  it.each(record.mustNot ?? [])('leaves "%s"', (said) => {
    expect(marked(said, [record])).toBe(written(said));
  });
});
