/** The documents say what the code does. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { commands } from '../src/command-line/commands.js';
import { commandTable, settingsTable } from '../src/command-line/help.js';

const root = resolve(import.meta.dirname, '..');
const read = (name: string) => readFileSync(resolve(root, name), 'utf8');
const readme = read('README.md');
const developers = read('DEVELOPERS.md');
const scripts = Object.keys(
  (JSON.parse(read('package.json')) as { scripts: Record<string, string> }).scripts,
);

/** What stands between a pair of marks in README. */
function between(mark: string): string | undefined {
  return readme.split(`<!-- ${mark} -->`)[1]?.split(`<!-- /${mark} -->`)[0]?.trim();
}

describe('the documents', () => {
  it('README shows the commands and settings of the code (npm run -s help -- --markdown)', () => {
    expect(between('commands')).toBe(commandTable());
    expect(between('settings')).toBe(settingsTable());
  });

  it('every command can be started by its name, and every start names a command', () => {
    const own = ['prepare', 'build', 'start', 'test', 'check', 'format', 'corpus'];
    expect(scripts.filter((name) => !own.includes(name)).sort()).toEqual(
      commands.map(({ name }) => name).sort(),
    );
  });

  it('README begins with the job and the two commands', () => {
    const [title, job, setUp] = readme.split('\n\n');
    expect(title).toBe('# slipnote');
    expect(job).toMatch(/cuttings/);
    expect(setUp).toMatch(/npm ci && npm start[\s\S]*npm ci && npm test/);
  });

  it('names the Debian packages for voice that the tests install', () => {
    const install = /`apt-get install (pocketsphinx[^`]*)`/.exec(readme)?.[1]?.split(' ') ?? [];
    expect(install.length).toBeGreaterThan(1);
    for (const name of install) expect(read('.ci/run')).toContain(name);
  });

  it('DEVELOPERS.md names only files that are there', () => {
    const named = [...developers.matchAll(/`((?:src|tests|fixtures|shared)\/[\w./-]+)`/g)].map(
      (match) => match[1] ?? '',
    );
    expect(named.length).toBeGreaterThan(10);
    expect(named.filter((path) => !existsSync(resolve(root, path)))).toEqual([]);
  });

  it('DEVELOPERS.md tells of every folder of the language and of the conversation', () => {
    const folders = (part: string) =>
      readdirSync(resolve(root, 'src', part), { withFileTypes: true }).filter((each) => each.isDirectory());
    const untold = ['language', 'conversation']
      .flatMap(folders)
      .filter(({ name }) => !developers.includes(`${name}/`));
    expect(untold.map(({ name }) => name)).toEqual([]);
  });

  it('nothing in the repository leans on a folder beside it', () => {
    for (const text of [readme, developers, read('package.json'), read('.ci/run')])
      expect(text).not.toContain('../shared');
  });
});
