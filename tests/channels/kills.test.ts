/** The built program against a fake Bot API, killed under load: nothing lost, nothing doubled, everything answered. */
import { setTimeout as sleep } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { until } from '../../src/command-line/drills/program.js';
import { Grower } from '../../src/command-line/fake-bot-api/grower.js';
import { RunningBot } from '../../src/command-line/drills/running-bot.js';

let bot: RunningBot;
beforeEach(async () => {
  bot = await RunningBot.prepare();
});
afterEach(() => bot.end());

/** Numbers of the messages that the program believes to have sent. */
function markedSent(): string[] {
  return bot
    .rows<{ message: string }>("SELECT message FROM outbox WHERE outcome = 'sent' AND kind = 'reply'")
    .map(({ message }) => message);
}

describe('a burst of 300 notes with five kills', () => {
  it(
    'is logged once each and answered, distinct and identical notes alike',
    { timeout: 120_000 },
    async () => {
      const growers = Array.from({ length: 60 }, (_, index) => new Grower(bot.fake, 1_000 + index));
      const expected = new Set<string>();
      // An hour lies between a grower's notes, so that the same words are no slip of the thumb.
      const firstAt = Math.floor(Date.now() / 1000) - 6 * 3600;
      for (let round = 0; round < 5; round++)
        for (const [index, grower] of growers.entries()) {
          const count = round % 2 === 0 ? 3 : 2 + ((index + round) % 7);
          const message = grower.says(`took ${count} basal cuttings of Ember Fox dahlia in one pot`, {
            date: firstAt + round * 3600,
          });
          expected.add(`telegram:${grower.chat} ${message}`);
        }
      for (let kill = 0; kill < 5; kill++) {
        const program = bot.start();
        const before = bot.fake.sent.length;
        await until(() => bot.fake.sent.length > before, 20_000);
        await sleep(150 + kill * 170);
        await program.kill();
      }
      bot.start();
      await until(() => bot.linesByMessage().size === 300, 60_000);
      await until(
        () =>
          markedSent().length >= 300 &&
          bot.rows('SELECT 1 FROM outbox WHERE settled_at IS NULL').length === 0,
        60_000,
      );
      const lines = bot.linesByMessage();
      expect(new Set(lines.keys())).toEqual(expected);
      expect([...lines.values()].filter((count) => count !== 1)).toEqual([]);
      // Each note has its answer, and each answer that was marked did arrive.
      expect(markedSent()).toHaveLength(300);
      const arrived = new Set(bot.fake.sent.map(({ message }) => String(message)));
      expect(markedSent().filter((message) => !arrived.has(message))).toEqual([]);
      // At most one doubt for each sending in flight at a kill.
      expect(bot.fake.sent.length).toBeLessThanOrEqual(300 + 5 * 3);
    },
  );
});

describe('a stop by signal', () => {
  it('finishes what is in hand and exits 0 within five seconds', async () => {
    const grower = new Grower(bot.fake, 77);
    const program = bot.start();
    grower.says('took 3 basal cuttings of Ember Fox dahlia in one pot');
    await until(() => bot.fake.sent.length > 0, 15_000);
    for (let count = 4; count < 9; count++)
      grower.says(`took ${count} tip cuttings of Marble Wren fuchsia in a tray`);
    await until(() => bot.fake.queue.length === 0 || bot.linesByMessage().size > 1, 10_000);
    const askedAt = performance.now();
    expect(await program.kill('SIGTERM')).toBe(0);
    expect(performance.now() - askedAt).toBeLessThan(5_000);
    bot.start();
    await until(() => bot.linesByMessage().size === 6 && bot.fake.sent.length === 6, 15_000);
    expect([...bot.linesByMessage().values()]).toEqual([1, 1, 1, 1, 1, 1]);
  });
});
