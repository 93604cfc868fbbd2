/** How a word is said in accents that no dictionary writes. */
import { describe, expect, it } from 'vitest';
import { asAmerican, asBritish, withOpenUp } from '../../src/voice/accents.js';
import { phonesOf } from '../../src/voice/phonemes.js';
import { pronounce } from '../../src/voice/pronunciation.js';

describe('accents', () => {
  // Standard descriptions: the vowels of “cot” and “caught” are one to many Americans, and a t between vowels is a flap.
  it.each([
    ['off', 'AO F', 'AA F'],
    ['four', 'F AO R', 'F AO R'],
    ['rooted', 'R UW T IH D', 'R UW D IH D'],
    ['tip', 'T IH P', 'T IH P'],
  ])('a relaxed American says %s', (_, phones, said) => {
    expect(asAmerican(phones)).toBe(said);
  });

  it.each([
    ['lantern', 'L AE N T AH N', 'L AA N T AH N'],
    ['eight', 'EY T', 'AY T'],
    ['twelve', 'T W EH L V', 'T W EH OW V'],
    ['yellow', 'Y EH L OW', 'Y EH L OW'],
    ['tip', 'T IH P', 'T IH P'],
  ])('a Briton says %s', (_, phones, said) => {
    expect(asBritish(phones)).toBe(said);
  });

  it('open the vowel of “up”, and no other faint one', () => {
    // espeak-ng 1.51 prints V'p for “up” and @b'aUt for “about”.
    expect(phonesOf(withOpenUp("V'p"), 'british')).toBe('AA P');
    expect(phonesOf(withOpenUp("@b'aUt"), 'british')).toBe('AH B AW T');
  });

  it('stand beside what the dictionary says, not in its place', () => {
    const stock = new Map([['potted', ['P AA T IH D']]]);
    const ways = pronounce(new Set(['potted']), new Set(), new Map(), stock).get('potted');
    expect(ways).toContain('P AA T IH D');
    expect(ways).toContain('P AA D IH D');
  });
});
