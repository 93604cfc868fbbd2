/** Where channels, conversation and post meet: one turn, its replies and its settling are one transaction. */
import type { Incoming, Outgoing } from '../conversation/turn.js';
import type { Outbox, PostKind } from '../post/outbox.js';
import type { Channel } from './channel.js';
import { keyWithinChat, letterOf } from './letter.js';

export interface DeskPorts {
  readonly outbox: Outbox;
  readonly now: () => number;
  readonly atomically: <T>(work: () => T) => T;
  /** The conversation: what it says to this. */
  readonly takeTurn: (incoming: Incoming) => readonly Outgoing[];
  /** Something was queued. */
  readonly queued: () => void;
}

export class Desk {
  constructor(private readonly ports: DeskPorts) {}

  /** Takes one turn; `settle` runs in the same transaction. Replies go to the topic that the message came from. */
  turn(channel: Channel, incoming: Incoming, settle: () => void = () => undefined, thread?: number): void {
    this.ports.atomically(() => {
      for (const said of this.ports.takeTurn(incoming))
        this.queue(channel, said, 'reply', said.chat === incoming.chat ? thread : undefined);
      settle();
    });
    this.ports.queued();
  }

  /** Queues what is said without a turn: a fault told, a notice. Keys that were queued before are passed over. */
  say(channel: Channel, said: Outgoing, kind: PostKind, thread?: number): void {
    this.ports.atomically(() => this.queue(channel, said, kind, thread));
    this.ports.queued();
  }

  /** Key of our message with the channel's number in a chat, as the conversation knows it. */
  keyOfMessage(chat: string, message: string): string | undefined {
    const key = this.ports.outbox.keyOfMessage(chat, message);
    return key === undefined ? undefined : keyWithinChat(key, chat);
  }

  /** Key of the message that offered this chat that button; undefined where none did: the press is forged or too late. */
  keyOfOffer(chat: string, data: string): string | undefined {
    const key = this.ports.outbox.keyOfOffer(chat, data);
    return key === undefined ? undefined : keyWithinChat(key, chat);
  }

  private queue(channel: Channel, said: Outgoing, kind: PostKind, thread?: number): void {
    for (const piece of channel.pieces(said))
      this.ports.outbox.queue(
        letterOf({ ...piece, ...(thread !== undefined ? { thread } : {}) }, kind),
        this.ports.now(),
      );
  }
}
