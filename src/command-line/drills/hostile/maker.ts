/** Makes the hostile updates, and good notes among them, and tells the judge what each may come to. */
import type { Update } from '../../../channels/telegram.js';
import type { Hear } from '../../../channels/telegram-channel.js';
import type { Entry } from '../../../ledger/entry.js';
import type { BotInHand } from '../bot-in-hand.js';
import { hostileFile } from './files.js';
import type { Judge } from './judge.js';
import { type Corner, corners, isGroup, mallory, messageIn, secretsFrom } from './people.js';
import { forgedPress } from './presses.js';
import { hostileText } from './texts.js';
import { messageLeft, withWrongTypes } from './wrong-types.js';

/** Those who have a ledger of their own. */
export const owners = corners.filter(({ varieties }) => varieties.length > 0);

export class Maker {
  private nextMessage = 1;
  private nextUpdate = 1;

  constructor(
    private readonly chance: () => number,
    private readonly bot: Pick<BotInHand, 'clock' | 'database'>,
    private readonly judge: Judge,
  ) {}

  /** So many hostile updates, and a good note behind them. */
  batch(size: number): Update[] {
    // Presses come first: until then it is known what each chat was offered.
    const kinds = Array.from({ length: size }, () => this.chance()).sort((a, b) => a - b);
    const updates = kinds.map((kind) => this.hostileUpdate(kind));
    return [...updates, this.goodNote(this.pick(owners), 0, this.bot.clock.now())];
  }

  /** A note that must count, of that one of the corner's varieties. */
  goodNote(corner: Corner, variety: number, atMs: number): Update {
    const count = 2 + Math.floor(this.chance() * 8);
    const name = corner.varieties[variety] ?? '';
    const text = `${isGroup(corner) ? '@slip_bot ' : ''}took ${count} tip cuttings of ${name} dahlia in one pot`;
    const message = this.message(corner, { text }, atMs);
    this.judge.expectations.expect(
      corner.chat,
      this.numberOf(message),
      this.bot.clock.now(),
      (entry) =>
        entry.kind === 'strike' && entry.count === count && entry.variety === name && entry.pots === 1,
    );
    this.judge.expectations.tells(corner.chat, this.bot.clock.now(), text, count);
    return this.update({ message });
  }

  /** What a voice note says: as hostile as a text, each word heard with whatever probability. */
  readonly hear: Hear = ({ chat }) => {
    const { text, count } = hostileText(this.chance, []);
    this.judge.expectations.tells(Number(chat.split(':')[1]), this.bot.clock.now(), text, count);
    const words = text.split(' ').map((word) => ({ word, p: this.chance() }));
    return Promise.resolve({ heard: { words, seconds: 3 } });
  };

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
    if (allows && heard) this.judge.expectations.allow(corner.chat, this.numberOf(message), allows);
    this.judge.expectations.tells(corner.chat, this.bot.clock.now(), text, count);
    if (!isGroup(corner)) this.judge.mustAnswer(corner.chat, this.numberOf(message));
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
    const message = this.message(corner, { message_id: this.pick(this.judge.reached).message, text: '' });
    const { from } = message as { from: object };
    return this.update({
      callback_query: { id: `press-${this.nextUpdate}`, from, chat_instance: '1', data, message },
    });
  }

  /** Fields of the wrong type; whatever is still a note after that may be logged as what it says. */
  private malformedUpdate(corner: Corner): Update {
    this.judge.maySetAside(this.nextUpdate);
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
    const left = messageLeft(update);
    const chat = left.chat?.id;
    // A number that is no chat's here makes a chat of its own, with a ledger of its own.
    const isElsewhere = typeof chat === 'number' && corners.every((each) => each.chat !== chat);
    if (
      typeof chat === 'number' &&
      (chat === corner.chat || isElsewhere) &&
      typeof left.message_id === 'number' &&
      left.text === text
    ) {
      const isIt = (entry: Entry) => entry.kind === 'strike' && entry.count === count;
      this.judge.expectations.allow(chat, left.message_id, isIt);
      this.judge.expectations.tells(chat, this.bot.clock.now(), text, count);
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
    this.judge.maySetAside(this.nextUpdate);
    const stranger = { id: 99_999, is_bot: false, first_name: 'S' };
    const chat = { id: this.pick([7, 8]), type: this.pick(['private', 'group', 'channel']) };
    return this.update({ message: { ...message, from: stranger, chat, forward_origin: undefined } });
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
