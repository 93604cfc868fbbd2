/** What comes into a conversation and what goes out of it, whatever the channel. */
import type { Instant } from '../calendar/clock.js';
import type { HeardWord } from '../language/note.js';

export interface Sender {
  /** Channel and the channel's own id: `telegram:77`, `terminal:here`. */
  readonly id: string;
  /** As the person is called in the channel. */
  readonly name: string;
}

/** What reached us that is no note; each gets one kind line. */
export type OtherMatter =
  'photo' | 'sticker' | 'forwarded' | 'document' | 'video' | 'contact' | 'poll' | 'other';

/** One message, edit or press of a button. */
export interface Incoming {
  /** Channel and the channel's own id: `telegram:-1001`, `terminal:here`. */
  readonly chat: string;
  readonly group?: boolean;
  readonly from: Sender;
  /** The channel's number of the message; an edit has the number of what it edits. */
  readonly messageId: number;
  /** When it was sent; of an edit, when the original was. */
  readonly at: Instant;
  /** Unique to this coming-in, also across restarts: replies are keyed by it. */
  readonly key: string;
  readonly text?: string;
  /** The text stands in place of what the same message said before. */
  readonly edited?: boolean;
  /** The message that it replies to; `key` where that one was ours. */
  readonly replyTo?: { readonly messageId: number; readonly key?: string };
  /** A press of a button that this chat was offered; `key` is that of the message which offered it. */
  readonly button?: { readonly data: string; readonly key: string };
  /** Degrees north and east. */
  readonly location?: { readonly latitude: number; readonly longitude: number };
  /** Words of a voice note with their posterior probabilities; `text` holds the same words. */
  readonly heard?: readonly HeardWord[];
  /** Why a voice note has no text. */
  readonly unheard?: string;
  readonly document?: { readonly name: string; readonly bytes: Uint8Array };
  readonly other?: OtherMatter;
}

export interface Button {
  readonly label: string;
  /** 1–64 bytes of UTF-8, and says all that the press means; the occurrence's key for a prompt. */
  readonly data: string;
}

export interface Attachment {
  readonly kind: 'picture' | 'document';
  readonly name: string;
  readonly bytes: Uint8Array;
}

export interface Outgoing {
  readonly chat: string;
  /** Plain text, of any length: the channel splits it. */
  readonly text: string;
  /** Rows of buttons. */
  readonly buttons?: readonly (readonly Button[])[];
  readonly attachment?: Attachment;
  /** A key that was ever queued is never queued again: of a prompt, its occurrence's. Left out, that of the incoming message and a number. */
  readonly key?: string;
}

/** One turn of the conversation, called inside a transaction that also settles the message and queues the replies. */
export type TakeTurn = (incoming: Incoming) => readonly Outgoing[];
