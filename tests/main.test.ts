/** Starting and stopping: what stops a start is one clear line and exit 1. */
import { chmodSync, writeFileSync } from 'node:fs';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { until } from '../src/command-line/drills/program.js';
import { faults } from '../src/command-line/fake-bot-api/fault.js';
import { Grower } from '../src/command-line/fake-bot-api/grower.js';
import { openDatabase } from '../src/ledger/database.js';
import { ledgerPathIn, openLedgerFile } from '../src/ledger/ledger-file.js';
import { schemaVersion } from '../src/ledger/migrations.js';
import { RunningBot } from '../src/command-line/drills/running-bot.js';

let bot: RunningBot;
beforeEach(async () => {
  bot = await RunningBot.prepare();
});
afterEach(() => bot.end());

/** What is said on standard error by a start that comes to nothing. */
async function failedStart(environment: Record<string, string> = {}): Promise<string[]> {
  const program = bot.start({ environment });
  expect(await program.ended).toBe(1);
  return program.stderr.trim().split('\n');
}

describe('a start', () => {
  it('with a token that the Bot API refuses ends with one line that does not hold it', async () => {
    const token = '4711000002:BBwrongwrongwrongwrongwrongwrongwrongw';
    const lines = await failedStart({ BOT_TOKEN: token });
    expect(lines).toEqual([expect.stringMatching(/^BOT_TOKEN is refused by the Bot API .* BotFather/)]);
    expect(lines[0]).not.toContain('BBwrong');
  });

  it('on a ledger that another process writes ends with one line', async () => {
    const ledger = openLedgerFile(bot.dataFolder);
    expect(await failedStart()).toEqual([expect.stringMatching(/is being written by another slipnote/)]);
    ledger.close();
  });

  it('on a ledger of a newer version ends with one line and leaves it alone', async () => {
    openLedgerFile(bot.dataFolder).close();
    const database = openDatabase(ledgerPathIn(bot.dataFolder));
    database.script(`PRAGMA user_version = ${schemaVersion + 1}`);
    database.close();
    expect(await failedStart()).toEqual([expect.stringMatching(/newer slipnote .* update slipnote/)]);
  });

  it('without the right to write ends with one line', async () => {
    const file = `${bot.dataFolder}/file`;
    writeFileSync(file, '');
    expect(await failedStart({ SLIPNOTE_DATA: `${file}/inner` })).toEqual([
      expect.stringMatching(/set SLIPNOTE_DATA to one that this user may write to/),
    ]);
  });

  it.skipIf(process.getuid?.() === 0)('in a folder of someone else ends with one line', async () => {
    chmodSync(bot.dataFolder, 0o500);
    expect(await failedStart()).toEqual([expect.stringMatching(/SLIPNOTE_DATA|right to write/)]);
    chmodSync(bot.dataFolder, 0o700);
  });

  it('on a ledger that was overwritten ends with one line that says what to do', async () => {
    writeFileSync(ledgerPathIn(bot.dataFolder), 'a shopping list, nothing more. '.repeat(200));
    expect(await failedStart()).toEqual([expect.stringMatching(/damaged|no ledger/)]);
  });

  it('with settings that make no sense ends with a line for each', async () => {
    expect(await failedStart({ LOG_LEVEL: 'loud', SLIPNOTE_ZONE: 'Mars' })).toEqual([
      expect.stringMatching(/^SLIPNOTE_ZONE is "Mars"/),
      expect.stringMatching(/^LOG_LEVEL is "loud"/),
    ]);
  });

  it('waits for a Bot API that cannot be reached, and can be stopped meanwhile', async () => {
    bot.fake.faultPlan = () => faults.broken;
    const program = bot.start();
    await until(() => program.stderr.includes('Bot API not reached'), 15_000);
    expect(await program.kill('SIGTERM')).toBe(0);
  });

  it('sets the list of commands', async () => {
    bot.start();
    await until(() => bot.fake.commands.length > 0, 15_000);
    expect(bot.fake.commands.map(({ command }) => command)).toContain('due');
  });
});

describe('the log of a bot at work', () => {
  it('holds neither notes nor the token, not even after a crash', async () => {
    const bea = new Grower(bot.fake, 7);
    const program = bot.start({ environment: { LOG_LEVEL: 'debug' } });
    bea.says('took 3 basal cuttings of Copper Lantern dahlia in one pot');
    bea.sends({ text: ['Copper Lantern'] as never });
    await until(() => program.stderr.includes('set aside'), 15_000);
    await sleep(300);
    await program.kill('SIGTERM');
    const said = program.stderr + program.stdout;
    expect(said).not.toMatch(/Copper Lantern/i);
    expect(said).not.toContain('AAfake');
    for (const line of program.stderr.trim().split('\n'))
      expect(() => JSON.parse(line) as unknown).not.toThrow();
  });
});
