/** A chat in memory: says notes and replies, waits, and tells what was said and what is remembered. */
import { MemoryBooks } from '../../src/conversation/books/memory-books.js';
import { entryRecords } from '../../src/conversation/replays/record.js';
import { Session } from '../../src/conversation/books/session.js';
import type { Incoming, Outgoing } from '../../src/conversation/turn.js';

export const DAY = 86_400_000;
const speaker = { chat: 'terminal:here', group: false, from: { id: 'u1', name: 'Bea' } };

/** Begins on 1 March 2021; each note comes a minute after the one before. */
export function chat() {
  const books = new MemoryBooks({ zone: 'Europe/London', digestAt: '08:00', quiet: ['21:00', '07:30'] });
  const session = new Session(books, 'Europe/London');
  let now = Date.parse('2021-03-01T10:00:00Z');
  let message = 0;
  /** Answers what the bot said to it. */
  const say = (text: string, more: Partial<Incoming> = {}): Outgoing | undefined => {
    now += 61_000;
    books.sent.splice(0);
    session.turn({ ...speaker, message: String(++message), at: now, text, ...more }, now);
    return books.sent.at(-1);
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
  const talk = () => session.world(speaker, now).talk;
  const prompts = () => talk().prompts;
  /** The entries that stand. */
  const entries = () => entryRecords(session.world(speaker, now).ledger);
  return { say, runFor, talk, prompts, entries };
}
