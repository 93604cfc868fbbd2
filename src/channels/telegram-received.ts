/** What comes in from Telegram, in this program's own terms. */
import type { Speaker } from '../conversation/books/bookkeeping.js';
import type { Incoming } from '../conversation/turn.js';

/** A file that a grower sent; its size and kind are the sender's word. */
export interface SentFile {
  readonly fileId: string;
  readonly name: string;
  /** The sender's word; may be missing. */
  readonly seconds?: number;
  readonly bytes?: number;
}

/** What an update brings. */
export type Received =
  | {
      readonly kind: 'said';
      readonly incoming: Incoming;
      readonly thread?: number;
      readonly voice?: SentFile;
      readonly document?: SentFile;
    }
  | { readonly kind: 'tapped'; readonly tapId: string; readonly incoming: Incoming; readonly thread?: number }
  | { readonly kind: 'moved'; readonly chat: string; readonly to: string }
  | { readonly kind: 'closed'; readonly chat: string }
  | { readonly kind: 'opened'; readonly chat: string }
  /** Someone let the bot into a group. */
  | { readonly kind: 'joined'; readonly speaker: Speaker }
  /** Someone went out of a group, or was sent out. */
  | { readonly kind: 'left'; readonly chat: string; readonly grower: string }
  | { readonly kind: 'nothing' };

/** What is none of this bot's business. */
export const nothing: Received = { kind: 'nothing' };
