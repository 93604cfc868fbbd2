/** A grower who asks to be erased, in the built program. */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../..');
let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'slipnote-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function chat(...notes: string[]): string {
  const env = { ...process.env, SLIPNOTE_DATA: folder, BOT_TOKEN: '', SLIPNOTE_SPEECH: 'off' };
  return execFileSync('node', ['dist/main.js'], {
    cwd: root,
    env,
    input: `${notes.join('\n')}\n`,
    encoding: 'utf8',
  });
}

function filesThatHold(words: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => {
    const path = join(folder, name);
    return statSync(path).isFile() && readFileSync(path).includes(words);
  });
}

describe('asking to be erased', () => {
  it('offers the ledger first, takes no bare yes for it, and leaves no word behind', () => {
    expect(chat('took 6 Crooked Chimney dahlia', 'erase me', 'yes')).toMatch(/Take it along first/);
    expect(filesThatHold('Crooked Chimney')).toContain('ledger.sqlite');
    expect(chat('take it along first')).toMatch(/papers\/ledger\.json/);
    expect(chat('erase everything')).toMatch(/Erased: 1 ledger with 1 line/);
    expect(filesThatHold('Crooked Chimney')).toEqual(['papers/ledger.json']);
    expect(existsSync(join(folder, 'erasures.jsonl'))).toBe(true);
    expect(chat('took 2 Marble Wren dahlia', 'how many have I got?')).toMatch(/MW1: 2 cuttings/);
  });

  it('keeps everything on a no', () => {
    expect(chat('took 6 Crooked Chimney dahlia', 'erase me', 'keep it', 'how many Crooked Chimney?')).toMatch(
      /\b6\b/,
    );
  });
});
