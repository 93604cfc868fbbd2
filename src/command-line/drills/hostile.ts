/** Hostile input of every kind through the whole bot: nothing crashes, nobody sees another's ledger, nothing is logged that was not said. */
import { BotInHand } from './bot-in-hand.js';
import { chanceFrom, type Drill, scaled } from './drill.js';
import { hostileFiles } from './hostile/files.js';
import { Judge } from './hostile/judge.js';
import { Maker, owners } from './hostile/maker.js';
import { until } from './program.js';

const DAY_MS = 86_400_000;
const MORNING_MS = Date.UTC(2027, 3, 10, 6, 30);
const BATCH = 40;

export const hostile: Drill = {
  name: 'hostile',
  does: '10,000 hostile inputs (every Unicode plane, 4,096-character lines, forged presses, wrong types, lying files): no crash, no foreign data, nothing logged that was not said',
  run: async (scale) => {
    const siege = new Siege();
    try {
      await siege.settleIn();
      const inputs = scaled(10_000, scale);
      for (let made = 0; made < inputs; made += BATCH) await siege.batch(Math.min(BATCH, inputs - made));
      return `${inputs} hostile inputs: ${siege.judge.hold(siege.bot)}`;
    } finally {
      await siege.bot.end();
    }
  },
};

class Siege {
  readonly judge = new Judge();
  readonly bot: BotInHand;
  private readonly maker: Maker;

  constructor() {
    this.bot = new BotInHand({
      startsAt: MORNING_MS,
      reached: (what) => this.judge.hears(what),
      hear: (...spoken) => this.maker.hear(...spoken),
      fileOf: (id) => hostileFiles.get(id) ?? new Uint8Array(),
    });
    this.maker = new Maker(chanceFrom(20_270_410), this.bot, this.judge);
  }

  /** Each ledger gets its plants, and questions about them that wait for an answer. */
  async settleIn(): Promise<void> {
    for (const variety of [0, 1]) {
      await this.bot.take(
        owners.map((corner) => this.maker.goodNote(corner, variety, MORNING_MS - 28 * DAY_MS)),
      );
    }
    this.bot.clock.set(MORNING_MS + 3 * 3_600_000);
    this.bot.speaksUnasked = true;
    await until(
      () =>
        owners.every(({ chat }) =>
          this.judge.reached.some(
            (each) => each.chat === chat && each.buttons.some(({ data }) => data.startsWith('prompt:')),
          ),
        ),
      20_000,
      () => 'nobody was asked about roots',
    );
    this.bot.speaksUnasked = false;
    await this.bot.settled();
  }

  /** Sends so many hostile updates and what goes with them. */
  async batch(size: number): Promise<void> {
    this.bot.clock.set(this.bot.clock.now() + 90_000);
    const updates = this.maker.batch(size);
    this.judge.sees(updates);
    await this.bot.take(updates);
  }
}
