/** A spoken note through the whole program: in the terminal, a path to a sound file is a voice note. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { describeWith } from './installed.js';

let dataFolder = '';
beforeEach(() => (dataFolder = mkdtempSync(join(tmpdir(), 'slipnote-terminal-'))));
afterEach(() => rmSync(dataFolder, { recursive: true, force: true }));

function type(lines: readonly string[], speech: string): string {
  const { stdout } = spawnSync('node', ['dist/main.js'], {
    input: `${lines.join('\n')}\n`,
    encoding: 'utf8',
    env: { ...process.env, BOT_TOKEN: '', SLIPNOTE_DATA: dataFolder, SLIPNOTE_SPEECH: speech },
  });
  return stdout;
}

const struck = 'took 4 cuttings of Bicycle Thief dahlia';
const spoken = 'fixtures/voice/bicycle-thief.ogg';

describeWith(['pocketsphinx pocketsphinx-en-us'], 'a sound file in the terminal', () => {
  it('is shown as heard, and noted on a yes', () => {
    const said = type([struck, spoken, 'yes'], 'pocketsphinx');
    expect(said).toMatch(/I heard: .*bicycle thief into .*inch pots/);
    expect(said.split('I heard')[1]).toMatch(/BT1.*potted on/i);
  }, 120_000);
});

describe('without a speech engine', () => {
  it('says why it cannot hear, and the rest goes on', () => {
    const said = type([spoken, 'package.ogg', struck], 'off');
    expect(said).toContain('no speech engine');
    expect(said).toContain('Bicycle Thief');
  }, 60_000);
});
