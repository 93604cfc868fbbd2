/** Hostile input of every kind through the whole bot: nothing crashes, nobody sees another's ledger, nothing is logged that was not said. */
import type { Update } from '../../channels/telegram.js';
import type { Hear } from '../../channels/telegram-channel.js';
import type { Entry } from '../../ledger/entry.js';
import { BotInHand, type Reached } from './bot-in-hand.js';
import { chanceFrom, type Drill, mustHold, scaled } from './drill.js';
import { Expectations } from './hostile/expectations.js';
import { hostileFile, hostileFiles } from './hostile/files.js';
import { type Corner, corners, isGroup, mallory, messageIn, secretsFrom } from './hostile/people.js';
import { forgedPress } from './hostile/presses.js';
import { hostileText, letters } from './hostile/texts.js';
import { withWrongTypes } from './hostile/wrong-types.js';
import { until } from './program.js';

const DAY_MS = 86_400_000;
const MORNING_MS = Date.UTC(2027, 3, 10, 6, 30);
const BATCH = 40;
/** What no reply may hold: a program's own words. */
const INNARDS = /\[object |native code|undefined|TypeError|SQLITE/;

export const hostile: Drill = {
  name: 'hostile',
  does: '10,000 hostile inputs (every Unicode plane, 4,096-character lines, forged presses, wrong types, lying files): no crash, no foreign data, nothing logged that was not said',
  run: async (scale) => {
    const siege = new Siege();
    try {
      await siege.settleIn();
      const inputs = scaled(10_000, scale);
      while (siege.inputs < inputs) await siege.batch(Math.min(BATCH, inputs - siege.inputs));
      return siege.hold();
    } finally {
      await siege.bot.end();
    }
  },
};

/** What is left of a message. */
interface Left {
  readonly message_id?: unknown;
  readonly chat?: { readonly id?: unknown };
  readonly text?: unknown;
}

/** `chat message` of an update, as the journal names them. */
function keyOf(json: string): string {
  const { message, edited_message: edited } = JSON.parse(json) as Record<string, Left | null>;
  const { chat, message_id: number } = message ?? edited ?? {};
  return `telegram:${String(chat?.id)} ${String(number)}`;
}

class Siege {
  inputs = 0;
  readonly bot: BotInHand;
  private readonly chance = chanceFrom(20_270_410);
  private readonly expectations = new Expectations((key) => this.shown(key));
  /** Updates as JSON. */
  private readonly sent: string[] = [];
  private readonly reached: Reached[] = [];
  /** Updates that the Bot API would never send. */
  private readonly malformed = new Set<number>();
  /** Texts that ought to be answered, as `chat message`. */
  private readonly unanswered = new Set<string>();
  private nextMessage = 1;
  private nextUpdate = 1;

  constructor() {
    const hear: Hear = ({ chat }) => {
      const { text, count } = hostileText(this.chance, []);
      this.expectations.tells(Number(chat.split(':')[1]), this.bot.clock.now(), text, count);
      const words = text.split(' ').map((word) => ({ word, p: this.chance() }));
      return Promise.resolve({ heard: { words, seconds: 3 } });
    };
    this.bot = new BotInHand({
      startsAt: MORNING_MS,
      reached: (what) => this.noteReached(what),
      hear,
      fileOf: (id) => hostileFiles.get(id) ?? new Uint8Array(),
    });
  }

  /** Each ledger gets its plants, and questions about them that wait for an answer. */
  async settleIn(): Promise<void> {
    const owners = corners.filter(({ varieties }) => varieties.length > 0);
    for (const variety of [0, 1]) {
      await this.bot.take(owners.map((corner) => this.goodNote(corner, variety, MORNING_MS - 28 * DAY_MS)));
    }
    this.bot.clock.set(MORNING_MS + 3 * 3_600_000);
    this.bot.speaksUnasked = true;
    await until(
      () =>
        owners.every(({ chat }) =>
          this.reached.some(
            (each) => each.chat === chat && each.buttons.some(({ data }) => data.startsWith('prompt:')),
          ),
        ),
      20_000,
      () => 'nobody was asked about roots',
    );
    this.bot.speaksUnasked = false;
    await this.bot.settled();
  }

  async batch(size: number): Promise<void> {
    this.bot.clock.set(this.bot.clock.now() + 90_000);
    // Presses come first: until then it is known what each chat was offered.
    const kinds = Array.from({ length: size }, () => this.chance()).sort((a, b) => a - b);
    const updates = kinds.map((kind) => this.hostileUpdate(kind));
    this.inputs += size;
    const corner = this.pick(corners.filter(({ varieties }) => varieties.length > 0));
    updates.push(this.goodNote(corner, 0, this.bot.clock.now()));
    this.sent.push(...updates.map((update) => JSON.stringify(update)));
    await this.bot.take(updates);
  }

  /** Throws `DrillFailed` where something did not hold; else what was seen. */
  hold(): string {
    const { honest, other } = this.expectations.hold(this.bot.database);
    for (const each of this.reached) this.holdReached(each);
    const aside = this.bot.database.all<{ update_id: number; fault: string }>(
      'SELECT update_id, fault FROM inbox WHERE fault IS NOT NULL',
    );
    const defeated = aside.filter(({ update_id }) => !this.malformed.has(update_id));
    mustHold(
      defeated.length === 0,
      () => `well-formed updates set aside: ${JSON.stringify(defeated.slice(0, 3))}`,
    );
    mustHold(
      this.unanswered.size === 0,
      () =>
        `texts without an answer: ${[...this.unanswered].slice(0, 3).map((key) => this.shown(`telegram:${key}`))}`,
    );
    mustHold(this.bot.erasures.length === 0, () => 'a ledger was erased');
    return `${this.inputs} hostile inputs: ${aside.length} malformed ones set aside, ${other} entries of notes in disguise and no others, all of ${honest} good notes between them, ${this.reached.length} messages without a foreign name`;
  }

  /** The update of that `chat message`. */
  private shown(key: string): string {
    return this.sent.findLast((update) => keyOf(update) === key) ?? 'nothing';
  }

  private noteReached(what: Reached): void {
    this.reached.push(what);
    this.unanswered.delete(`${what.chat} ${what.replyTo}`);
  }

  private holdReached({ chat, text, buttons, file }: Reached): void {
    const said = [text, ...buttons.flatMap(({ label, data }) => [label, data]), file].join('\n');
    const corner = corners.find((each) => each.chat === chat);
    // The answer to a press is the same for all: it names nothing of anybody's.
    const secrets = corner ? secretsFrom(corner) : corners.flatMap(({ varieties }) => varieties);
    const plain = letters(said);
    for (const secret of secrets)
      mustHold(
        !plain.includes(letters(secret)),
        () => `chat ${chat} read of ${secret}: ${said.slice(0, 500)}`,
      );
    mustHold(!INNARDS.test(text), () => `a reply shows the program's innards: ${text.slice(0, 500)}`);
    mustHold(text.length <= 4096, () => `a message of ${text.length} characters`);
  }

  private hostileUpdate(kind: number): Update {
    const corner = this.pick(corners);
    if (kind < 0.2) return this.press(corner);
    if (kind < 0.35) return this.malformedUpdate(corner);
    if (kind < 0.4) return this.trespass(corner);
    if (kind < 0.5) return this.update({ message: this.message(corner, hostileFile(this.chance)) });
    return this.text(corner);
  }

  private text(corner: Corner): Update {
    const { text, allows, count } = hostileText(this.chance, this.labelsElsewhere(corner));
    const heard = !isGroup(corner) || this.chance() < 0.7;
    const message = this.message(corner, { text: isGroup(corner) && heard ? `@slip_bot ${text}` : text });
    if (allows && heard) this.expectations.allow(corner.chat, this.numberOf(message), allows);
    this.expectations.tells(corner.chat, this.bot.clock.now(), text, count);
    if (!isGroup(corner)) this.unanswered.add(`${corner.chat} ${this.numberOf(message)}`);
    return this.update(this.chance() < 0.05 ? { edited_message: message } : { message });
  }

  /** A button that this chat was not offered, under a message of whoever's. */
  private press(corner: Corner): Update {
    const rows = this.bot.database.all<{ chat: string; data: string }>('SELECT chat, data FROM offered');
    const own = new Set(
      rows.filter(({ chat }) => chat === `telegram:${corner.chat}`).map(({ data }) => data),
    );
    const forged = () =>
      forgedPress(
        this.chance,
        rows.map((row) => row.data),
      );
    let data = forged();
    while (own.has(data)) data = forged();
    const message = this.message(corner, { message_id: this.pick(this.reached).message, text: '' });
    const { from } = message as { from: object };
    return this.update({
      callback_query: { id: `press-${this.nextUpdate}`, from, chat_instance: '1', data, message },
    });
  }

  /** Fields of the wrong type; whatever is still a note after that may be logged as what it says. */
  private malformedUpdate(corner: Corner): Update {
    this.malformed.add(this.nextUpdate);
    const count = 2 + Math.floor(this.chance() * 8);
    const text = `${isGroup(corner) ? '@slip_bot ' : ''}took ${count} tip cuttings of Plain Jane dahlia in one pot`;
    const message = this.message(corner, {
      text,
      reply_to_message: { message_id: 3, from: { id: 4_711_000_001 } },
      ...(this.chance() < 0.3 ? hostileFile(this.chance) : {}),
      ...(this.chance() < 0.2 ? { location: { latitude: 51, longitude: 0 } } : {}),
    });
    const shapes = [
      { message },
      { edited_message: message },
      {
        callback_query: {
          id: '1',
          from: { id: 666, is_bot: false, first_name: 'M' },
          data: 'undo:1',
          message,
        },
      },
      {
        my_chat_member: {
          chat: { id: mallory.chat, type: 'private' },
          from: { id: 666 },
          new_chat_member: { status: 'member' },
        },
      },
    ];
    const update = withWrongTypes(this.update(this.pick(shapes)), this.chance);
    const { message: sent, edited_message: edited } = update as Record<string, Left | undefined>;
    const left = sent ?? edited;
    if (left?.chat?.id === corner.chat && typeof left.message_id === 'number' && left.text === text) {
      const isIt = (entry: Entry) => entry.kind === 'strike' && entry.count === count;
      this.expectations.allow(corner.chat, left.message_id, isIt);
      this.expectations.tells(corner.chat, this.bot.clock.now(), text, count);
    }
    return update as Update;
  }

  /** A good note where it must not count: in another's name, from a bot, or passed on. */
  private trespass(corner: Corner): Update {
    const text = 'took 5 tip cuttings of Plain Jane dahlia in one pot';
    const bot = { id: 4_711_000_001, is_bot: true, first_name: 'Slip' };
    const message = this.message(corner, {
      text,
      ...this.pick([{ from: bot }, { forward_origin: { type: 'user' } }]),
    });
    if (this.chance() < 0.5) return this.update({ message });
    // A chat of one that someone else writes in, or a group that has a person's number: neither can be.
    this.malformed.add(this.nextUpdate);
    const stranger = { id: 99_999, is_bot: false, first_name: 'S' };
    const chat = { id: this.pick([7, 8]), type: this.pick(['private', 'group', 'channel']) };
    return this.update({ message: { ...message, from: stranger, chat, forward_origin: undefined } });
  }

  private goodNote(corner: Corner, variety: number, atMs: number): Update {
    const count = 2 + Math.floor(this.chance() * 8);
    const name = corner.varieties[variety] ?? '';
    const text = `${isGroup(corner) ? '@slip_bot ' : ''}took ${count} tip cuttings of ${name} dahlia in one pot`;
    const message = this.message(corner, { text }, atMs);
    this.expectations.expect(
      corner.chat,
      this.numberOf(message),
      this.bot.clock.now(),
      (entry) =>
        entry.kind === 'strike' && entry.count === count && entry.variety === name && entry.pots === 1,
    );
    this.expectations.tells(corner.chat, this.bot.clock.now(), text, count);
    return this.update({ message });
  }

  private message(corner: Corner, content: object, atMs = this.bot.clock.now()): object {
    return messageIn(corner, this.pick(corner.people), this.nextMessage++, atMs, content);
  }

  private numberOf(message: object): number {
    return (message as { message_id: number }).message_id;
  }

  private update(content: object): Update {
    return { update_id: this.nextUpdate++, ...content } as Update;
  }

  /** Labels that other ledgers have, and this one never will. */
  private labelsElsewhere(corner: Corner): string[] {
    return this.bot.database
      .all<{ label: string }>(
        `SELECT DISTINCT json_extract(what, '$.label') AS label FROM journal
         WHERE json_extract(what, '$.variety') IN (SELECT value FROM json_each(?)) AND label IS NOT NULL LIMIT 30`,
        JSON.stringify(secretsFrom(corner)),
      )
      .map(({ label }) => label);
  }

  private pick<T>(list: readonly T[]): T {
    return list[Math.floor(this.chance() * list.length)] as T;
  }
}
