/** Commands that write files, run as a user would: the built program as a process. */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../..');
let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'slipnote-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function environment(data: string): NodeJS.ProcessEnv {
  return { ...process.env, SLIPNOTE_DATA: join(folder, data), BOT_TOKEN: '', SLIPNOTE_SPEECH: 'off' };
}

function chat(data: string, notes: string): string {
  return execFileSync('node', ['dist/main.js'], {
    cwd: root,
    env: environment(data),
    input: notes,
    encoding: 'utf8',
  });
}

function run(data: string, ...args: string[]) {
  return spawnSync('node', ['dist/command-line/run.js', ...args], {
    cwd: root,
    env: environment(data),
    encoding: 'utf8',
  });
}

const notes = 'took 6 basal cuttings of Copper Lantern dahlia in two pots, propagator\nlost one to rot\n';

describe('the commands that write files', () => {
  it('carry a ledger whole from one folder to another as JSON', () => {
    chat('here', notes);
    expect(run('here', 'export', '--format', 'json', '--out', join(folder, 'a.json')).status).toBe(0);
    const taken = run('there', 'import', join(folder, 'a.json'));
    expect(taken.stdout).toMatch(/2 lines to add[\s\S]*Taken in: 2 lines/);
    run('there', 'export', '--format', 'json', '--out', join(folder, 'b.json'));
    const journal = (name: string) =>
      (JSON.parse(readFileSync(join(folder, name), 'utf8')) as { journal: unknown }).journal;
    expect(journal('b.json')).toEqual(journal('a.json'));
    expect(chat('there', 'how many Copper Lantern?\n')).toMatch(/\b5\b/);
    expect(run('there', 'import', join(folder, 'a.json')).stdout).toMatch(/0 lines to add, 2 here already/);
  });

  it('copy and restore it', () => {
    chat('here', notes);
    const copy = join(folder, 'copy.sqlite');
    expect(run('here', 'backup', copy).status).toBe(0);
    expect(run('there', 'restore', copy).stdout).toMatch(/Restored 2 lines/);
    chat('here', 'lost another one\n');
    const refused = run('here', 'restore', copy);
    expect([refused.status, refused.stderr.split('\n').length]).toEqual([1, 2]);
    expect(refused.stderr).toMatch(/--over-newer/);
  });

  it('draw what the ledger holds', () => {
    chat('here', notes);
    for (const what of ['season', 'review', 'rooting']) {
      const out = join(folder, `${what}.png`);
      expect(run('here', 'draw', what, out).status).toBe(0);
      expect(readFileSync(out).subarray(1, 4).toString()).toBe('PNG');
    }
    const sheet = join(folder, 'labels.pdf');
    expect(run('here', 'draw', 'labels', sheet).status).toBe(0);
    expect(readFileSync(sheet).subarray(0, 5).toString()).toBe('%PDF-');
  });

  it.each([
    [['draw', 'moon', 'OUT'], 2, /can't be drawn/],
    [['export', '--format', 'xls', '--out', 'OUT'], 2, /csv, ics or json/],
    [['import', 'no-such-file'], 1, /There is no file/],
    [['backup'], 2, /Name the file/],
    [['draw', 'labels', 'OUT', '--size', '3x3'], 2, /--size is one of/],
  ])('say in one line what is wrong with %j', (args, status, words) => {
    chat('here', notes);
    const answer = run('here', ...args);
    expect([answer.status, answer.stderr.trim().split('\n').length]).toEqual([status, 1]);
    expect(answer.stderr).toMatch(words);
  });

  it('refuse a file that is no ledger, and say what would do', () => {
    writeFileSync(join(folder, 'x.json'), '{"hello":1}');
    expect(run('here', 'import', join(folder, 'x.json')).stdout).toMatch(/no ledger of mine/);
  });

  it('say without a ledger how to begin one', () => {
    expect(run('empty', 'draw', 'season', join(folder, 'x.png')).stderr).toMatch(/npm start/);
  });
});
