/** What an update from Telegram means, read without trust in its types. */
import type { Incoming } from '../conversation/turn.js';
import { noteOfCommand } from './chat-commands.js';
import type { Message, Update } from './telegram.js';

/** A file that a grower sent; its size and kind are the sender's word. */
export interface SentFile {
  readonly fileId: string;
  readonly name: string;
  /** The sender's word; may be missing. */
  readonly seconds?: number;
  readonly bytes?: number;
}

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

type Speaker = Pick<Incoming, 'chat' | 'from' | 'group' | 'title'>;

export interface BotSelf {
  readonly id: number;
  readonly username: string;
}

/** An update of a shape that the Bot API does not give. */
export class BadUpdate extends Error {}

const nothing: Received = { kind: 'nothing' };

/** Id of the chat that an update belongs to, so that a chat's updates are handled in order; '' where it belongs to none. */
export function chatOfUpdate(update: Update): string {
  const chat =
    update.message?.chat ??
    update.edited_message?.chat ??
    update.callback_query?.message?.chat ??
    update.my_chat_member?.chat ??
    update.chat_member?.chat;
  return typeof chat?.id === 'number' ? chatId(chat.id) : '';
}

export function chatId(id: number | string): string {
  return `telegram:${id}`;
}

/** Reads an update; `receivedAt` (ms) dates a press, which carries no time. Throws `BadUpdate`. */
export function readUpdate(update: Update, self: BotSelf, receivedAt: number): Received {
  if (update.message) return readMessage(update.message, self, false);
  if (update.edited_message) return readMessage(update.edited_message, self, true);
  if (update.callback_query) return readTap(update.callback_query, receivedAt);
  if (update.my_chat_member) return readMembership(update.my_chat_member);
  if (update.chat_member) return readOthersMembership(update.chat_member);
  return nothing;
}

function readMessage(message: Message, self: BotSelf, edited: boolean): Received {
  const chat = chatId(integer(message.chat?.id));
  if (message.migrate_to_chat_id !== undefined)
    return {
      kind: 'moved',
      chat: chatId(groupId(message.chat.id)),
      to: chatId(groupId(message.migrate_to_chat_id)),
    };
  // The bot is told of its own going by its membership.
  if (message.left_chat_member && message.left_chat_member.id !== self.id)
    return { kind: 'left', chat, grower: senderOf(message.left_chat_member).id };
  if (!message.from || message.from.is_bot) return nothing;
  const group = isGroup(message.chat, message.from);
  const written = message.text ?? message.caption;
  if (written !== undefined && typeof written !== 'string') throw new BadUpdate('text');
  const text = written === undefined ? undefined : withoutMention(written, self.username);
  if (group && !isForUs(message, text, written, self)) return nothing;
  const content = contentOf(message, text);
  if (!content || (edited && content.text === undefined)) return nothing;
  const { voice, document, ...said } = content;
  const replied = message.reply_to_message;
  return {
    kind: 'said',
    incoming: {
      chat,
      group,
      ...titleOf(message.chat),
      from: senderOf(message.from),
      message: String(integer(message.message_id)),
      at: integer(message.date) * 1000,
      ...(edited ? { edited } : {}),
      ...(replied ? { replyTo: String(integer(replied.message_id)) } : {}),
      ...said,
    },
    ...threadOf(message),
    ...(voice ? { voice } : {}),
    ...(document ? { document } : {}),
  };
}

/** In a group, what is said to others is not ours to log, even where the bot gets to read it. */
function isForUs(
  message: Message,
  text: string | undefined,
  written: string | undefined,
  self: BotSelf,
): boolean {
  if (message.reply_to_message?.from?.id === self.id) return true;
  if (written === undefined) return false;
  const command = /^\/\w{1,32}(?:@(\w{1,64}))?/.exec(written);
  if (command) return command[1] === undefined || command[1].toLowerCase() === self.username.toLowerCase();
  return text !== written;
}

type Content = Pick<Incoming, 'text' | 'location' | 'other'> & {
  readonly voice?: SentFile;
  readonly document?: SentFile;
};

function saidSize({ duration, file_size }: { duration?: unknown; file_size?: unknown }): Partial<SentFile> {
  return {
    ...(typeof duration === 'number' ? { seconds: duration } : {}),
    ...(typeof file_size === 'number' ? { bytes: file_size } : {}),
  };
}

function contentOf(message: Message, text: string | undefined): Content | null {
  if (message.forward_origin) return { other: 'forwarded' };
  if (text !== undefined) return { text: noteOfCommand(text) };
  if (message.venue || message.location) {
    const { latitude, longitude } = message.venue?.location ?? message.location ?? {};
    return { location: { latitude: degrees(latitude, 90), longitude: degrees(longitude, 180) } };
  }
  const sound = message.voice ?? message.audio;
  if (sound) return { voice: { fileId: string(sound.file_id), name: 'voice', ...saidSize(sound) } };
  if (message.photo) return { other: 'photo' };
  if (message.sticker) return { other: 'sticker' };
  // An animation comes with a document as well, for the sake of old clients.
  if (message.document && !message.animation)
    return {
      document: { fileId: string(message.document.file_id), name: plainName(message.document.file_name) },
    };
  const seen = ['animation', 'video', 'video_note', 'contact', 'poll', 'dice', 'story', 'game', 'paid_media'];
  return seen.some((kind) => kind in message) ? { other: 'unknown' } : null;
}

function readTap(tap: NonNullable<Update['callback_query']>, receivedAt: number): Received {
  if (!tap.message || tap.data === undefined || tap.from.is_bot) return nothing;
  return {
    kind: 'tapped',
    tapId: string(tap.id),
    incoming: {
      chat: chatId(integer(tap.message.chat.id)),
      group: isGroup(tap.message.chat, tap.from),
      ...titleOf(tap.message.chat),
      from: senderOf(tap.from),
      message: String(integer(tap.message.message_id)),
      at: receivedAt,
      tap: string(tap.data),
    },
    ...threadOf(tap.message as Message),
  };
}

type Membership = NonNullable<Update['my_chat_member']>;

function readMembership({ chat, from, old_chat_member, new_chat_member }: Membership): Received {
  const id = chatId(integer(chat.id));
  if (isOut(new_chat_member)) return { kind: 'closed', chat: id };
  if (chat.type === 'private' || !isOut(old_chat_member) || from.is_bot) return { kind: 'opened', chat: id };
  return {
    kind: 'joined',
    speaker: { chat: id, group: true, from: senderOf(from), ...titleOf(chat) },
  };
}

/** Told only to a bot that is an administrator of the group; others hear of it by the group's own message. */
function readOthersMembership({ chat, new_chat_member }: Membership): Received {
  return isOut(new_chat_member) && !new_chat_member.user.is_bot
    ? { kind: 'left', chat: chatId(integer(chat.id)), grower: senderOf(new_chat_member.user).id }
    : nothing;
}

function isOut(member: Membership['new_chat_member'] | undefined): boolean {
  if (member?.status === 'restricted') return !member.is_member;
  return member?.status === 'left' || member?.status === 'kicked';
}

function titleOf(chat: { readonly title?: unknown }): { title?: string } {
  return typeof chat.title === 'string' && chat.title.trim() !== '' ? { title: chat.title } : {};
}

function threadOf(message: Message): { thread?: number } {
  return message.is_topic_message === true && typeof message.message_thread_id === 'number'
    ? { thread: message.message_thread_id }
    : {};
}

function senderOf(from: NonNullable<Message['from']>): Incoming['from'] {
  const name = [from.first_name, from.last_name].filter((part) => typeof part === 'string').join(' ');
  return { id: `telegram:${integer(from.id)}`, name: name.trim().slice(0, 64) || String(from.id) };
}

function withoutMention(text: string, username: string): string {
  const mention = `@${username}`.toLowerCase();
  const at = text.toLowerCase().indexOf(mention);
  if (username === '' || at < 0 || /^\/\w{1,32}@/.test(text)) return text;
  const after = text.slice(at + mention.length);
  if (/^\w/.test(after)) return text;
  return `${text.slice(0, at)}${after}`.trim().replace(/^[,:]\s*/, '');
}

/** A name without path and control characters; it is shown and compared, never opened. */
function plainName(name: unknown): string {
  if (typeof name !== 'string') return 'document';
  const last =
    name
      .split(/[\\/]/)
      .at(-1)
      ?.replace(/\p{Cc}/gu, '') ?? '';
  return last.slice(0, 100) || 'document';
}

/** A chat of one has its person's number, a group one below nothing: with any other, someone would write in another's chat. */
function isGroup({ id, type }: Message['chat'], from: NonNullable<Message['from']>): boolean {
  if (type === 'private' ? id !== from.id : !(id < 0)) throw new BadUpdate('chat');
  return type !== 'private';
}

function groupId(value: unknown): number {
  const id = integer(value);
  if (id >= 0) throw new BadUpdate('group');
  return id;
}

function integer(value: unknown): number {
  if (typeof value !== 'number' || !Number.isSafeInteger(value)) throw new BadUpdate('number');
  return value;
}

function string(value: unknown): string {
  if (typeof value !== 'string') throw new BadUpdate('string');
  return value;
}

function degrees(value: unknown, most: number): number {
  if (typeof value !== 'number' || !(Math.abs(value) <= most)) throw new BadUpdate('degrees');
  return value;
}
