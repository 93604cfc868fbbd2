/** A person in a chat of the fake Bot API: says, edits, taps. */
import type { Message, Update } from 'grammy/types';
import type { FakeBotApi } from './fake-bot-api.js';

let updateId = 500_000;

export class Grower {
  constructor(
    private readonly fake: FakeBotApi,
    readonly id: number,
    readonly name = `Grower ${id}`,
    /** The group that they write in; without, they write to the bot alone. */
    readonly group?: number,
    /** Number of their first message; those of several in one group must not meet. */
    private nextMessage = 1,
  ) {}

  get chat(): number {
    return this.group ?? this.id;
  }

  /** Answers the number of the message. */
  says(text: string, more: Partial<Message> = {}): number {
    return this.sends({ text, ...more });
  }

  /** A message of any content. */
  sends(content: Partial<Message>): number {
    const message = this.nextMessage++;
    this.brings({ message: this.message(message, content) });
    return message;
  }

  edits(message: number, text: string, sentSecondsAgo = 0): void {
    this.brings({
      edited_message: {
        ...this.message(message, { text }),
        date: this.seconds() - sentSecondsAgo,
        edit_date: this.seconds(),
      },
    });
  }

  /** Presses a button of a message of the bot's. */
  taps(message: number, data: string): string {
    const id = `tap-${updateId}`;
    this.brings({
      callback_query: {
        id,
        from: this.self(),
        chat_instance: '1',
        data,
        message: this.message(message, { text: '' }),
      },
    });
    return id;
  }

  /** Blocks the bot, or takes it back. */
  becomes(status: 'kicked' | 'member'): void {
    this.bringsMembership('my_chat_member', 'member', status);
  }

  /** Lets the bot into the group. */
  letsIn(): void {
    this.bringsMembership('my_chat_member', 'left', 'member');
  }

  /** Goes out of the group: by the group's own message, or as an administrator's bot is told. */
  leaves(how: 'message' | 'membership' = 'message'): void {
    if (how === 'message') this.sends({ left_chat_member: this.self() });
    else this.bringsMembership('chat_member', 'member', 'left');
  }

  /** An update of whatever shape, numbered. */
  brings(content: object): void {
    this.fake.queue.add({ update_id: updateId++, ...content } as Update);
  }

  /** The bot's own membership, or this person's. */
  private bringsMembership(
    whose: 'my_chat_member' | 'chat_member',
    before: 'member' | 'left',
    after: 'member' | 'left' | 'kicked',
  ): void {
    const user = { ...this.self(), is_bot: whose === 'my_chat_member' };
    this.brings({
      [whose]: {
        chat: this.message(0, {}).chat,
        from: this.self(),
        date: this.seconds(),
        old_chat_member: { status: before, user },
        new_chat_member: { status: after, user, ...(after === 'kicked' ? { until_date: 0 } : {}) },
      },
    });
  }

  private message(message_id: number, content: Partial<Message>): Message & Update.NonChannel {
    return {
      message_id,
      date: this.seconds(),
      from: this.self(),
      chat:
        this.group === undefined
          ? { id: this.id, type: 'private', first_name: this.name }
          : { id: this.group, type: 'supergroup', title: 'Bench' },
      ...content,
    } as Message & Update.NonChannel;
  }

  private self() {
    return { id: this.id, is_bot: false as const, first_name: this.name };
  }

  private seconds(): number {
    return Math.floor(this.fake.now() / 1000);
  }
}
