/** Inbox and outbox: taken once, said once, in order, and remembered across a crash. */
import { describe, expect, it } from 'vitest';
import { openDatabase } from '../../src/ledger/database.js';
import { createLedger } from '../../src/ledger/ledgers.js';
import { closeChat, moveChat, pointChat, reopenChat } from '../../src/ledger/chats.js';
import { migrate } from '../../src/ledger/migrations.js';
import { Inbox } from '../../src/post/inbox.js';
import { Outbox, type Letter } from '../../src/post/outbox.js';

function freshDatabase() {
  const database = openDatabase(':memory:');
  migrate(database, ':memory:');
  createLedger(database, 'own', null, 0);
  return database;
}

function letter(key: string, more: Partial<Letter> = {}): Letter {
  return { key, chat: 'telegram:1', kind: 'notice', body: '{}', dueAt: 100, ...more };
}

const arrival = { bot: '7', updateId: 3, chat: 'telegram:1', body: '{"update_id":3}' };

describe('the inbox', () => {
  it('takes an update that is delivered twice once', () => {
    const inbox = new Inbox(freshDatabase());
    expect(inbox.take([arrival], 0)).toEqual([arrival]);
    expect(inbox.take([arrival, { ...arrival, updateId: 4 }], 1)).toEqual([{ ...arrival, updateId: 4 }]);
  });

  it('gives back after a crash what was not dealt with', () => {
    const inbox = new Inbox(freshDatabase());
    inbox.take([arrival, { ...arrival, updateId: 4 }, { ...arrival, updateId: 5 }], 0);
    inbox.settle(arrival, 1);
    inbox.setAside({ ...arrival, updateId: 4 }, 'TypeError', 1);
    expect(inbox.waiting('7')).toEqual([{ ...arrival, updateId: 5 }]);
  });

  it('forgets an update number before the Bot API may give it out again', () => {
    const inbox = new Inbox(freshDatabase());
    inbox.take([arrival], 0);
    inbox.settle(arrival, 0);
    inbox.prune(2 * 86_400_000);
    expect(inbox.take([arrival], 0)).toEqual([]);
    inbox.prune(6 * 86_400_000);
    expect(inbox.take([arrival], 0)).toEqual([arrival]);
  });
});

describe('the outbox', () => {
  it('queues a key once, also after it was sent', () => {
    const outbox = new Outbox(freshDatabase());
    expect(outbox.queue(letter('a'), 0)).toBe(true);
    expect(outbox.queue(letter('a'), 0)).toBe(false);
    outbox.markSent(1, '900', 100);
    expect(outbox.queue(letter('a'), 200)).toBe(false);
    expect(outbox.keyOfMessage('telegram:1', '900')).toBe('a');
  });

  it('yields what is due, oldest first, and passes over the chats it is told to', () => {
    const outbox = new Outbox(freshDatabase());
    outbox.queue(letter('later', { dueAt: 101 }), 0);
    outbox.queue(letter('first', { chat: 'telegram:2' }), 0);
    outbox.queue(letter('second'), 0);
    outbox.queue(letter('elsewhere', { chat: 'terminal' }), 0);
    const keys = (...passingOver: string[]) =>
      outbox.due('telegram', 'notice', 100, passingOver, 9).map(({ key }) => key);
    expect(keys()).toEqual(['first', 'second']);
    expect(keys('telegram:2')).toEqual(['second']);
    expect(outbox.nextDueAt(100)).toBe(101);
  });

  it('names what a crash left in doubt', () => {
    const outbox = new Outbox(freshDatabase());
    outbox.queue(letter('a'), 0);
    outbox.queue(letter('b'), 0);
    outbox.claim(1, 100);
    expect(outbox.doubtful()).toEqual(['a']);
    expect(outbox.due('telegram', 'notice', 100, [], 9).map(({ key, tries }) => [key, tries])).toEqual([
      ['a', 1],
      ['b', 0],
    ]);
  });

  it('holds what waits for a closed chat until the chat opens again', () => {
    const database = freshDatabase();
    const outbox = new Outbox(database);
    pointChat(database, 'telegram:1', 1);
    outbox.queue(letter('a'), 0);
    closeChat(database, 'telegram:1', 'blocked', 50);
    expect(outbox.due('telegram', 'notice', 100, [], 9)).toEqual([]);
    reopenChat(database, 'telegram:1');
    expect(outbox.due('telegram', 'notice', 100, [], 9)).toHaveLength(1);
  });

  it('knows which buttons a chat was offered, also after the group moved', () => {
    const database = freshDatabase();
    const outbox = new Outbox(database);
    pointChat(database, 'telegram:-1', 1);
    outbox.queue(
      letter('check/EF1', { chat: 'telegram:-1', offers: [{ data: '#1', means: 'check/EF1=all' }] }),
      0,
    );
    expect(outbox.offerOf('telegram:-1', '#1')).toEqual({ key: 'check/EF1', means: 'check/EF1=all' });
    expect(outbox.offerOf('telegram:2', '#1')).toBeUndefined();
    moveChat(database, 'telegram:-1', 'telegram:-100');
    expect(outbox.offerOf('telegram:-100', '#1')?.key).toBe('check/EF1');
    expect(outbox.due('telegram', 'notice', 100, [], 9)[0]?.chat).toBe('telegram:-100');
  });
});

describe('what was settled long ago', () => {
  const DAY_MS = 86_400_000;

  it('is forgotten by the outbox after 90 days, buttons and all; what waits never is', () => {
    const database = freshDatabase();
    const outbox = new Outbox(database);
    pointChat(database, 'telegram:1', 1);
    outbox.queue(letter('old', { offers: [{ data: 'a', means: 'a' }] }), 0);
    outbox.queue(letter('young', { offers: [{ data: 'b', means: 'b' }] }), 0);
    outbox.queue(letter('waiting', { offers: [{ data: 'c', means: 'c' }] }), 0);
    outbox.markSent(1, '900', 0);
    outbox.markSent(2, '901', 2 * DAY_MS);
    outbox.prune(91 * DAY_MS);
    expect(database.all('SELECT key FROM outbox ORDER BY seq')).toEqual([
      { key: 'young' },
      { key: 'waiting' },
    ]);
    expect(['a', 'b', 'c'].map((data) => outbox.offerOf('telegram:1', data)?.key)).toEqual([
      undefined,
      'young',
      'waiting',
    ]);
  });

  it('is forgotten by the inbox after 90 days where it was set aside', () => {
    const database = freshDatabase();
    const inbox = new Inbox(database);
    inbox.take([arrival], 0);
    inbox.setAside(arrival, 'TypeError', 0);
    inbox.prune(89 * DAY_MS);
    expect(database.all('SELECT fault FROM inbox')).toHaveLength(1);
    inbox.prune(91 * DAY_MS);
    expect(database.all('SELECT fault FROM inbox')).toEqual([]);
  });
});
