/** A chat that floods: the others are served meanwhile, and nothing of the flood is lost. */
import { Grower } from '../fake-bot-api/grower.js';
import { type Drill, mustHold, scaled, withBot } from './drill.js';
import { noteNumber } from './notes.js';
import { until } from './program.js';

export const flood: Drill = {
  name: 'flood',
  does: 'one chat sends 5,000 notes at once while another sends one: the other is answered within seconds, nothing is lost',
  run: (scale) =>
    withBot(async (bot) => {
      const notes = scaled(5_000, scale, 200);
      const flooding = new Grower(bot.fake, 666);
      const quiet = new Grower(bot.fake, 7);
      bot.start();
      const firstAt = Math.floor(bot.fake.now() / 1000) - notes * 61;
      for (let index = 0; index < notes; index++)
        flooding.says(noteNumber(index), { date: firstAt + index * 61 });
      await until(() => bot.textsTo(666).length > 0, 20_000);
      quiet.says(noteNumber(1));
      const saidAt = performance.now();
      await until(
        () => bot.textsTo(7).length > 0,
        120_000,
        () => 'the quiet chat went unanswered',
      );
      const seconds = (performance.now() - saidAt) / 1000;
      await until(
        () => bot.count('SELECT 1 FROM inbox WHERE settled_at IS NULL') === 0 && bot.fake.queue.length === 0,
        300_000,
      );
      const lines = bot.linesByMessage().size;
      mustHold(lines === notes + 1, () => `${notes + 1} notes, ${lines} in the ledger`);
      return `${notes} notes in a flood, all logged; the quiet chat was answered after ${seconds.toFixed(1)} s`;
    }),
};
