/** A machine clock that is set hours on and hours back: notes go on being answered at once, and none is lost. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { Grower } from '../fake-bot-api/grower.js';
import { type Drill, mustHold, withBot } from './drill.js';
import { noteNumber } from './notes.js';
import { until } from './program.js';
import { shiftedClock } from './shifted-clock.js';

const HOUR_MS = 3_600_000;

export const clock: Drill = {
  name: 'clock',
  does: 'the machine clock jumps hours on and back: answers come at once all the same, none twice',
  run: () =>
    withBot(async (bot) => {
      const file = join(bot.dataFolder, 'shift');
      writeFileSync(file, '0');
      const bea = new Grower(bot.fake, 7);
      const program = bot.start({ nodeArguments: shiftedClock(file) });
      const jumps = [0, 5, -7, 30, -30, 0];
      for (const [index, hours] of jumps.entries()) {
        writeFileSync(file, String(hours * HOUR_MS));
        await sleep(200);
        bea.says(noteNumber(index * 3 + 1));
        await until(
          () => bot.textsTo(7).length >= index + 1,
          10_000,
          () => `no answer with the clock ${hours} h off`,
        );
        await until(
          () => bot.count("SELECT 1 FROM outbox WHERE kind = 'reply' AND outcome = 'sent'") === index + 1,
          5_000,
        );
      }
      mustHold(
        bot.textsTo(7).length === jumps.length,
        () => `${bot.textsTo(7).length} answers to ${jumps.length} notes`,
      );
      mustHold(program.process.exitCode === null, () => 'the program ended');
      return `jumps of ${jumps.slice(1).join(', ')} hours: each note answered at once, and once`;
    }),
};
