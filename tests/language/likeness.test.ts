/** Holds the second look at a note, by its words alone, to what it may do: doubt what was read, and see what was not. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chance, learn, type Example } from '../../src/language/likeness/learning.js';
import { lettersOf, numbersOf } from '../../src/language/likeness/letters.js';
import { likenessOf } from '../../src/language/likeness/likeness.js';
import { partsOf, traitsOf, wordsOf } from '../../src/language/likeness/words.js';
import type { NoteContext, ReadNote } from '../../src/language/note.js';
import { piecesOf, read } from '../../src/language/read.js';
import { noteOf } from '../../src/command-line/parse.js';
import '../seeded.js';

const context: NoteContext = {
  varieties: [
    { name: 'Salt Harrier', crop: 'pelargonium' },
    { name: 'Tallow Bell', crop: 'fuchsia' },
  ],
  batches: [
    { label: 'SH1', variety: 'Salt Harrier', crop: 'pelargonium', count: 14 },
    { label: 'TB1', variety: 'Tallow Bell', crop: 'fuchsia', count: 8 },
  ],
  places: ['porch'],
};
const noteSaying = (text: string) => ({
  text,
  now: Date.parse('2026-05-12T10:00:00Z'),
  zone: 'Europe/London',
  context,
});
const kinds = (entries: ReadNote['entries'] = []): readonly string[] =>
  entries.map(({ entry }) => entry.kind);

describe('a note that is unlike what was read in it', () => {
  it.each([
    [
      'My neighbour Inge has taken twenty cuttings from her dahlias this morning, I am a bit jealous',
      [],
      ['strike'],
    ],
    ['I have potted three tubers of dahlia for wake up', [], ['potOn']],
    ['Lost my good knife somewhere by the Tallow Bell', [], ['loss']],
    [
      'Picked up a big old tuber of a dahlia called Vermilion Usher at the show, now sitting in a 3L pot in the porch',
      ['stock'],
      ['potOn'],
    ],
  ])('is not logged but doubted: "%s"', (text, believed, doubted) => {
    const byRules = read({ ...noteSaying(text), byRules: true });
    const weighed = read(noteSaying(text));
    expect(kinds(byRules.entries)).toEqual(expect.arrayContaining(doubted));
    expect(kinds(weighed.entries)).toEqual(believed);
    expect(kinds(weighed.doubted)).toEqual(doubted);
    expect(weighed.asks.every(({ entry }) => entry < weighed.entries.length)).toBe(true);
  });

  it.each([
    'Took 6 Salt Harrier',
    'undo the Salt Harrier loss, lost 3 Tallow Bell to mice',
    'when are the Salt Harrier due?',
    'the Tallow Bell are flowering',
    'potted on all eight Tallow Bell, moved them to the porch, lost 2 Salt Harrier and took five more',
  ])('is let be where it is like it: "%s"', (text) => {
    const weighed = read(noteSaying(text));
    expect(weighed).toEqual(read({ ...noteSaying(text), byRules: true }));
    expect(weighed.entries.length).toBeGreaterThan(0);
  });
});

describe('a note in which the rules see nothing', () => {
  it.each([
    ['Two pots with each five Salt Harrier I have set today', { kind: 'strike', pots: 2, count: 10 }],
    ['Three Tallow Bell droont, went a’ tae slime', { kind: 'loss', variety: 'Tallow Bell', count: 3 }],
    ['A score of Tallow Bell wid dae for the gala week, first week in July', { kind: 'target', count: 20 }],
  ])('is read as what it is plainly like: "%s"', (text, entry) => {
    expect(read({ ...noteSaying(text), byRules: true }).entries).toEqual([]);
    expect(read(noteSaying(text)).entries).toMatchObject([{ entry }]);
  });

  it.each([
    'dreamt I sold 40 Salt Harrier',
    'The Tallow Bell would look lovely planted out by the gate',
    'in 9cm pots',
    'change rot to slugs',
    'Nearly sold 10 Salt Harrier to a chap but he had no money on him',
  ])('stays one where a mood holds the deed back, or nothing is named: "%s"', (text) => {
    expect(read(noteSaying(text)).entries).toEqual([]);
  });
});

describe('what notes are alike by', () => {
  it('is the words around a plant, whatever it is called', () => {
    const words = (text: string) => wordsOf(piecesOf(noteSaying(text)).pieces);
    expect(words('Took 6 Salt Harrier, 2 to a pot')).toEqual(words('took twelve Tallow Bell, 3 to a pot'));
    expect(words('lost 2 fuchsias')).toEqual(['lose/past', 'COUNT', 'CROP']);
  });

  it('is told by parts too, at marks and joining words', () => {
    const parts = partsOf(['lose/past', 'COUNT', 'PLANT', ',', 'PLANT', 'and', 'took', 'COUNT']);
    expect(parts).toEqual([
      ['lose/past', 'COUNT', 'PLANT'],
      ['took', 'COUNT'],
    ]);
  });

  it('is each word, each two, and each two around one', () => {
    expect([...traitsOf(['a', 'b'])]).toEqual(['<', '< a', '< _ b', 'a', 'a b', 'a _ >', 'b', 'b >', '>']);
  });
});

describe('learning', () => {
  const example = (words: string, ...told: string[]): Example => ({
    traits: traitsOf(words.split(' ')),
    kinds: new Set(told),
  });
  const notes = [
    ...Array.from({ length: 20 }, () => example('took some', 'strike')),
    ...Array.from({ length: 20 }, () => example('lost some', 'loss')),
  ];
  const weightOf = (learnt: ReturnType<typeof learn>, trait: string, kind: string) =>
    learnt.weights.get(trait)?.[learnt.kinds.indexOf(kind)] ?? 0;

  it('weighs for a kind what stands in its notes, and against it what stands in the others', () => {
    const learnt = learn(notes);
    expect(weightOf(learnt, 'took', 'strike')).toBeGreaterThan(0);
    expect(weightOf(learnt, 'took', 'loss')).toBeLessThan(0);
    expect(Math.abs(weightOf(learnt, 'some', 'loss'))).toBeLessThan(weightOf(learnt, 'lost', 'loss'));
  });

  it('gives the same weights for the same notes, and takes from a note only what is known of it', () => {
    expect(learn(notes)).toEqual(learn(notes));
    const looksLikeIt = Array.from({ length: 20 }, () => ({ ...example('took heart'), only: 'strike' }));
    const learnt = learn([...notes, ...looksLikeIt]);
    expect(weightOf(learnt, 'heart', 'strike')).toBeLessThan(0);
    expect(weightOf(learnt, 'heart', 'loss')).toBe(0);
  });

  it('turns sums into chances', () => {
    expect([chance(0), chance(-50) < 1e-20, chance(50)]).toEqual([0.5, true, 1]);
  });

  it('writes its weights in letters and reads them again', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -26, max: 26 })), (numbers) => {
        expect(numbersOf(lettersOf(numbers))).toEqual(numbers);
      }),
    );
    expect(lettersOf([1, 26, 99, -1, -99, 0])).toBe('azzAZ.');
  });

  // Of the unseen half nothing was learnt.
  it('tells the kind of notes that it never saw', () => {
    const unseen = readdirSync('fixtures/notes/unseen').flatMap((name) =>
      readFileSync(join('fixtures/notes/unseen', name), 'utf8').trim().split('\n'),
    );
    const one = unseen
      .map((line) => JSON.parse(line) as Record<string, unknown> & { gold: { entries: { kind: unknown }[] } })
      .filter(({ gold }) => gold.entries.length === 1 && gold.entries[0]?.kind !== 'answer');
    const right = one.filter((line) => {
      const { whole } = likenessOf(piecesOf(noteOf(line)).pieces);
      const [first] = [...whole].sort(([, a], [, b]) => b - a);
      return first?.[0] === line.gold.entries[0]?.kind;
    });
    expect(one.length).toBeGreaterThan(200);
    expect(right.length / one.length).toBeGreaterThan(0.85);
  });
});
