import { describe, expect, it } from 'vitest';
import { jitterMs } from '../../src/post/jitter.js';

const chats = Array.from({ length: 2_000 }, (_, n) => `telegram:${n}`);

describe('notices of many chats', () => {
  it('of a small bot wait for nothing', () => {
    for (const chat of chats.slice(0, 99)) expect(jitterMs(chat, 99)).toBe(0);
  });

  it('wait no longer than fifty milliseconds a chat, five minutes at most, and each chat always the same', () => {
    for (const chat of chats) {
      const wait = jitterMs(chat, 2_000);
      expect(wait).toBeGreaterThanOrEqual(0);
      expect(wait).toBeLessThan(100_000);
      expect(jitterMs(chat, 2_000)).toBe(wait);
      expect(jitterMs(chat, 1_000_000)).toBeLessThan(300_000);
    }
  });

  it('are spread evenly: no tenth of the time has more than a fifth more than its share', () => {
    const tenths = new Array<number>(10).fill(0);
    for (const chat of chats) {
      const tenth = Math.floor(jitterMs(chat, 2_000) / 10_000);
      tenths[tenth] = (tenths[tenth] ?? 0) + 1;
    }
    for (const tenth of tenths) expect(tenth).toBeLessThanOrEqual(240);
  });
});
