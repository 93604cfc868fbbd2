/** One digest on each local day that has work, through the whole conversation, whatever the clocks do. */
import { describe, expect, it } from 'vitest';
import { addDays, asDay, type Day } from '../../src/calendar/day.js';
import { instantAt, localDay, localTime } from '../../src/calendar/zone.js';
import { MemoryBooks } from '../../src/conversation/books/memory-books.js';
import { Session } from '../../src/conversation/books/session.js';

const speaker = { chat: 'terminal:here', group: false, from: { id: 'u1', name: 'Bea' } };

/** A chat with a reminder on each of so many days, its clock moved from one moment to the next. */
function chat(zone: string, from: Day, count: number) {
  const books = new MemoryBooks({ zone, digestAt: '08:00', quiet: ['21:00', '07:30'] });
  const session = new Session(books, zone);
  let now = instantAt(addDays(from, -1), '12:00', zone);
  let message = 0;
  const said: { zone: string; day: Day; time: string }[] = [];
  const say = (text: string) => {
    now += 61_000;
    session.turn({ ...speaker, message: String(++message), at: now, text }, now);
  };
  for (let n = 0; n < count; n++) say(`remind me on ${addDays(from, n)} to water row ${n}`);
  return {
    said,
    say,
    /** Lets the clock run on, stopping wherever something is to be said. */
    runUntil(end: number, inZone: string) {
      for (;;) {
        const next = session.nextMoment(speaker, now);
        if (next === null || next > end) break;
        now = Math.max(now, next);
        const before = books.sent.length;
        session.prompt(speaker, now);
        if (books.sent.length > before)
          said.push({ zone: inZone, day: localDay(now, inZone), time: localTime(now, inZone) });
        else now += 60_000;
      }
      now = Math.max(now, end);
    },
  };
}

describe('days with work', () => {
  it.each([
    ['Europe/London', '2026-03-26', 6],
    ['Europe/London', '2026-10-22', 6],
    ['Australia/Lord_Howe', '2026-04-02', 6],
    ['America/Santiago', '2026-09-03', 6],
    ['Asia/Kathmandu', '2026-06-01', 4],
    ['Pacific/Apia', '2011-12-27', 7],
  ])('in %s from %s have one message each, at the hour asked for', (zone, first, count) => {
    const from = asDay(first);
    const { said, runUntil } = chat(zone, from, count);
    runUntil(instantAt(addDays(from, count + 1), '12:00', zone), zone);
    const expected = Array.from({ length: count }, (_, n) => addDays(from, n)).filter(
      (day) => localDay(instantAt(day, '08:00', zone), zone) === day,
    );
    expect(said.map(({ day }) => day)).toEqual(expected);
    expect(new Set(said.map(({ time }) => time))).toEqual(new Set(['08:00']));
  });

  it('of a grower who flies across the date line are never told twice nor skipped', () => {
    const from = asDay('2026-06-01');
    const { said, say, runUntil } = chat('Pacific/Auckland', from, 8);
    runUntil(instantAt(asDay('2026-06-03'), '12:00', 'Pacific/Auckland'), 'Pacific/Auckland');
    say('my zone is America/Los_Angeles');
    runUntil(instantAt(asDay('2026-06-05'), '12:00', 'America/Los_Angeles'), 'America/Los_Angeles');
    say('my zone is Pacific/Auckland');
    runUntil(instantAt(asDay('2026-06-09'), '12:00', 'Pacific/Auckland'), 'Pacific/Auckland');
    const days = said.map(({ day }) => day);
    expect(new Set(days).size).toBe(days.length);
    // Noon of the 5th in Los Angeles is seven in the morning of the 6th in Auckland: that day has its hour still ahead.
    expect(days).toEqual(Array.from({ length: 8 }, (_, n) => addDays(from, n)));
  });
});
