/** Long texts are cut where they read best, and nothing of them is lost. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { textPieces } from '../../src/channels/text-pieces.js';

describe('a text longer than a message', () => {
  it('is cut at a blank line, a line or a word, whichever lies near the end', () => {
    expect(textPieces('aaaa bbbb\ncccc\n\ndddd', 17)).toEqual(['aaaa bbbb\ncccc', 'dddd']);
    expect(textPieces('aaaa bbbb\ncccc dddd', 12)).toEqual(['aaaa bbbb', 'cccc dddd']);
    expect(textPieces('aaaa bbbb cccc', 11)).toEqual(['aaaa bbbb', 'cccc']);
    expect(textPieces('aaaaaaaa', 3)).toEqual(['aaa', 'aaa', 'aa']);
  });

  it('keeps every character whole and every piece within the limit', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 300 }),
        fc.integer({ min: 20, max: 60 }),
        (text, limit) => {
          const pieces = textPieces(text, limit);
          for (const piece of pieces) {
            expect(piece.length).toBeLessThanOrEqual(limit);
            expect(piece.trim()).not.toBe('');
            expect(piece).not.toMatch(/\p{Cs}/u); // half a character
          }
          expect(pieces.join('').replace(/\s/g, '')).toBe(text.replace(/\s/g, ''));
        },
      ),
    );
  });
});
