/** Sendings keep under what the Bot API takes: 25 a second, 1 a second in a chat, 20 a minute in a group. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Pace, telegramPace, unhurried } from '../../src/post/pace.js';

/** Sends as fast as the pace lets it, to chats in turn, and answers when each went (ms). */
function sendAll(chats: readonly string[], count: number, group: boolean): { chat: string; at: number }[] {
  const pace = new Pace(telegramPace, 0);
  const free = new Map<string, number>();
  const sent: { chat: string; at: number }[] = [];
  let now = 0;
  for (let index = 0; index < count; index++) {
    const chat = chats[index % chats.length] ?? '';
    now = Math.max(now, free.get(chat) ?? 0);
    now += pace.waitMs(now);
    free.set(chat, now + pace.spend(chat, group, now));
    sent.push({ chat, at: now });
  }
  return sent;
}

function mostWithin(times: readonly number[], windowMs: number): number {
  return Math.max(...times.map((from) => times.filter((at) => at >= from && at < from + windowMs).length));
}

describe('the pace', () => {
  it('stays at 30 a second or fewer over all chats, and keeps 25 up', () => {
    const chats = Array.from({ length: 200 }, (_, index) => `telegram:${index}`);
    const times = sendAll(chats, 500, false).map(({ at }) => at);
    expect(mostWithin(times, 1000)).toBeLessThanOrEqual(30);
    expect(500 / ((times.at(-1) ?? 0) / 1000)).toBeGreaterThan(24);
  });

  it('never sends a second message to a chat within a second', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8 }), (count) => {
        const chats = Array.from({ length: count }, (_, index) => `telegram:${index}`);
        const sent = sendAll(chats, 40, false);
        for (const chat of chats)
          expect(
            mostWithin(
              sent.filter((each) => each.chat === chat).map(({ at }) => at),
              999,
            ),
          ).toBe(1);
      }),
    );
  });

  it('sends a group at most 20 a minute', () => {
    const times = sendAll(['telegram:-1'], 70, true).map(({ at }) => at);
    expect(mostWithin(times, 60_000)).toBeLessThanOrEqual(20);
  });

  it('lets a channel without limits send at once', () => {
    const pace = new Pace(unhurried, 0);
    for (let count = 0; count < 100; count++) {
      expect(pace.waitMs(0)).toBe(0);
      expect(pace.spend('terminal', false, 0)).toBe(0);
    }
  });
});
