/** When a spoken note may be posted before the grower says yes. */
import { describe, expect, it } from 'vitest';
import type { HeardWord, ReadNote } from '../../src/language/note.js';
import { doubtfulWords, mayPostUnasked, sureFrom } from '../../src/language/hearing/surety.js';

const heardAs = (text: string, p = 1): HeardWord[] => text.split(' ').map((word) => ({ word, p }));
const misted: ReadNote = {
  entries: [{ entry: { kind: 'tend', care: 'mist', place: 'propagator' }, sources: {} }],
  asks: [],
};
const heard = heardAs('misted the propagator');

describe('a spoken note', () => {
  it('is posted unasked where every word that matters is sure and no number is told', () => {
    expect(mayPostUnasked(misted, heard)).toBe(true);
  });

  it('waits for a yes where one word that matters is in doubt', () => {
    expect(mayPostUnasked(misted, [...heard, { word: 'greenhouse', p: sureFrom - 0.01 }])).toBe(false);
  });

  it('is not held up by a doubtful article', () => {
    expect(mayPostUnasked(misted, [...heardAs('misted propagator'), { word: 'the', p: 0.2 }])).toBe(true);
  });

  it('waits for a yes whenever it tells a number, however sure', () => {
    for (const slots of [{ count: 2 }, { count: 'all' as const }, { rooted: 2 }])
      expect(
        mayPostUnasked({ entries: [{ entry: { kind: 'check', ...slots }, sources: {} }], asks: [] }, heard),
      ).toBe(false);
  });

  it('waits where something is asked, left over, or no entry of things done', () => {
    expect(mayPostUnasked({ ...misted, asks: [{ entry: 0, slot: 'batch' }] }, heard)).toBe(false);
    expect(mayPostUnasked({ ...misted, unknown: 'the dentist' }, heard)).toBe(false);
    expect(mayPostUnasked({ entries: [], asks: [] }, heard)).toBe(false);
    for (const kind of ['undo', 'remark', 'target', 'question', 'amend', 'remind', 'answer'] as const)
      expect(mayPostUnasked({ entries: [{ entry: { kind }, sources: {} }], asks: [] }, heard)).toBe(false);
  });

  it('waits where no word was heard', () => {
    expect(mayPostUnasked(misted, [])).toBe(false);
  });

  it('marks the words in doubt', () => {
    expect(
      doubtfulWords([
        { word: 'the', p: 0.1 },
        { word: 'fox', p: 0.5 },
      ]),
    ).toEqual([{ word: 'fox', p: 0.5 }]);
  });
});
