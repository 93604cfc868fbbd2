/** Kills at random points under load: every note in the ledger once, every one answered. */
import { setTimeout as sleep } from 'node:timers/promises';
import { Grower } from '../fake-bot-api/grower.js';
import { chanceFrom, type Drill, mustHold, scaled, withBot } from './drill.js';
import { sayAll } from './notes.js';
import { until } from './program.js';

/** Sendings that can be in flight at a kill. */
const IN_FLIGHT = 3;
const GROWERS = 100;

export const kills: Drill = {
  name: 'kills',
  does: '500 kills at random moments while notes come in: none lost, none logged twice, each answered',
  run: (scale) =>
    withBot(async (bot) => {
      const chance = chanceFrom(20_261_125);
      const planned = scaled(500, scale, 10);
      const growers = Array.from({ length: GROWERS }, (_, index) => new Grower(bot.fake, 1_000 + index));
      const expected = new Set<string>();
      const firstAt = Math.floor(bot.fake.now() / 1000) - 600 * 3600;
      for (let kill = 0; kill < planned; kill++) {
        const writers = growers.filter(() => chance() < 0.05);
        for (const source of sayAll(writers, 1, firstAt + kill * 3600)) expected.add(source);
        const program = bot.start();
        // Most kills fall while notes are handled and answered, some into the start.
        if (chance() < 0.8)
          await until(
            () => program.stderr.includes('"started"'),
            20_000,
            () => program.stderr,
          );
        await sleep(chance() * 600);
        await program.kill();
      }
      bot.start();
      await until(
        () => bot.count('SELECT 1 FROM inbox WHERE settled_at IS NULL') === 0 && bot.fake.queue.length === 0,
        120_000,
      );
      await until(() => bot.count('SELECT 1 FROM outbox WHERE settled_at IS NULL') === 0, 240_000);
      const lines = bot.linesByMessage();
      const lost = [...expected].filter((source) => !lines.has(source));
      const doubled = [...lines].filter(([, count]) => count !== 1);
      mustHold(lost.length === 0, () => `lost: ${lost.join(', ')}`);
      mustHold(doubled.length === 0, () => `logged twice: ${doubled.join(', ')}`);
      const answers = bot.count("SELECT 1 FROM outbox WHERE kind = 'reply' AND outcome = 'sent'");
      mustHold(answers >= expected.size, () => `${expected.size} notes, only ${answers} answers`);
      const again = bot.fake.sent.length - bot.count("SELECT 1 FROM outbox WHERE outcome = 'sent'");
      mustHold(again <= planned * IN_FLIGHT, () => `${again} messages sent again after ${planned} kills`);
      return `${planned} kills, ${expected.size} notes: 0 lost, 0 logged twice, ${again} answers sent again in doubt`;
    }),
};
