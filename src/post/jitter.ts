/** Spreads notices that fall due in one minute for many chats: eight o'clock is eight o'clock for a whole town. */
import { createHash } from 'node:crypto';

/** So many chats are served at once; from there on the spread grows with their number. */
const FEW_CHATS = 100;
const MS_PER_CHAT = 50;
const MOST_MS = 5 * 60_000;

/**
 * How long a chat's notices wait past their moment, in milliseconds: always the same for one chat as long as so many are
 * served, never more than five minutes, and nothing for a small bot.
 */
export function jitterMs(chat: string, chats: number): number {
  if (chats < FEW_CHATS) return 0;
  const share = createHash('sha256').update(chat).digest().readUInt32BE(0) / 2 ** 32;
  return Math.floor(share * Math.min(MOST_MS, chats * MS_PER_CHAT));
}
