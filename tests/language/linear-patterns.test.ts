/** Patterns built of lists as the files load are held to what the linter asks of those written out: none backtracks beyond linear time. */
import { Linter } from 'eslint';
import regexp from 'eslint-plugin-regexp';
import { expect, it } from 'vitest';

/** Every pattern that is built while the reader loads. */
async function built(): Promise<readonly RegExp[]> {
  const found: RegExp[] = [];
  const Plain = globalThis.RegExp;
  globalThis.RegExp = new Proxy(Plain, {
    construct(target, parts: [string, string?]) {
      const pattern = new target(...parts);
      found.push(pattern);
      return pattern;
    },
  });
  try {
    await import('../../src/language/read.js');
  } finally {
    globalThis.RegExp = Plain;
  }
  return found;
}

it('no pattern built of lists backtracks', { timeout: 120_000 }, async () => {
  const patterns = [...new Set((await built()).map(String))];
  expect(patterns.length).toBeGreaterThan(100);
  const faults = new Linter().verify(patterns.map((pattern) => `${pattern}.test('');`).join('\n'), [
    {
      plugins: { regexp },
      rules: {
        'regexp/no-super-linear-backtracking': ['error', { report: 'certain' }],
        'regexp/no-super-linear-move': ['error', { report: 'certain' }],
      },
    },
  ]);
  expect(faults.map(({ line, message }) => `${patterns[line - 1]}: ${message}`)).toEqual([]);
});
