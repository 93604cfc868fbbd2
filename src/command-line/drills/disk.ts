/** A disk that is full: what was acknowledged stays, what cannot be kept waits at the Bot API, and all is logged when there is room. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Grower } from '../fake-bot-api/grower.js';
import { type Drill, DrillFailed, mustHold } from './drill.js';
import { noteNumber } from './notes.js';
import { until } from './program.js';
import { RunningBot } from './running-bot.js';

export const disk: Drill = {
  name: 'disk',
  does: 'the disk fills up while notes come in: nothing acknowledged is lost, and the rest is logged when there is room again',
  async run() {
    const mount = mkdtempSync(join(tmpdir(), 'slipnote-disk-'));
    try {
      execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=3m', 'tmpfs', mount], { stdio: 'ignore' });
    } catch {
      rmSync(mount, { recursive: true });
      return 'skipped: a small disk can only be mounted by root';
    }
    const bot = await RunningBot.prepare();
    try {
      return await fillUp(bot, mount);
    } finally {
      await bot.end();
      execFileSync('umount', ['-l', mount]);
      rmSync(mount, { recursive: true });
    }
  },
};

async function fillUp(bot: RunningBot, mount: string): Promise<string> {
  const bea = new Grower(bot.fake, 7);
  const program = bot.start({ dataFolder: mount });
  bea.says(noteNumber(1));
  await until(() => bot.textsTo(7).length === 1, 15_000);
  const ballast = join(mount, 'ballast');
  fill(ballast);
  const firstAt = Math.floor(bot.fake.now() / 1000) - 100 * 61;
  for (let index = 0; index < 40; index++) bea.says(noteNumber(index), { date: firstAt + index * 61 });
  await until(
    () => /SQLITE_FULL|LedgerFault|not kept|update waits/.test(program.stderr),
    60_000,
    () => `the full disk went unnoticed: ${program.stderr.slice(-1000)}`,
  );
  mustHold(program.process.exitCode === null, () => `the program ended: ${program.stderr.slice(-1000)}`);
  rmSync(ballast);
  await until(
    () =>
      new Set(bot.rowsIn(mount, 'SELECT chat || message AS source FROM journal').map(({ source }) => source))
        .size === 41,
    120_000,
    () =>
      `${bot.rowsIn(mount, 'SELECT 1 FROM journal').length} of 41 notes in the ledger: ${program.stderr.slice(-1000)}`,
  );
  const lines = bot.rowsIn(mount, 'SELECT 1 FROM journal').length;
  mustHold(lines === 41, () => `${lines} lines for 41 notes`);
  return '41 notes, 40 of them with the disk full: each logged once when there was room again';
}

function fill(path: string): void {
  const blocks = [1 << 20, 1 << 16, 1 << 12];
  for (const size of blocks)
    for (let time = 0; time < 64; time++)
      try {
        writeFileSync(path, Buffer.alloc(size), { flag: 'a' });
      } catch (error) {
        if ((error as NodeJS.ErrnoException).code !== 'ENOSPC') throw new DrillFailed(String(error));
        break;
      }
}
