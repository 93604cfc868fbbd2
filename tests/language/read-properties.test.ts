/** What must hold of the reader whatever is written: it answers, alike under case and spacing, and invents nothing. */
import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { noteOf } from '../../src/command-line/parse.js';
import type { Note } from '../../src/language/note.js';
import { normalise } from '../../src/language/row/normalise.js';
import { read } from '../../src/language/read.js';

const notes: readonly Note[] = readFileSync('fixtures/contract/examples.jsonl', 'utf8')
  .trim()
  .split('\n')
  .map((line) => noteOf(JSON.parse(line) as Record<string, unknown>));
const anyNote = fc.constantFrom(...notes);
const words = [...new Set(notes.flatMap(({ text }) => text.split(/\s+/)).filter((word) => word !== ''))];

/** Words of notes in any order, with a break here and there. */
const salad = fc
  .array(fc.constantFrom(...words, ',', '.', 'and', '?', '\n', '3', 'no', 'not'), { maxLength: 60 })
  .map((each) => each.join(' '));

/** Names lose their quotes and apostrophes on the way. */
const lettersOf = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');

describe('the reader', () => {
  it('answers any text of up to 4,096 characters', () => {
    fc.assert(
      fc.property(anyNote, fc.string({ unit: 'binary', maxLength: 4096 }), (note, text) => {
        const { entries, asks } = read({ ...note, text });
        expect(asks.every(({ entry }) => entry >= 0 && entry < entries.length)).toBe(true);
      }),
      { numRuns: 150 },
    );
  });

  it.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'valueOf'])(
    'answers %s, which every object has, as a word like any other',
    (word) => {
      for (const note of notes.slice(0, 10)) {
        expect(read({ ...note, text: word }).entries).toEqual(read({ ...note, text: 'xyzzyq' }).entries);
        expect(() => read({ ...note, text: `struck 4 ${word} in the ${word}` })).not.toThrow();
      }
    },
  );

  it.each([
    'no wait',
    'right then',
    'now then',
    'so now and',
    'wrong number',
    'please can you',
    'thanks mate',
    'undo that',
    'no actually',
    'never and the then but so',
    'and now, so it,',
  ])('answers "%s" said again and again', (phrase) => {
    const [note] = notes;
    if (note) expect(read({ ...note, text: `${phrase} `.repeat(60) }).entries.length).toBeLessThan(3);
  });

  it('answers words of notes in any order, and asks only for slots that its entries lack', () => {
    fc.assert(
      fc.property(anyNote, salad, (note, text) => {
        const { entries, asks } = read({ ...note, text });
        for (const { entry, slot } of asks) expect(entries[entry]?.entry).not.toHaveProperty(slot);
      }),
      { numRuns: 300 },
    );
  });

  it('reads a note alike however widely it is spaced', () => {
    fc.assert(
      fc.property(anyNote, fc.integer({ min: 1, max: 4 }), (note, width) => {
        const wide = note.text.replace(/ +/g, ' '.repeat(width));
        expect(read({ ...note, text: ` ${wide} ` })).toEqual(read(note));
      }),
    );
  });

  it('reads the same note twice alike', () => {
    fc.assert(
      fc.property(anyNote, salad, (note, text) => {
        expect(read({ ...note, text })).toEqual(read({ ...note, text }));
      }),
    );
  });

  it('says of every slot whether it was said or assumed', () => {
    fc.assert(
      fc.property(anyNote, salad, (note, text) => {
        for (const { entry, sources } of read({ ...note, text }).entries)
          for (const slot of Object.keys(entry).filter((each) => each !== 'kind'))
            expect(sources[slot]).toBeDefined();
      }),
    );
  });

  it('calls a variety said only where its letters stand in the note, known ones in any spelling', () => {
    fc.assert(
      fc.property(anyNote, salad, (note, text) => {
        const known = new Set([
          ...(note.context?.varieties ?? []).map(({ name }) => name.toLowerCase()),
          ...(note.context?.batches ?? [])
            .flatMap(({ variety, place }) => [variety ?? '', place ?? ''])
            .map((name) => name.toLowerCase()),
          ...(note.context?.places ?? []).map((place) => place.toLowerCase()),
        ]);
        const written = lettersOf(normalise(text));
        for (const { entry, sources } of read({ ...note, text }).entries) {
          const value = (entry as { variety?: string }).variety;
          if (sources['variety'] !== 'said' || typeof value !== 'string' || known.has(value.toLowerCase()))
            continue;
          expect(written).toContain(lettersOf(value));
        }
      }),
      { numRuns: 300 },
    );
  });

  it('takes an assumed plant only from what the ledger knows', () => {
    fc.assert(
      fc.property(anyNote, salad, (note, text) => {
        const labels = new Set((note.context?.batches ?? []).map(({ label }) => label));
        for (const { entry, sources } of read({ ...note, text }).entries)
          if (sources['batch'] === 'assumed')
            expect(labels.has((entry as { batch?: string }).batch ?? '')).toBe(true);
      }),
    );
  });
});
