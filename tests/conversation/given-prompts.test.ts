/** What a chat remembers of prompts stays small however many seasons it lasts, and nothing that waits is forgotten. */
import { expect, it } from 'vitest';
import { MemoryBooks } from '../../src/conversation/memory-books.js';
import { Session } from '../../src/conversation/session.js';

const DAY = 86_400_000;
const speaker = { chat: 'terminal:here', group: false, from: { id: 'u1', name: 'Bea' } };

/** A chat that says a note, waits, and tells what it remembers of prompts. */
function chat() {
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
  return { say, runFor, prompts };
}

it('forgets the prompts of batches that are gone, and keeps the one that waits', () => {
  const { say, runFor, prompts } = chat();
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

it('forgets that it asked for cuttings of a season long gone, and keeps what it asked lately', () => {
  const { say, runFor, prompts } = chat();
  const varieties = ['Ember Fox', 'Long Wait', 'Marble Wren', 'Copper Lantern'];
  const asksForCuttings = () => prompts().filter(({ open, about }) => open && about.about === 'strike');
  const given = new Set<string>();
  for (let year = 2021; year < 2030; year++) {
    for (const variety of varieties) say(`I want 20 ${variety} dahlia by 20 June ${year}`);
    for (let round = 0; round < 4; round++) {
      runFor(18 * DAY);
      const asked = asksForCuttings();
      expect(asked).not.toEqual([]);
      for (const { occasion } of asked) given.add(occasion);
      for (const variety of varieties) {
        say(`took 4 tip cuttings of ${variety} dahlia in one pot`);
        say(`all the ${variety} died`);
      }
    }
    runFor((365 - 4 * 18) * DAY);
  }
  expect(given.size).toBeGreaterThan(100);
  expect(prompts().length).toBeLessThanOrEqual(70);
});
