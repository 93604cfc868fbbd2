/** What a chat remembers of prompts stays small however many seasons it lasts, and nothing that waits is forgotten. */
import { expect, it } from 'vitest';
import { MemoryBooks } from '../../src/conversation/memory-books.js';
import { Session } from '../../src/conversation/session.js';

const DAY = 86_400_000;
const speaker = { chat: 'terminal:here', group: false, from: { id: 'u1', name: 'Bea' } };

it('forgets the prompts of batches that are gone, and keeps the one that waits', () => {
  const books = new MemoryBooks({ zone: 'Europe/London', digestAt: '08:00', quiet: ['21:00', '07:30'] });
  const session = new Session(books, 'Europe/London');
  let now = Date.parse('2021-03-01T10:00:00Z');
  let message = 0;
  const say = (text: string) => {
    now += 61_000;
    session.turn({ ...speaker, message: String(++message), at: now, text }, now);
  };
  const runFor = (ms: number) => {
    const end = now + ms;
    for (;;) {
      const next = session.nextMoment(speaker, now);
      if (next === null || next > end) break;
      now = Math.max(now + 60_000, next);
      session.prompt(speaker, now);
    }
    now = end;
  };
  const prompts = () => session.world(speaker, now).talk.prompts;
  say('took 9 tip cuttings of Long Wait dahlia in one pot');
  runFor(60 * DAY);
  const waiting = prompts().filter(({ open }) => open);
  expect(waiting.map(({ about }) => about.variety)).toContain('Long Wait');
  let given = 0;
  for (let round = 0; round < 100; round++) {
    say('took 4 tip cuttings of Ember Fox dahlia in one pot');
    const before = prompts().length;
    runFor(28 * DAY);
    given += Math.max(0, prompts().length - before);
    say('all the Ember Fox died');
  }
  expect(given).toBeGreaterThan(50);
  expect(prompts().length).toBeLessThanOrEqual(70);
  expect(prompts()).toEqual(expect.arrayContaining(waiting));
});
