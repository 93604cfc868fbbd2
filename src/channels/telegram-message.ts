/** What a message from Telegram says, and whether it is said to this bot. */
import type { Incoming } from '../conversation/turn.js';
import { noteOfCommand } from './chat-commands.js';
import type { Message } from './telegram.js';
import {
  BadUpdate,
  chatId,
  degreesOf,
  groupId,
  integerOf,
  isGroup,
  senderOf,
  textOf,
  threadOf,
  titleOf,
} from './telegram-fields.js';
import { nothing, type Received, type SentFile } from './telegram-received.js';

/** The bot as the Bot API names it. */
export interface BotSelf {
  readonly id: number;
  readonly username: string;
}

/** Reads a message, sent or `edited`. Throws `BadUpdate`. */
export function readMessage(message: Message, self: BotSelf, edited: boolean): Received {
  const chat = chatId(integerOf(message.chat?.id));
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
      message: String(integerOf(message.message_id)),
      at: integerOf(message.date) * 1000,
      ...(edited ? { edited } : {}),
      ...(replied ? { replyTo: String(integerOf(replied.message_id)) } : {}),
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

function contentOf(message: Message, text: string | undefined): Content | null {
  if (message.forward_origin) return { other: 'forwarded' };
  if (text !== undefined) return { text: noteOfCommand(text) };
  if (message.venue || message.location) {
    const { latitude, longitude } = message.venue?.location ?? message.location ?? {};
    return { location: { latitude: degreesOf(latitude, 90), longitude: degreesOf(longitude, 180) } };
  }
  const sound = message.voice ?? message.audio;
  if (sound) return { voice: { fileId: textOf(sound.file_id), name: 'voice', ...saidSize(sound) } };
  if (message.photo) return { other: 'photo' };
  if (message.sticker) return { other: 'sticker' };
  // An animation comes with a document as well, for the sake of old clients.
  if (message.document && !message.animation)
    return {
      document: { fileId: textOf(message.document.file_id), name: plainName(message.document.file_name) },
    };
  const seen = ['animation', 'video', 'video_note', 'contact', 'poll', 'dice', 'story', 'game', 'paid_media'];
  return seen.some((kind) => kind in message) ? { other: 'unknown' } : null;
}

function saidSize({ duration, file_size }: { duration?: unknown; file_size?: unknown }): Partial<SentFile> {
  return {
    ...(typeof duration === 'number' ? { seconds: duration } : {}),
    ...(typeof file_size === 'number' ? { bytes: file_size } : {}),
  };
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
