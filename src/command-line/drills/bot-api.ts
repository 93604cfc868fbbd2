/** A Bot API that is down, slow, talks rubbish, conflicts and storms: all is answered once it is well again. */
import { setTimeout as sleep } from 'node:timers/promises';
import { type Fault, faults, slow, tooFast } from '../fake-bot-api/fault.js';
import { Grower } from '../fake-bot-api/grower.js';
import { chanceFrom, type Drill, mustHold, scaled, withBot } from './drill.js';
import { sayAll } from './notes.js';
import { until } from './program.js';

const weathers: Readonly<Record<string, Fault>> = {
  'server broken': faults.broken,
  'connections cut': faults.cut,
  rubbish: faults.rubbish,
  conflict: faults.conflict,
  slow: slow(400),
  'told to slow down': tooFast(1),
};

export const botApi: Drill = {
  name: 'bot-api',
  does: 'the Bot API breaks, cuts, talks rubbish, conflicts, crawls and storms with 429: nothing is lost, nothing logged twice',
  run: (scale) =>
    withBot(async (bot) => {
      const chance = chanceFrom(7);
      const growers = Array.from({ length: 20 }, (_, index) => new Grower(bot.fake, 1_000 + index));
      const expected = new Set<string>();
      let at = Math.floor(bot.fake.now() / 1000) - 600 * 3600;
      const program = bot.start();
      for (const fault of Object.values(weathers)) {
        bot.fake.faultPlan = () => (chance() < 0.6 ? fault : undefined);
        for (const source of sayAll(growers, 1, (at += 3600))) expected.add(source);
        await sleep(scaled(20_000, scale, 1_000));
      }
      bot.fake.faultPlan = () => undefined;
      await until(
        () => bot.linesByMessage().size === expected.size,
        90_000,
        () => program.stderr.slice(-2000),
      );
      await until(() => bot.count('SELECT 1 FROM outbox WHERE settled_at IS NULL') === 0, 90_000);
      const doubled = [...bot.linesByMessage().values()].filter((count) => count !== 1).length;
      mustHold(doubled === 0, () => `${doubled} notes logged twice`);
      mustHold(program.process.exitCode === null, () => 'the program ended');
      return `${expected.size} notes through ${Object.keys(weathers).join(', ')}: all logged once and answered`;
    }),
};
