/** Letters are claimed, sent and marked; each outcome of a sending has its consequence. */
import { setTimeout as sleep } from 'node:timers/promises';
import { afterEach, describe, expect, it } from 'vitest';
import { SetClock } from '../../src/calendar/clock.js';
import { chatById, pointChat, reopenChat } from '../../src/ledger/chats.js';
import { openDatabase } from '../../src/ledger/database.js';
import { createLedger } from '../../src/ledger/ledgers.js';
import { migrate } from '../../src/ledger/migrations.js';
import { silentLog } from '../../src/log.js';
import { Delivery, type Recheck, type Sent } from '../../src/post/delivery.js';
import { type Letter, Outbox, type WaitingLetter } from '../../src/post/outbox.js';
import { unhurried } from '../../src/post/pace.js';

const running: Delivery[] = [];
afterEach(async () => {
  for (const delivery of running.splice(0)) await delivery.stop();
});

function setUp(
  send: (letter: WaitingLetter) => Promise<Sent>,
  recheck: (letter: WaitingLetter) => Recheck = () => 'holds',
) {
  const database = openDatabase(':memory:');
  migrate(database, ':memory:');
  createLedger(database, 'own', null, 0);
  for (const chat of ['telegram:1', 'telegram:2', 'telegram:-1']) pointChat(database, chat, 1);
  const outbox = new Outbox(database);
  const clock = new SetClock(1_000);
  const given: string[] = [];
  const delivery = new Delivery({
    channel: 'telegram',
    database,
    outbox,
    clock,
    log: silentLog,
    limits: unhurried,
    isGroup: (chat) => chat.includes('-'),
    send,
    recheck,
    givenUp: ({ key }) => given.push(key),
  });
  running.push(delivery);
  const queue = (key: string, more: Partial<Letter> = {}) =>
    outbox.queue({ key, chat: 'telegram:1', kind: 'reply', body: '{}', dueAt: 0, ...more }, clock.now());
  const outcomes = () =>
    database
      .all<{ key: string; outcome: string | null }>('SELECT key, outcome FROM outbox ORDER BY seq')
      .map(({ key, outcome }) => `${key} ${outcome ?? 'waits'}`);
  return { database, outbox, clock, delivery, queue, outcomes, given };
}

const arrives = (message = '1'): Promise<Sent> => Promise.resolve({ outcome: 'arrived', message });

describe('delivery', () => {
  it('sends replies before notices, those of a chat in order, and marks each', async () => {
    const sent: string[] = [];
    const { delivery, queue, outcomes } = setUp(({ key }) => (sent.push(key), arrives()));
    queue('digest', { kind: 'notice' });
    queue('first');
    queue('second');
    delivery.start();
    await delivery.settled();
    expect(sent).toEqual(['first', 'second', 'digest']);
    expect(outcomes()).toEqual(['digest sent', 'first sent', 'second sent']);
  });

  it('has at most three sendings in flight, and one in a chat', async () => {
    let inFlight = 0;
    let most = 0;
    const { delivery, queue, database } = setUp(async () => {
      most = Math.max(most, ++inFlight);
      await sleep(5);
      inFlight--;
      return { outcome: 'arrived' };
    });
    for (let count = 0; count < 12; count++) {
      pointChat(database, `telegram:9${count % 6}`, 1);
      queue(`${count}`, { chat: `telegram:9${count % 6}` });
    }
    delivery.start();
    await delivery.settled();
    expect(most).toBe(3);
  });

  it('asks again just before sending whether a notice still holds, and the hour is right', async () => {
    const sent: string[] = [];
    const verdicts: Record<string, Recheck> = { moot: 'moot', late: { notBefore: 9_000 } };
    const { delivery, queue, outcomes } = setUp(
      ({ key }) => (sent.push(key), arrives()),
      ({ key }) => verdicts[key] ?? 'holds',
    );
    for (const key of ['moot', 'late', 'due']) queue(key, { kind: 'notice' });
    delivery.start();
    await delivery.settled();
    expect(sent).toEqual(['due']);
    expect(outcomes()).toEqual(['moot moot', 'late waits', 'due sent']);
  });

  it('holds what is not due, and sends it when it is', async () => {
    const sent: string[] = [];
    const { delivery, queue, clock } = setUp(({ key }) => (sent.push(key), arrives()));
    queue('tomorrow', { kind: 'notice', dueAt: 5_000 });
    delivery.start();
    await delivery.settled();
    expect(sent).toEqual([]);
    clock.set(5_000);
    await delivery.settled();
    expect(sent).toEqual(['tomorrow']);
  });

  it('tries a failed sending again, and pauses when it is told to', async () => {
    const answers: Sent[] = [
      { outcome: 'failed', why: 'ECONNRESET' },
      { outcome: 'tooFast', waitSeconds: 0.2 },
    ];
    const times: number[] = [];
    const { delivery, queue, outcomes } = setUp(() => {
      times.push(performance.now());
      return Promise.resolve(answers.shift() ?? { outcome: 'arrived' });
    });
    queue('a');
    delivery.start();
    await delivery.settled();
    expect(times).toHaveLength(3);
    expect((times[1] ?? 0) - (times[0] ?? 0)).toBeGreaterThanOrEqual(990);
    expect((times[2] ?? 0) - (times[1] ?? 0)).toBeGreaterThanOrEqual(190);
    expect(outcomes()).toEqual(['a sent']);
  });

  it('holds what waits for a chat that closed, until it opens', async () => {
    const answers: Sent[] = [{ outcome: 'closed', why: '403: blocked' }];
    const { delivery, queue, outcomes, database } = setUp(() =>
      Promise.resolve(answers.shift() ?? { outcome: 'arrived' }),
    );
    queue('a');
    queue('b', { chat: 'telegram:2' });
    delivery.start();
    await delivery.settled();
    expect(outcomes()).toEqual(['a waits', 'b sent']);
    expect(chatById(database, 'telegram:1')?.closedAt).toBe(1_000);
    reopenChat(database, 'telegram:1');
    await delivery.settled();
    expect(outcomes()).toEqual(['a sent', 'b sent']);
  });

  it('follows a group to its new id', async () => {
    const chats: string[] = [];
    const { delivery, queue, database } = setUp(({ chat }) => {
      chats.push(chat);
      return chat === 'telegram:-1' ? Promise.resolve({ outcome: 'moved', to: '-1001' }) : arrives();
    });
    queue('a', { chat: 'telegram:-1' });
    delivery.start();
    await delivery.settled();
    expect(chats).toEqual(['telegram:-1', 'telegram:-1001']);
    expect(chatById(database, 'telegram:-1001')?.ledger).toBe(1);
  });

  it('gives up what the channel will never take, and goes on', async () => {
    const { delivery, queue, outcomes } = setUp(({ key }) =>
      key === 'odd' ? Promise.resolve({ outcome: 'refused', why: '400: too long' }) : arrives(),
    );
    queue('odd');
    queue('next');
    delivery.start();
    await delivery.settled();
    expect(outcomes()).toEqual(['odd refused: 400: too long', 'next sent']);
  });

  it('keeps a letter whose sending failed by a fault of its own', async () => {
    const { delivery, queue, outcomes } = setUp(() => Promise.reject(new Error('disk')));
    queue('a');
    delivery.start();
    await sleep(20);
    await delivery.stop();
    expect(outcomes()).toEqual(['a waits']);
  });

  it.each([
    ['often and for long', 19, 3 * 86_400_000, 'odd given up: 500', ['odd']],
    ['for long, but not often', 18, 3 * 86_400_000, 'odd waits', []],
    ['often, but not for long', 19, 86_400_000, 'odd waits', []],
  ])(
    'gives up, and tells of, only what failed often and for long: %s',
    async (_, triesBefore, waitedMs, outcome, told) => {
      const { database, delivery, queue, outcomes, given, clock } = setUp(({ key }) =>
        key === 'odd' ? Promise.resolve({ outcome: 'failed', why: '500' }) : arrives(),
      );
      queue('odd');
      database.run('UPDATE outbox SET tries = ?', triesBefore);
      clock.set(1_000 + waitedMs);
      delivery.start();
      await sleep(50);
      expect(outcomes()).toEqual([outcome]);
      expect(given).toEqual(told);
    },
  );
});
