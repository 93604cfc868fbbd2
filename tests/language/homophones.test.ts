/** Holds each record of the misheard to what it says of itself: its phrasings are mended, by it alone too; its must-nots stand. */
import { describe, expect, it } from 'vitest';
import { mendingBy, misheard, restoreHeard, type Mending } from '../../src/language/row/homophones.js';
import { findNames } from '../../src/language/row/names.js';
import { normalise } from '../../src/language/row/normalise.js';
import { tokenise } from '../../src/language/row/tokens.js';
import { placesBegin } from '../../src/language/pieces/places/begin.js';
import { utteranceOf } from '../../src/language/pieces/utterance.js';

const context = { varieties: [{ name: 'Salt Harrier' }, { name: 'Tallow Bell' }] };

const tokensOf = (text: string) => tokenise(normalise(text));
const wordsOf = (tokens: ReturnType<typeof tokensOf>): string => tokens.map(({ text }) => text).join(' ');

/** The words of a phrase as `mending` leaves them. */
function mended(phrase: string, mending: Mending): string {
  const tokens = tokensOf(phrase);
  const names = findNames(tokens, context);
  const isName = (at: number): boolean => names.some(({ from, to }) => at >= from && at < to);
  const isPlant = (at: number): boolean => isName(at) || (tokens[at]?.text === 'the' && isName(at + 1));
  return wordsOf(mending(tokens, isName, isPlant, placesBegin(tokens, context, isName)));
}

describe('a record of the misheard', () => {
  it.each(misheard.map((record) => [record.name, record] as const))('mends "%s"', (_, record) => {
    expect(record.phrasings).not.toEqual([]);
    for (const [heard, meant] of record.phrasings) {
      expect(mended(heard, mendingBy([record])), `${heard}, by itself`).toBe(wordsOf(tokensOf(meant)));
      expect(mended(heard, restoreHeard), heard).toBe(wordsOf(tokensOf(meant)));
    }
  });

  it.each(misheard.filter(({ mustNot }) => mustNot).map((record) => [record.name, record] as const))(
    'lets stand what is not "%s"',
    (_, { mends, mustNot = [] }) => {
      for (const phrase of mustNot) {
        expect(phrase.split(' ').filter((word) => Object.hasOwn(mends, word))).not.toEqual([]);
        expect(mended(phrase, restoreHeard), phrase).toBe(wordsOf(tokensOf(phrase)));
      }
    },
  );

  it('has a name of its own', () => {
    expect(new Set(misheard.map(({ name }) => name)).size).toBe(misheard.length);
  });
});

describe('the misheard in a note', () => {
  const read = (text: string): string =>
    wordsOf(
      utteranceOf({ text, now: Date.parse('2026-05-09T09:00:00Z'), zone: 'Europe/London', context }).tokens,
    );

  it.each([
    // The second sees the first as it was mended.
    [
      'gave Salt Harrier a look, fife routed and to dampened off',
      'gave salt harrier a look , five rooted and two damped off',
    ],
    // Of two records for one word the earlier decides: a number here, the way to someone there.
    ['sold the Salt Harrier too dozen', 'sold the salt harrier two dozen'],
    ['sold the Salt Harrier too Doreen', 'sold the salt harrier to doreen'],
  ])('reads "%s"', (heard, meant) => {
    expect(read(heard)).toBe(meant);
  });

  it('never mends a word of a name', () => {
    const name = 'Free To Won';
    const tokens = utteranceOf({
      text: `took ${name} cuttings`,
      now: 0,
      zone: 'Europe/London',
      context: { varieties: [{ name }] },
    }).tokens;
    expect(wordsOf(tokens)).toBe('took free to won cuttings');
  });
});
