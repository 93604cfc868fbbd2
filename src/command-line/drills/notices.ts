/** A morning of a thousand notices, killed while they go out: none lost, doubles no more than sendings in flight, and harmless. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { Grower } from '../fake-bot-api/grower.js';
import { type Drill, mustHold, scaled, withBot } from './drill.js';
import { until } from './program.js';
import type { RunningBot } from './running-bot.js';
import { shiftedClock } from './shifted-clock.js';

const KILLS = 5;
/** Sendings that can be in flight at a kill. */
const IN_FLIGHT = 3;
const DAY_SECONDS = 86_400;
/** A morning of spring in London, before and after the hour of the day's notices. */
const BEFORE_MS = Date.UTC(2027, 3, 10, 6, 30);
const AFTER_MS = Date.UTC(2027, 3, 10, 9, 0);

export const notices: Drill = {
  name: 'notices',
  does: '1,000 growers are due a notice, 5 kills while they go out: none lost, at most a double for each sending in flight',
  run: (scale) =>
    withBot(async (bot) => {
      const growers = Array.from(
        { length: scaled(1_000, scale, 60) },
        (_, index) => new Grower(bot.fake, 10_000 + index),
      );
      const file = join(bot.dataFolder, 'shift');
      const setClock = (at: number) => writeFileSync(file, String(at - bot.fake.now()));
      const start = () => bot.start({ nodeArguments: shiftedClock(file) });
      // Noted before the day's notices are due, whose hour has come by the next start. Nobody sleeps in this drill.
      setClock(BEFORE_MS);
      const first = start();
      const longAgo = BEFORE_MS / 1000 - 28 * DAY_SECONDS;
      for (const grower of growers) grower.says('quiet from 00:01 to 00:02', { date: longAgo });
      for (const grower of growers)
        grower.says('took 6 tip cuttings of Ember Fox dahlia in one pot', { date: longAgo + 600 });
      await until(
        () =>
          bot.linesByMessage().size === growers.length &&
          bot.count('SELECT 1 FROM outbox WHERE settled_at IS NULL') === 0,
        300_000,
        () => `${bot.linesByMessage().size} notes in the ledger: ${first.stderr.slice(-1500)}`,
      );
      await first.kill();
      setClock(AFTER_MS);
      for (let kill = 0; kill < KILLS; kill++) {
        const program = start();
        const before = bot.fake.sent.length;
        await until(() => bot.fake.sent.length > before, 30_000);
        await sleep(300 + kill * 90);
        await program.kill();
      }
      const last = start();
      await until(
        () => growers.every(({ chat }) => prompted(bot, chat)),
        300_000,
        () => last.stderr.slice(-1500),
      );
      await until(() => bot.count('SELECT 1 FROM outbox WHERE settled_at IS NULL') === 0, 300_000);
      const unheard = growers.filter(({ chat }) => !prompted(bot, chat));
      mustHold(unheard.length === 0, () => `${unheard.length} growers heard nothing`);
      const marked = bot.count("SELECT 1 FROM outbox WHERE outcome = 'sent'");
      const doubles = bot.fake.sent.length - marked;
      mustHold(doubles >= 0 && doubles <= (KILLS + 1) * IN_FLIGHT, () => `${doubles} doubles`);
      await tapTwice(bot, growers[0]);
      mustHold(last.process.exitCode === null, () => 'the program ended');
      return `${growers.length} notices, ${KILLS} kills: 0 lost, ${doubles} sent again in doubt; a button tapped twice counts once`;
    }),
};

/** The message that asks a grower to look, as it was sent last. */
function prompted(bot: RunningBot, chat: number) {
  return bot.fake.sent.findLast(
    (sent) => sent.chat === chat && sent.buttons.some(({ data }) => data.startsWith('prompt')),
  );
}

/** Both copies of a doubled notice carry the same occasion: a tap on each settles it once. */
async function tapTwice(bot: RunningBot, grower: Grower | undefined): Promise<void> {
  const notice = grower && prompted(bot, grower.chat);
  const all = notice?.buttons.find(({ label }) => /all/i.test(label));
  mustHold(Boolean(all), () => `no button to tap on: ${JSON.stringify(notice)}`);
  if (!grower || !notice || !all) return;
  const lines = () =>
    bot.count(
      'SELECT 1 FROM journal WHERE ledger = (SELECT ledger FROM chats WHERE id = ?)',
      `telegram:${grower.chat}`,
    );
  const before = lines();
  grower.taps(notice.message, all.data);
  grower.taps(notice.message + 500_000, all.data);
  await until(
    () =>
      bot.count('SELECT 1 FROM inbox WHERE settled_at IS NULL') === 0 &&
      bot.fake.queue.length === 0 &&
      lines() > before,
    20_000,
    () => 'the tap came to nothing',
  );
  await sleep(500);
  mustHold(lines() === before + 1, () => `${lines() - before} lines for a button tapped twice`);
}
