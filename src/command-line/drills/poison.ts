/** Updates of every wrong shape between good ones: set aside with their fault, and the good ones are logged. */
import { Grower } from '../fake-bot-api/grower.js';
import { chanceFrom, type Drill, mustHold, scaled, withBot } from './drill.js';
import { noteNumber } from './notes.js';
import { until } from './program.js';

const junk: readonly unknown[] = [
  null,
  true,
  -1,
  1e308,
  '',
  '\u0000',
  [],
  {},
  { length: 3 },
  'x'.repeat(5_000),
];
const places = [
  'text',
  'chat',
  'from',
  'date',
  'message_id',
  'location',
  'voice',
  'reply_to_message',
  'document',
];

export const poison: Drill = {
  name: 'poison',
  does: '2,000 updates of wrong shape among good ones: none stops the bot, none logs a thing, the good ones are logged',
  run: (scale) =>
    withBot(async (bot) => {
      const chance = chanceFrom(3);
      const pick = <T>(list: readonly T[]): T => list[Math.floor(chance() * list.length)] as T;
      const count = scaled(2_000, scale);
      const mallory = new Grower(bot.fake, 666);
      const bea = new Grower(bot.fake, 7);
      const program = bot.start();
      const firstAt = Math.floor(bot.fake.now() / 1000) - count * 61;
      let good = 0;
      for (let index = 0; index < count; index++) {
        mallory.sends({
          [pick(places)]: pick(junk),
          ...(chance() < 0.3 ? { [pick(places)]: pick(junk) } : {}),
        });
        mallory.brings({
          [pick(['message', 'edited_message', 'callback_query', 'my_chat_member', 'poll'])]: pick(junk),
        });
        if (index % 20 === 0) {
          bea.says(noteNumber(index), { date: firstAt + index * 61 });
          good++;
        }
      }
      await until(
        () => bot.fake.queue.length === 0 && bot.count('SELECT 1 FROM inbox WHERE settled_at IS NULL') === 0,
        240_000,
        () => program.stderr.slice(-2000),
      );
      const byBea = bot.count("SELECT DISTINCT message FROM journal WHERE chat = 'telegram:7'");
      const byMallory = bot.count("SELECT 1 FROM journal WHERE chat <> 'telegram:7'");
      mustHold(byBea === good, () => `${good} good notes, ${byBea} in the ledger`);
      mustHold(byMallory === 0, () => `${byMallory} lines came of junk`);
      mustHold(program.process.exitCode === null, () => 'the program ended');
      const aside = bot.count('SELECT 1 FROM inbox WHERE fault IS NOT NULL');
      return `${2 * count} updates of wrong shape: ${aside} set aside, ${good} good notes between them logged`;
    }),
};
