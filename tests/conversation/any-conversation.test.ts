/** Whatever is said, tapped, edited and restarted, the ledger adds up, and all of it can be undone. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asDay } from '../../src/calendar/day.js';
import { instantAt } from '../../src/calendar/zone.js';
import { MemoryBooks } from '../../src/conversation/books/memory-books.js';
import { batchRecord } from '../../src/conversation/replays/record.js';
import { Session } from '../../src/conversation/books/session.js';
import { fold } from '../../src/ledger/fold.js';
import { lastDeed } from '../../src/conversation/books/history.js';

const zone = 'Europe/London';
const speaker = { chat: 'c', group: false, from: { id: 'g', name: 'Bea' } };

type Step =
  | { readonly do: 'say'; readonly text: string }
  | { readonly do: 'edit'; readonly of: number; readonly text: string }
  | { readonly do: 'tap'; readonly message: number; readonly button: number }
  | { readonly do: 'reply'; readonly message: number; readonly text: string }
  | { readonly do: 'wait'; readonly days: number }
  | { readonly do: 'restart' };

const plants = fc.constantFrom('Ember Fox dahlia', 'Marble Wren fuchsia', 'Copper Lantern dahlia');
const names = fc.constantFrom('Ember Fox', 'Marble Wren', 'Copper Lantern', 'EF1', 'MW1', 'EF2', 'them');
const count = fc.integer({ min: 0, max: 14 });
const text = fc.oneof(
  fc.tuple(count, plants).map(([n, plant]) => `took ${n} cuttings of ${plant}`),
  fc.tuple(count, names).map(([n, name]) => `lost ${n} of ${name}`),
  fc.tuple(count, names).map(([n, name]) => `${n} of ${name} have rooted`),
  fc.tuple(count, names).map(([n, name]) => `potted on ${n} ${name}`),
  fc.tuple(count, names).map(([n, name]) => `planted out ${n} ${name}`),
  fc.tuple(count, names).map(([n, name]) => `gave ${n} ${name} to Nell`),
  names.map((name) => `potted on the ${name}`),
  names.map((name) => `split 2 off ${name}`),
  fc.constantFrom(
    'merge EF1 and EF2',
    'undo',
    'undo',
    'undo',
    'yes',
    'no',
    'all',
    'none yet',
    'make that four',
    'make that 12',
  ),
  fc.constantFrom(
    'it was yesterday',
    'some',
    'EF1',
    'the older one',
    'leave it',
    'Ember Fox',
    'all but one',
    'what’s due?',
  ),
  count.map(String),
  fc.string({ maxLength: 30 }),
);
const step: fc.Arbitrary<Step> = fc.oneof(
  { weight: 6, arbitrary: text.map((each): Step => ({ do: 'say', text: each })) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('edit' as const), of: fc.nat({ max: 20 }), text }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('tap' as const), message: fc.nat({ max: 6 }), button: fc.nat({ max: 4 }) }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('reply' as const), message: fc.nat({ max: 6 }), text }) },
  { weight: 1, arbitrary: fc.integer({ min: 1, max: 20 }).map((days): Step => ({ do: 'wait', days })) },
  { weight: 1, arbitrary: fc.constant<Step>({ do: 'restart' }) },
); // prettier-ignore

/** A grower's chat that can be restarted: the books stay, the session is new. */
class Chat {
  readonly books = new MemoryBooks({ zone });
  session = new Session(this.books, zone);
  now = instantAt(asDay('2026-03-02'), '09:00', zone);
  messages = 0;
  readonly spoken: MemoryBooks['sent'] = [];

  take(step: Step): void {
    this.now += 90_000;
    if (step.do === 'wait') this.wait(step.days);
    else if (step.do === 'restart') this.session = new Session(this.books, zone);
    else if (step.do === 'say') this.turn({ message: String(++this.messages), text: step.text });
    else if (step.do === 'edit' && this.messages > 0)
      this.turn({ message: String(1 + (step.of % this.messages)), text: step.text, edited: true });
    else if (step.do === 'tap') {
      const said = this.spoken.at(-1 - step.message);
      const buttons = (said?.buttons ?? []).flat();
      const button = buttons[step.button % Math.max(1, buttons.length)];
      if (said && button) this.turn({ message: `tap${this.now}`, tap: button.data, answers: said.key });
    } else if (step.do === 'reply') {
      const said = this.spoken.at(-1 - step.message);
      if (said) this.turn({ message: String(++this.messages), text: step.text, answers: said.key });
    }
  }

  turn(what: { message: string; text?: string; edited?: boolean; tap?: string; answers?: string }): void {
    this.session.turn({ ...speaker, at: this.now, ...what }, this.now);
    this.spoken.push(...this.books.sent.splice(0));
  }

  wait(days: number): void {
    const until = this.now + days * 86_400_000;
    for (let turns = 0; turns < 200; turns++) {
      const next = this.session.nextMoment(speaker, this.now);
      if (next === null || next > until) break;
      this.now = next;
      this.session.prompt(speaker, this.now);
      this.spoken.push(...this.books.sent.splice(0));
    }
    this.now = until;
  }

  world() {
    return this.session.world(speaker, this.now);
  }
}

describe('any sequence of notes, answers, taps, undos, edits and restarts', () => {
  it('keeps alive = struck − lost − dispatched ≥ 0, loses no batch, and replays to the same state', () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 25 }), (steps) => {
        const chat = new Chat();
        for (const each of steps) {
          const before = chat.world();
          chat.take(each);
          const { ledger, journal } = chat.world();
          for (const batch of [...ledger.batches.values()].map(batchRecord)) {
            expect(batch.alive).toBe(batch.count - batch.lost - batch.dispatched);
            expect(batch.alive).toBeGreaterThanOrEqual(0);
            expect(batch.rooted).toBeLessThanOrEqual(batch.count);
            expect(batch.pottedOn).toBeLessThanOrEqual(batch.rooted);
            expect(batch.plantedOut).toBeLessThanOrEqual(batch.pottedOn);
          }
          // The journal only grows, and what it folds to is what the turns arrived at.
          expect(journal.slice(0, before.journal.length)).toEqual(before.journal);
          const anew = fold(journal);
          expect(anew.conflicts).toEqual([]);
          expect([...anew.ledger.batches]).toEqual([...ledger.batches]);
          expect(anew.ledger.standing).toEqual(ledger.standing);
          for (const label of before.ledger.labels) expect(ledger.labels.has(label)).toBe(true);
        }
      }),
      { numRuns: 150 },
    );
  });

  it('comes to the empty ledger when all of it is undone', () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 20 }), (steps) => {
        const chat = new Chat();
        for (const each of steps) chat.take(each);
        for (let turn = 0; turn < 200 && lastDeed(chat.world().journal); turn++) {
          // Each takes an entry back, or leaves a note that still waits for its number.
          const { journal, talk } = chat.world();
          chat.take({ do: 'say', text: 'undo' });
          const now = chat.world();
          const undone = now.journal.length > journal.length;
          expect(undone || now.talk.asks.length < talk.asks.length).toBe(true);
        }
        expect(chat.world().ledger.standing).toEqual([]);
        expect(chat.world().ledger.batches.size).toBe(0);
      }),
      { numRuns: 100 },
    );
  });
});
