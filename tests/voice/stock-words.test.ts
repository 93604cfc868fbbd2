/** Which words the stock language model knows, read from its binary file, beside what the library that made it prints. */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { debianStockFolder, stockFiles } from '../../src/voice/model-folder.js';
import { wordsOfModel } from '../../src/voice/stock-words.js';
import { describeWith } from './installed.js';

describeWith(['pocketsphinx pocketsphinx-en-us'], 'the stock language model', () => {
  it('gives the words said most, and knows far more', () => {
    const bytes = readFileSync(stockFiles(debianStockFolder).languageModel);
    const few = wordsOfModel(bytes, 40);
    expect(few.size).toBe(40);
    for (const word of ['the', 'to', 'i', 'and', 'of']) expect(few).toContain(word);
    const all = wordsOfModel(bytes);
    expect(all.size).toBeGreaterThan(70_000);
    expect([...wordsOfModel(bytes, 20_000)].filter((word) => !all.has(word))).toEqual([]);
  });
});

const hasConverter = spawnSync('sphinx_lm_convert', [], { stdio: 'ignore' }).error === undefined;

describe.skipIf(!hasConverter)('a model that sphinx_lm_convert (Debian sphinxbase-utils) wrote', () => {
  it('gives its words in the order of the probabilities that it was made with', () => {
    const folder = mkdtempSync(join(tmpdir(), 'slipnote-stock-words-'));
    try {
      const probabilities = { slip: -0.5, cutting: -0.7, heel: -1.2, node: -1.9 };
      const ones = Object.entries(probabilities).map(([word, p]) => `${p} ${word} 0`);
      const arpa = [
        '\\data\\', 'ngram 1=6', 'ngram 2=2', 'ngram 3=1', '', '\\1-grams:', '-99 <s> 0', '-1.5 </s>', ...ones, '',
        '\\2-grams:', '-0.1 <s> slip 0', '-0.2 slip heel 0', '', '\\3-grams:', '-0.1 <s> slip heel', '', '\\end\\', '',
      ].join('\n'); // prettier-ignore
      const [text, binary] = [join(folder, 'small.lm'), join(folder, 'small.lm.bin')];
      writeFileSync(text, arpa);
      execFileSync('sphinx_lm_convert', ['-i', text, '-o', binary], { stdio: 'ignore' });
      const bytes = readFileSync(binary);
      expect([...wordsOfModel(bytes, 3)]).toEqual(['slip', 'cutting', 'heel']);
      expect(wordsOfModel(bytes).size).toBe(6);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
