/** Holds the design's table of who may import whom, and which file alone knows an outside package. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../src');

const everything = ['*'];
const mayImport: Record<string, readonly string[]> = {
  main: everything,
  program: everything,
  errands: everything,
  'errands-asked': everything,
  'notes-heard': everything,
  'command-line': everything,
  channels: ['conversation', 'post', 'voice', 'words'],
  conversation: ['language', 'outlook', 'ledger', 'horticulture', 'words', 'calendar'],
  pictures: ['outlook', 'ledger', 'horticulture', 'words', 'calendar'],
  papers: ['conversation', 'pictures', 'exchange', 'outlook', 'ledger', 'horticulture', 'words', 'calendar'],
  exchange: ['outlook', 'ledger', 'horticulture', 'words', 'calendar'],
  words: ['outlook', 'language', 'ledger', 'horticulture', 'calendar'],
  post: ['ledger', 'horticulture', 'calendar'],
  language: ['ledger', 'horticulture', 'calendar'],
  outlook: ['ledger', 'horticulture', 'calendar'],
  ledger: ['horticulture', 'calendar'],
  horticulture: ['calendar'],
  settings: ['calendar'],
  calendar: [],
  voice: [],
  log: [],
};

/** Outside packages that only one file may import, seen through a narrow view of its own. */
const onlyImporter: Record<string, string> = {
  luxon: 'calendar/zone.ts',
  'better-sqlite3': 'ledger/database.ts',
  'better-sqlite3-node20': 'ledger/database.ts',
  'chrono-node': 'language/dates.ts',
  'date-holidays': 'calendar/holidays.ts',
  grammy: 'channels/telegram.ts',
  'word-list': 'language/row/english.ts',
  '@photostructure/tz-lookup': 'calendar/zone-map.ts',
  'csv-parse/sync': 'exchange/csv-rows.ts',
  '@stdlib/stats-base-dists-normal-cdf': 'horticulture/normal.ts',
  '@stdlib/stats-base-dists-normal-quantile': 'horticulture/normal.ts',
  '@stdlib/stats-base-dists-t-quantile': 'horticulture/student-t.ts',
  '@stdlib/math-base-special-betaln': 'horticulture/beta.ts',
  'ogg-opus-decoder': 'voice/opus.ts',
  koffi: 'voice/native-library.ts',
};

const importPattern = /(?:from|import|require) ?\(?'([^']+)'/g;

interface Import {
  readonly file: string;
  readonly target: string;
}

function sourceFiles(): string[] {
  return readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'));
}

function importsOf(file: string): Import[] {
  const text = readFileSync(join(root, file), 'utf8');
  return [...text.matchAll(importPattern)].map((match) => ({ file, target: match[1] ?? '' }));
}

function partOf(file: string): string {
  return file.split(/[\\/]/)[0]?.replace(/\.ts$/, '') ?? '';
}

const imports = sourceFiles().flatMap(importsOf);

describe('architecture', () => {
  it('keeps every import inside the table of arrows', () => {
    const strays = imports
      .filter(({ target }) => target.startsWith('.'))
      .map(({ file, target }) => ({ file, to: relative(root, resolve(root, dirname(file), target)) }))
      .filter(({ file, to }) => {
        const from = partOf(file);
        const part = partOf(to.replace(/\.js$/, '.ts'));
        const allowed = mayImport[from] ?? [];
        return part !== from && part !== 'log' && !allowed.includes('*') && !allowed.includes(part);
      })
      .map(({ file, to }) => `${file} → ${to}`);
    expect(strays).toEqual([]);
  });

  it('knows every part by name', () => {
    expect([...new Set(sourceFiles().map(partOf))].filter((part) => !(part in mayImport))).toEqual([]);
  });

  it('opens every file with a line that says what it is for', () => {
    const silent = sourceFiles().filter((file) => !readFileSync(join(root, file), 'utf8').startsWith('/**'));
    expect(silent).toEqual([]);
  });

  it('lets one file alone import each outside package that it fences', () => {
    const strays = imports
      .filter(({ file }) => !file.startsWith('command-line/bench'))
      .filter(({ file, target }) => target in onlyImporter && onlyImporter[target] !== file)
      .map(({ file, target }) => `${file} imports ${target}`);
    expect(strays).toEqual([]);
  });
});
