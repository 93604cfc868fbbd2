/** The contract between channels and conversation: what comes in, what goes out, whatever carries it. */
import type { Instant } from '../calendar/clock.js';
import type { LedgerBrought } from './settings/bringing-in.js';
import type { WeatherBrought } from './settings/weather.js';
import type { HeardWord } from '../language/note.js';
import type { Care } from '../ledger/entry.js';

/** Why a voice note could not be heard. */
export type WhyUnheard =
  'tooLong' | 'tooLarge' | 'notAudio' | 'engineMissing' | 'engineFailed' | 'timedOut' | 'notFetched';

/** One thing a grower did in a chat. Exactly one of `text`, `tap`, `location`, `heard`, `document`, `other` is present. */
export interface Incoming {
  /** The channel's id of the chat, stable over restarts: `telegram:123`, `terminal`. */
  readonly chat: string;
  readonly group: boolean;
  /** What a group is called. */
  readonly title?: string;
  readonly from: { readonly id: string; readonly name: string };
  /** The channel's id of the message within the chat; for a tap, of the message that carries the button. */
  readonly message: string;
  /** When the grower sent it, by the channel; an edit keeps its original's moment. */
  readonly at: Instant;
  readonly text?: string;
  /** The text replaces that of an earlier message of the same id. */
  readonly edited?: boolean;
  /** Id of the message that this one answers or quotes. */
  readonly replyTo?: string;
  /** Data of the button that was tapped; the channel has made sure that this chat was offered it. */
  readonly tap?: string;
  /** Key of the outgoing message that this one replies to or whose button it taps, where that was ours. */
  readonly answers?: string;
  readonly location?: { readonly latitude: number; readonly longitude: number };
  /** A voice note, recognised. */
  readonly heard?: {
    readonly words: readonly HeardWord[];
    readonly seconds: number;
    /** Other ways in which it may be heard, the likeliest first. */
    readonly others?: readonly string[];
    /** How far each of the others is behind, in nats. */
    readonly lags?: readonly number[] | undefined;
  };
  readonly document?: { readonly name: string; readonly bytes: Uint8Array };
  /** What that document held, once it was read: a ledger or entries … */
  readonly brought?: LedgerBrought;
  /** … or a weather station's minima, or nothing of use. */
  readonly weather?: WeatherBrought;
  /** Something that cannot be noted: a photo, a sticker, a forwarded post, a voice note that nothing here can hear. */
  readonly other?: 'photo' | 'sticker' | 'forwarded' | 'voice' | 'unknown';
  /** With `other: 'voice'`: why it was not heard. */
  readonly unheard?: WhyUnheard;
}

/** A button: its words, typed or spoken, do what it does. `data` is 1–64 bytes. */
export interface Button {
  readonly label: string;
  readonly data: string;
}

/** What a prompt asks about. */
export interface PromptAbout {
  readonly about: 'check' | 'potOn' | 'pinch' | 'hardenOff' | 'plantOut' | 'strike' | 'tend';
  readonly batch?: string;
  readonly variety?: string;
  readonly crop?: string;
  /** Of a `tend`: what is to be done, and where. */
  readonly care?: Care;
  readonly place?: string;
}

/** Something to say. `key` is unique for ever in its chat: the outbox sends no key twice. */
export interface Outgoing {
  readonly chat: string;
  readonly key: string;
  readonly text: string;
  readonly buttons?: readonly (readonly Button[])[];
  /** Id of the message that this answers, where it answers one. */
  readonly replyTo?: string;
  readonly prompts?: readonly PromptAbout[];
  /** Bytes to go with it; the text is their caption. */
  readonly file?: {
    readonly name: string;
    readonly kind: 'picture' | 'document';
    readonly bytes: Uint8Array;
  };
  /** Sent unasked: goes out only if it is still true at that moment, and within civil hours. */
  readonly unasked?: boolean;
}
