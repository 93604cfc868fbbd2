/** Very many updates through one process: what it keeps in memory does not grow with them. */
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import type { Update } from '../../channels/telegram.js';
import { BotInHand, type Reached } from './bot-in-hand.js';
import { chanceFrom, type Drill, mustHold, scaled } from './drill.js';

const GROWERS = 50;
const BATCH = 100;
const STEP_MS = 20_000;
const START_MS = Date.UTC(2027, 3, 10, 9);
/** By then caches that are meant to fill have filled: the first tenth of a whole drill; a shorter one is measured from its middle. */
const FILLED_BY = 10_000;
/** What the ledgers' own lines, some 40 more a grower, and what little still fills may add from then to the end. */
const ALLOWED_BYTES = 5_000_000;

const logged = [
  'took 4 tip cuttings of Ember Fox dahlia in one pot',
  'misted the lot',
  'propagator at 21 this morning',
  'remind me to ask Wilf about the fence on Friday',
  'undo',
];
/** What posts nothing. */
const passing = [
  'lovely morning, the kettle is on',
  'what is due this week?',
  'how many Ember Fox are there',
  'where are the Ember Fox',
  'lost 900 of the Ember Fox',
  'took some cuttings of Ember Fox',
  'none yet',
  'my sister came by and talked about her week in the hills',
];

export const memory: Drill = {
  name: 'memory',
  does: '100,000 updates of 50 growers through one process: what it holds in memory at the end is what it held after the first tenth',
  run: async (scale) => {
    const crowd = new Crowd();
    try {
      const updates = scaled(100_000, scale, 5_000);
      const first = Math.min(updates / 2, FILLED_BY);
      await crowd.send(first);
      const early = heapBytes();
      await crowd.send(updates - first);
      const late = heapBytes();
      const waiting = crowd.bot.database.get<{ n: number }>(
        'SELECT count(*) AS n FROM inbox WHERE settled_at IS NULL OR fault IS NOT NULL',
      )?.n;
      mustHold(waiting === 0, () => `${waiting} updates were not dealt with`);
      mustHold(crowd.answered > updates / 2, () => `only ${crowd.answered} replies to ${updates} updates`);
      mustHold(
        late - early < ALLOWED_BYTES,
        () => `${megabytes(early)} after ${first} updates, ${megabytes(late)} after ${updates}`,
      );
      return `${updates} updates, ${crowd.answered} replies: ${megabytes(early)} of heap after ${first}, ${megabytes(late)} at the end`;
    } finally {
      await crowd.bot.end();
    }
  },
};

class Crowd {
  answered = 0;
  readonly bot: BotInHand;
  private readonly chance = chanceFrom(100_000);
  private sent = 0;
  /** The latest buttons of each chat. */
  private readonly buttons = new Map<number, string>();

  constructor() {
    this.bot = new BotInHand({ startsAt: START_MS, reached: (what) => this.noteReached(what) });
  }

  async send(count: number): Promise<void> {
    for (let sent = 0; sent < count; sent += BATCH) {
      this.bot.clock.set(this.bot.clock.now() + STEP_MS);
      await this.bot.take(Array.from({ length: Math.min(BATCH, count - sent) }, () => this.update()));
    }
  }

  private noteReached({ chat, buttons }: Reached): void {
    if (chat === null) return;
    this.answered++;
    const [button] = buttons;
    if (button) this.buttons.set(chat, button.data);
  }

  private update(): Update {
    const number = ++this.sent;
    const id = 1 + (number % GROWERS);
    const from = { id, is_bot: false, first_name: 'Bea' };
    const chat = { id, type: 'private' as const, first_name: 'Bea' };
    const date = Math.floor(this.bot.clock.now() / 1000);
    const data = this.buttons.get(id);
    if (data !== undefined && this.chance() < 0.1)
      return {
        update_id: number,
        callback_query: {
          id: String(number),
          chat_instance: '1',
          from,
          data,
          message: { message_id: 1, date: 0, chat },
        },
      };
    // A note in fifty stays in the ledger, which may well grow.
    const list = this.chance() < 0.02 ? logged : passing;
    const text = list[Math.floor(this.chance() * list.length)] as string;
    return { update_id: number, message: { message_id: number, date, text, from, chat } };
  }
}

/** After a collection, so that it is what is kept. */
function heapBytes(): number {
  setFlagsFromString('--expose-gc');
  const collect = runInNewContext('gc') as () => void;
  collect();
  collect();
  const { heapUsed, external } = process.memoryUsage();
  return heapUsed + external;
}

function megabytes(bytes: number): string {
  return `${(bytes / 1e6).toFixed(1)} MB`;
}
