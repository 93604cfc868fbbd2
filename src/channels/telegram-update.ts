/** What an update from Telegram means, read without trust in its types. */
import type { Message, Update } from './telegram.js';
import { chatId, integerOf, isGroup, senderOf, textOf, threadOf, titleOf } from './telegram-fields.js';
import { readMembership, readOthersMembership } from './telegram-membership.js';
import { type BotSelf, readMessage } from './telegram-message.js';
import { nothing, type Received } from './telegram-received.js';

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

/** Reads an update; `receivedAt` (ms) dates a press, which carries no time. Throws `BadUpdate`. */
export function readUpdate(update: Update, self: BotSelf, receivedAt: number): Received {
  if (update.message) return readMessage(update.message, self, false);
  if (update.edited_message) return readMessage(update.edited_message, self, true);
  if (update.callback_query) return readTap(update.callback_query, receivedAt);
  if (update.my_chat_member) return readMembership(update.my_chat_member);
  if (update.chat_member) return readOthersMembership(update.chat_member);
  return nothing;
}

function readTap(tap: NonNullable<Update['callback_query']>, receivedAt: number): Received {
  if (!tap.message || tap.data === undefined || tap.from.is_bot) return nothing;
  return {
    kind: 'tapped',
    tapId: textOf(tap.id),
    incoming: {
      chat: chatId(integerOf(tap.message.chat.id)),
      group: isGroup(tap.message.chat, tap.from),
      ...titleOf(tap.message.chat),
      from: senderOf(tap.from),
      message: String(integerOf(tap.message.message_id)),
      at: receivedAt,
      tap: textOf(tap.data),
    },
    ...threadOf(tap.message as Message),
  };
}
