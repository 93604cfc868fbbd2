/** A ledger sent into a chat as a document. */
import { describe, expect, it } from 'vitest';
import { MemoryBooks } from '../../src/conversation/books/memory-books.js';
import { Session } from '../../src/conversation/books/session.js';
import { ledgerIn } from '../../src/exchange/bringing-in.js';
import { ledgerJson } from '../../src/exchange/ledger-json.js';

function chat() {
  const books = new MemoryBooks();
  const session = new Session(books, 'Europe/London');
  const speaker = { chat: 'terminal:here', group: false, from: { id: 'u1', name: 'Bea' } };
  let message = 0;
  const moment = () => Date.UTC(2026, 2, 10, 15) + message * 120_000;
  return {
    world: () => session.world(speaker, moment()),
    say(said: { text?: string; file?: string }): string {
      message += 1;
      const at = moment();
      const before = books.sent.length;
      const brought =
        said.file === undefined
          ? null
          : ledgerIn(Buffer.from(said.file), session.world(speaker, at).journal, at);
      const text = said.text === undefined ? {} : { text: said.text };
      session.turn(
        { ...speaker, message: String(message), at, ...text, ...(brought ? { brought } : {}) },
        at,
      );
      return books.sent.slice(before).map((each) => each.text).join('\n'); // prettier-ignore
    },
  };
}

describe('a ledger sent into the chat', () => {
  it('is said what it would add, and taken in on a yes, to the letter', () => {
    const old = chat();
    old.say({ text: 'took 10 cuttings of Ember Fox dahlia' });
    old.say({ text: 'lost 3' });
    const { journal, settings } = old.world();
    const file = ledgerJson({ name: 'own', settings: { ...settings }, journal }, 0);
    const fresh = chat();
    expect(fresh.say({ file })).toMatch(/2 lines to add[\s\S]*Take it in\?/);
    expect(fresh.world().journal).toEqual([]);
    expect(fresh.say({ text: 'yes' })).toMatch(/Taken in: 2 lines/);
    expect(fresh.world().journal).toEqual(journal);
    expect(fresh.say({ text: 'how many Ember Fox?' })).toMatch(/\b7\b/);
  });

  it('changes nothing on a no', () => {
    const { say, world } = chat();
    say({ file: 'date,kind,batch,variety,count\n2026-03-02,strike,EF1,Ember Fox,5\n' });
    expect(say({ text: 'leave it' })).toMatch(/nothing was changed/i);
    expect(world().journal).toEqual([]);
  });

  it('is never mixed with another story', () => {
    const { say } = chat();
    const other = chat();
    say({ text: 'took 10 cuttings of Ember Fox dahlia' });
    other.say({ text: 'took 4 cuttings of Marble Wren dahlia' });
    const { journal } = other.world();
    expect(say({ file: ledgerJson({ name: 'own', settings: {}, journal }, 0) })).toMatch(/another story/);
  });
});
