/** The token and what growers write are in the ledger file alone: in no log, error or crash output, and in no file beside it. */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { until } from '../../src/command-line/drills/program.js';
import { RunningBot } from '../../src/command-line/drills/running-bot.js';
import { faults, inTurn } from '../../src/command-line/fake-bot-api/fault.js';
import { fakeToken } from '../../src/command-line/fake-bot-api/fake-bot-api.js';
import { Grower } from '../../src/command-line/fake-bot-api/grower.js';

/** In no word list, so that wherever it is found it came from the note. */
const planted = 'Zyxquill';
const note = `took 3 tip cuttings of ${planted} dahlia in one pot`;
const secretOfToken = fakeToken.split(':')[1] ?? '';

let bot: RunningBot;
beforeEach(async () => {
  bot = await RunningBot.prepare();
});
afterEach(() => bot.end());

/** All that a process wrote, and every file of its folder that is no ledger. */
function told(): string {
  const files = readdirSync(bot.dataFolder, { recursive: true, encoding: 'utf8' })
    .filter((name) => !/ledger.*\.sqlite(?:-wal|-shm)?$/.test(name))
    .map((name) => join(bot.dataFolder, name))
    .filter((path) => statSync(path).isFile())
    .map((path) => `${path}\n${readFileSync(path, 'latin1')}`);
  return [...bot.programs.flatMap(({ stdout, stderr }) => [stdout, stderr]), ...files].join('\n');
}

function expectNoSecrets(): void {
  const all = told();
  expect(all).not.toContain(secretOfToken);
  expect(all.toLowerCase()).not.toContain(planted.toLowerCase());
}

describe('neither token nor note is told', () => {
  it('where the Bot API refuses, breaks, cuts and talks rubbish, and an update throws', async () => {
    const bea = new Grower(bot.fake, 7);
    const plan = [
      inTurn('getUpdates', faults.unauthorized),
      inTurn('getUpdates', faults.broken, faults.cut, faults.rubbish),
      inTurn('sendMessage', faults.broken, faults.cut, faults.rubbish, faults.blocked),
    ];
    // A poll that is refused for its token waits a minute: it comes last.
    bot.fake.faultPlan = (method, args) =>
      plan
        .slice(1)
        .map((each) => each(method, args))
        .find(Boolean);
    const program = bot.start({ environment: { LOG_LEVEL: 'debug' } });
    bea.says(note);
    bea.sends({ text: { [planted]: planted } as never });
    bea.brings({ message: { chat: planted, text: note } });
    bea.taps(1, planted);
    await until(
      () => bot.count('SELECT 1 FROM inbox WHERE fault IS NOT NULL') >= 1 && bot.linesByMessage().size === 1,
      20_000,
      () => program.stderr,
    );
    await until(() => /letter not sent|chat takes no messages/.test(program.stderr), 15_000);
    bot.fake.faultPlan = plan[0] ?? bot.fake.faultPlan;
    bea.says(`${note} again`);
    await until(
      () => program.stderr.includes('badToken'),
      15_000,
      () => program.stderr.slice(-500),
    );
    expect(program.stderr).toContain('poll failed');
    expect(program.stderr).toContain('update set aside');
    expectNoSecrets();
  });

  it('where nothing answers at the address, and where the token is refused at the start', async () => {
    const alone = bot.start({ environment: { BOT_API_ROOT: 'http://127.0.0.1:9', LOG_LEVEL: 'debug' } });
    await until(() => alone.stderr.includes('Bot API not reached'), 15_000);
    await alone.kill('SIGTERM');
    bot.fake.faultPlan = inTurn('getMe', faults.unauthorized);
    const refused = bot.start();
    expect(await refused.ended).toBe(1);
    expect(refused.stderr).toMatch(/BOT_TOKEN is refused/);
    expectNoSecrets();
  });

  it('where the process crashes of a fault whose message holds both', async () => {
    const preload =
      'setTimeout(() => { throw new Error(process.env.PLANTED + process.env.BOT_TOKEN) }, 1500)';
    const program = bot.start({
      environment: { PLANTED: note },
      nodeArguments: ['--import', `data:text/javascript,${encodeURIComponent(preload)}`],
    });
    expect(await program.ended).toBe(1);
    expect(program.stderr).toContain('"crashed"');
    expectNoSecrets();
  });
});
