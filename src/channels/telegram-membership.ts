/** Who came into a chat and who went out of it, the bot among them. */
import type { Update } from './telegram.js';
import { chatId, integerOf, senderOf, titleOf } from './telegram-fields.js';
import { nothing, type Received } from './telegram-received.js';

type Membership = NonNullable<Update['my_chat_member']>;

/** Whether the bot may still write here. Throws `BadUpdate`. */
export function readMembership({ chat, from, old_chat_member, new_chat_member }: Membership): Received {
  const id = chatId(integerOf(chat.id));
  if (isOut(new_chat_member)) return { kind: 'closed', chat: id };
  if (chat.type === 'private' || !isOut(old_chat_member) || from.is_bot) return { kind: 'opened', chat: id };
  return {
    kind: 'joined',
    speaker: { chat: id, group: true, from: senderOf(from), ...titleOf(chat) },
  };
}

/**
 * Who else went. Told only to a bot that is an administrator of the group; others hear of it by the group's own message.
 * Throws `BadUpdate`.
 */
export function readOthersMembership({ chat, new_chat_member }: Membership): Received {
  return isOut(new_chat_member) && !new_chat_member.user.is_bot
    ? { kind: 'left', chat: chatId(integerOf(chat.id)), grower: senderOf(new_chat_member.user).id }
    : nothing;
}

function isOut(member: Membership['new_chat_member'] | undefined): boolean {
  if (member?.status === 'restricted') return !member.is_member;
  return member?.status === 'left' || member?.status === 'kicked';
}
