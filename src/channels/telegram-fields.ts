/** Fields of an update, each held to the type that the Bot API promises. */
import type { Incoming } from '../conversation/turn.js';
import type { Message } from './telegram.js';

/** An update of a shape that the Bot API does not give. */
export class BadUpdate extends Error {}

/** How a chat is named where other channels have chats too. */
export function chatId(id: number | string): string {
  return `telegram:${id}`;
}

/** What a group is called. */
export function titleOf(chat: { readonly title?: unknown }): { title?: string } {
  return typeof chat.title === 'string' && chat.title.trim() !== '' ? { title: chat.title } : {};
}

/** The topic of a group that a message stands in. */
export function threadOf(message: Message): { thread?: number } {
  return message.is_topic_message === true && typeof message.message_thread_id === 'number'
    ? { thread: message.message_thread_id }
    : {};
}

/** Who sent something, under a name that can be shown. Throws `BadUpdate`. */
export function senderOf(from: NonNullable<Message['from']>): Incoming['from'] {
  const name = [from.first_name, from.last_name].filter((part) => typeof part === 'string').join(' ');
  return { id: `telegram:${integerOf(from.id)}`, name: name.trim().slice(0, 64) || String(from.id) };
}

/**
 * A chat of one has its person's number, a group one below nothing: with any other, someone would write in another's
 * chat. Throws `BadUpdate`.
 */
export function isGroup({ id, type }: Message['chat'], from: NonNullable<Message['from']>): boolean {
  if (type === 'private' ? id !== from.id : !(id < 0)) throw new BadUpdate('chat');
  return type !== 'private';
}

/** A group's number, which is below nothing. Throws `BadUpdate`. */
export function groupId(value: unknown): number {
  const id = integerOf(value);
  if (id >= 0) throw new BadUpdate('group');
  return id;
}

/** A whole number. Throws `BadUpdate`. */
export function integerOf(value: unknown): number {
  if (typeof value !== 'number' || !Number.isSafeInteger(value)) throw new BadUpdate('number');
  return value;
}

/** A text. Throws `BadUpdate`. */
export function textOf(value: unknown): string {
  if (typeof value !== 'string') throw new BadUpdate('string');
  return value;
}

/** A latitude or longitude of `most` degrees either way. Throws `BadUpdate`. */
export function degreesOf(value: unknown, most: number): number {
  if (typeof value !== 'number' || !(Math.abs(value) <= most)) throw new BadUpdate('degrees');
  return value;
}
