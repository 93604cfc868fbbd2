/** Where channels, conversation and post meet: one turn, its replies and its settling are one transaction. */
import type { Incoming, Outgoing } from '../conversation/turn.js';
import type { Letter, Outbox, PostKind } from '../post/outbox.js';
import { jitterMs } from '../post/jitter.js';
import { keyWithinChat, letterOf } from './letter.js';

/** Replies go at once, whatever the clock says. */
const AT_ONCE = 0;

export interface DeskPorts {
  readonly outbox: Outbox;
  readonly now: () => number;
  readonly atomically: <T>(work: () => T) => T;
  /** The conversation; what it says, it gives to `queue`. */
  readonly takeTurn: (incoming: Incoming) => void;
  /** Messages as the chat's channel can carry them, each under a key of its own; none where this program does not serve it. */
  readonly pieces: (outgoing: Outgoing) => readonly Outgoing[];
  /** How many chats are served. */
  readonly chats: () => number;
  /** The topic in which a chat was last written to. */
  readonly threadOf: (chat: string) => number | undefined;
  /** What was queued is committed. */
  readonly committed: () => void;
}

export class Desk {
  /** The topic that the turn in hand came from; its replies go there. */
  private inTopic: { readonly chat: string; readonly thread: number | undefined } | undefined;

  constructor(private readonly ports: DeskPorts) {}

  /** Takes one turn; `settle` runs after it in the same transaction. Once that is committed, tell with `committed`. */
  turn(incoming: Incoming, settle: () => void = () => undefined, thread?: number): void {
    this.inTopic = { chat: incoming.chat, thread };
    try {
      this.ports.atomically(() => {
        this.ports.takeTurn(incoming);
        settle();
      });
    } finally {
      this.inTopic = undefined;
    }
  }

  /** What was queued is committed, and may be said. */
  committed(): void {
    this.ports.committed();
  }

  /** Puts into the outbox, within the transaction around it. A notice whose key was queued before is passed over. */
  queue(said: Outgoing, ledger?: number): void {
    const kind: PostKind = said.unasked ? 'notice' : 'reply';
    const thread = this.inTopic?.chat === said.chat ? this.inTopic.thread : this.ports.threadOf(said.chat);
    const dueAt = kind === 'notice' ? this.ports.now() + jitterMs(said.chat, this.ports.chats()) : AT_ONCE;
    for (const piece of this.ports.pieces(said)) {
      const letter = letterOf(
        { ...piece, ...(thread !== undefined ? { thread } : {}) },
        { kind, dueAt },
        ledger,
      );
      if (!this.ports.outbox.queue(letter, this.ports.now()) && kind === 'reply') this.queueAnyway(letter);
    }
  }

  /** A turn is taken once, so that its reply is new whatever its key says: no grower goes unanswered. */
  private queueAnyway(letter: Letter): void {
    for (let time = 2; ; time++)
      if (this.ports.outbox.queue({ ...letter, key: `${letter.key}~${time}` }, this.ports.now())) return;
  }

  /** Key of our message with the channel's number in a chat, as the conversation knows it. */
  keyOfMessage(chat: string, message: string): string | undefined {
    const key = this.ports.outbox.keyOfMessage(chat, message);
    return key === undefined ? undefined : keyWithinChat(key);
  }

  /**
   * What a button that this chat was offered means, and the key of the message that offered it; undefined where none did:
   * the press is forged or too late.
   */
  offerOf(chat: string, data: string): { readonly key: string; readonly means: string } | undefined {
    const offer = this.ports.outbox.offerOf(chat, data);
    return offer && { key: keyWithinChat(offer.key), means: offer.means };
  }
}
