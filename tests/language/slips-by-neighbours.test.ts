/** Holds the mending of slips by the words beside them to what it may change: words that are none, and no names. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { findNames } from '../../src/language/row/names.js';
import type { NoteContext } from '../../src/language/note.js';
import { normalise } from '../../src/language/row/normalise.js';
import { read } from '../../src/language/read.js';
import { mendedByNeighbours } from '../../src/language/row/spelling/by-neighbours.js';
import { likelierByNeighbours } from '../../src/language/row/spelling/written-for.js';
import { learnNeighbours, likelihood } from '../../src/language/row/spelling/neighbours.js';
import { writtenNeighbours } from '../../src/language/row/spelling/learnt-neighbours.js';
import { aSlipAway } from '../../src/language/row/spelling/slips.js';
import { rowOf } from '../../src/language/row/spoken-marks.js';

const context: NoteContext = {
  varieties: [
    { name: 'Salt Harrier', crop: 'pelargonium' },
    { name: 'Tallow Bell', crop: 'fuchsia' },
  ],
  batches: [
    { label: 'SH1', variety: 'Salt Harrier', crop: 'pelargonium', count: 14 },
    { label: 'TB1', variety: 'Tallow Bell', crop: 'fuchsia', count: 8 },
  ],
  places: ['porch', 'greenhouse'],
};
const entriesOf = (text: string) =>
  read({ text, now: Date.parse('2026-05-12T10:00:00Z'), zone: 'Europe/London', context }).entries.map(
    ({ entry }) => entry,
  );

/** The words of a text as they are meant. */
function mended(text: string, known: NoteContext = {}): string {
  const tokens = rowOf(normalise(text), known);
  const names = findNames(tokens, known);
  return mendedByNeighbours(tokens, (at) => names.some(({ from, to }) => from <= at && at < to))
    .map(({ text }) => text)
    .join(' ');
}

describe('a slip of the pen', () => {
  it.each([
    ['lost thee of the Tallow Bell', { kind: 'loss', count: 3 }],
    ['hosef down the Salt Harrier', { kind: 'tend', care: 'water' }],
    ['three Tallow Bell tubs binnned, the stems rottedd', { kind: 'loss', count: 3, cause: 'rot' }],
    ['moved the Salt Harrier out to thr greenhouse', { kind: 'move', place: 'greenhouse' }],
    ['fungus gants ate two of the Tallow Bell', { kind: 'loss', count: 2, cause: 'pest' }],
    ['planted otu the Salt Harrier', { kind: 'plantOut' }],
    ['gave two Tallow Bell to my sitser', { kind: 'dispatch', to: 'sister' }],
    ['gave two Tallow Bell to breda', { kind: 'dispatch', to: 'breda' }],
    ['planted three Salt Harrier by the letetrbox', { kind: 'plantOut', place: 'letterbox' }],
    ['lost 3 Salt Harrier and countd 4 Tallow Bell', { kind: 'loss', count: 3 }],
  ])('“%s” is read as it was meant', (text, entry) => {
    expect(entriesOf(text)).toEqual([expect.objectContaining(entry)]);
  });

  it.each([
    ['took six cuttings of nesh norah', 'took six cuttings of nesh norah'],
    ['gave two to jas', 'gave two to jas'],
    ['Took four from Trude', 'took four from trude'],
    ['the rest have roted', 'the rest have roted'],
  ])('a name stays, and what may be either of two: “%s”', (text, kept) => {
    expect(mended(text)).toBe(kept);
  });

  it('a row of such words is no talk of ours', () => {
    const row = 'wrte thd oter '.repeat(8).trim();
    expect(mended(row)).toBe(mended(row));
    expect(mended(row)).toContain('thd');
  });
});

describe('slips put into the half of the corpus that nothing is learnt from', () => {
  const folder = join(import.meta.dirname, '../../fixtures/notes/unseen');
  const notes = readdirSync(folder).flatMap((file) =>
    readFileSync(join(folder, file), 'utf8')
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line) as { text: string; context?: NoteContext }),
  );
  /** One letter of a word left out, or doubled; which one the word tells. */
  const slips = (word: string): readonly string[] => {
    const at = 1 + (word.charCodeAt(1) % (word.length - 2));
    return [word.slice(0, at) + word.slice(at + 1), word.slice(0, at) + word.slice(at - 1)];
  };

  it('are mended in most words, and hardly ever to another; words rightly written stay', () => {
    const count = { right: 0, other: 0, left: 0, changed: 0, clean: 0 };
    for (const { text, context = {} } of notes) {
      const tokens = rowOf(normalise(text), context);
      const names = findNames(tokens, context);
      const isName = (at: number): boolean => names.some(({ from, to }) => from <= at && at < to);
      mendedByNeighbours(tokens, isName).forEach(({ text }, at) => {
        const was = tokens[at]?.text;
        count.clean++;
        if (text !== was && was === tokens[at]?.raw.toLowerCase()) count.changed++;
      });
      tokens.forEach((token, at) => {
        if (token.is !== 'word' || isName(at) || !/^[a-z]{5,}$/.test(token.raw) || token.raw !== token.text)
          return;
        for (const slip of slips(token.raw)) {
          const row = rowOf(normalise(text.replace(token.raw, slip)), context);
          if (row.length !== tokens.length || row[at]?.raw !== slip) continue;
          const meant = mendedByNeighbours(row, isName)[at]?.text;
          count[meant === token.text ? 'right' : meant === slip ? 'left' : 'other']++;
        }
      });
    }
    const all = count.right + count.other + count.left;
    expect(all).toBeGreaterThan(1000);
    expect(count.right / all).toBeGreaterThan(0.8);
    expect(count.other / all).toBeLessThan(0.02);
    expect(count.changed / count.clean).toBeLessThan(0.001);
  });
});

describe('a word that is written for another', () => {
  const meant = (text: string): string =>
    likelierByNeighbours(rowOf(normalise(text), {}), () => false)
      .map(({ text }) => text)
      .join(' ');

  it.each([
    ['took won of the cuttings', 'took one of the cuttings'],
    ['lost too of the dahlias', 'lost two of the dahlias'],
    ['84 sell trays of them', '84 cell trays of them'],
    ['no routes yet', 'no roots yet'],
  ])('“%s” is “%s”', (text, right) => {
    expect(meant(text)).toBe(right);
  });

  it.each([
    'moved them to the porch',
    'it was too hot for them',
    'sold two for a pound',
    'slugs ate the rest',
    'free to a good home',
    'the old tin bath',
    'gave four to gran',
    'they heal in a day',
    'undo that too',
  ])('“%s” stays', (text) => {
    expect(meant(text)).toBe(text);
  });
});

describe('neighbours', () => {
  const rows = ['took # § cuttings', 'took # § tips', 'lost # § cuttings', 'took # of the §'].map((row) =>
    row.split(' '),
  );

  it('make a word likelier between those it was seen between', () => {
    const known = learnNeighbours(rows);
    expect(likelihood(known, '§', 'cuttings', '$')).toBeGreaterThan(likelihood(known, '§', 'took', '$'));
  });

  it('are written a word a line, the same each time', () => {
    const text = writtenNeighbours(learnNeighbours(rows));
    expect(JSON.parse(text)).toMatchObject({ took: '# 3', '#': '? § 3', '§': '$ ? cuttings 2' });
    expect(writtenNeighbours(learnNeighbours(rows))).toBe(text);
  });
});

describe('a word', () => {
  it('is one slip from what lacks, repeats, swaps or mistakes a letter', () => {
    const near = aSlipAway('root');
    expect(near).toEqual(expect.arrayContaining(['rot', 'rooot', 'roto', 'foot', 'oot', 'roots']));
    expect(near).not.toContain('root');
    expect(near).not.toContain('rooted');
  });
});
