/** A weather station's file sent into a chat. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { MemoryBooks } from '../../src/conversation/books/memory-books.js';
import { Session } from '../../src/conversation/books/session.js';
import { stationMinima } from '../../src/exchange/station-minima.js';

const chicago = readFileSync(new URL('../../fixtures/weather/chicago-daily.csv', import.meta.url));

function chat() {
  const books = new MemoryBooks();
  const session = new Session(books, 'America/Chicago');
  const speaker = { chat: 'terminal:here', group: false, from: { id: 'u1', name: 'Bea' } };
  let message = 0;
  return (said: { text?: string; bytes?: Uint8Array }) => {
    const at = Date.UTC(2026, 2, 10, 15) + message * 120_000;
    const read = said.bytes && stationMinima(said.bytes);
    const before = books.sent.length;
    session.turn(
      {
        ...speaker,
        message: String(++message),
        at,
        ...(said.text === undefined ? {} : { text: said.text }),
        ...(read ? { weather: 'refused' in read ? read : { ...read, flagged: read.skipped.flagged } } : {}),
      },
      at,
    );
    return books.sent
      .slice(before)
      .map(({ text }) => text)
      .join('\n');
  };
}

describe('a file of daily minima sent into the chat', () => {
  it('is read, gives the days at both risks, and outranks the usual day from then on', () => {
    const say = chat();
    const reply = say({ bytes: chicago });
    expect(reply).toContain('5,698 daily minima read, taken to be in °F.');
    expect(reply).toMatch(
      /Spring: frost after Apr \d+ in one year of two, after (?:Apr|May) \d+ in one of ten\./,
    );
    expect(reply).toMatch(/Autumn: frost before Oct \d+ in one year of two, before Oct \d+ in one of ten\./);
    expect(reply).toContain('counting 36 °F or below, as the ground freezes before the air does');
    say({ text: 'last frost 20 May' });
    expect(say({ text: 'when is it safe to plant out?' })).toContain('daily minima');
  });

  it('that cannot be read is answered with what to do', () => {
    const say = chat();
    expect(say({ bytes: new TextEncoder().encode('2020-01-01,3,4\n') })).toMatch(
      /Head them “date” and “min”/,
    );
    expect(say({ bytes: new Uint8Array([0x89, 0x50, 0xff]) })).toMatch(/text file \(CSV\)/);
  });
});
