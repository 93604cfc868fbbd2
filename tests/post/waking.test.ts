/** Ledgers are looked at when they have something to say, after an absence, and after the clock was set. */
import { setTimeout as sleep } from 'node:timers/promises';
import { afterEach, describe, expect, it } from 'vitest';
import { SetClock } from '../../src/calendar/clock.js';
import { openDatabase } from '../../src/ledger/database.js';
import { createLedger } from '../../src/ledger/ledgers.js';
import { migrate } from '../../src/ledger/migrations.js';
import { silentLog } from '../../src/log.js';
import { Waking } from '../../src/post/waking.js';

const running: Waking[] = [];
afterEach(() => running.splice(0).forEach((waking) => waking.stop()));

function setUp(look: (ledger: number, now: number) => number | null, ledgers = 1) {
  const database = openDatabase(':memory:');
  migrate(database, ':memory:');
  for (let count = 0; count < ledgers; count++) createLedger(database, `l${count}`, null, 0);
  const clock = new SetClock(1_000_000);
  const reached = { now: true };
  const waking = new Waking({
    database,
    clock,
    log: silentLog,
    look,
    atomically: (work) => database.transaction(work),
    ready: () => reached.now,
    queued: () => undefined,
  });
  running.push(waking);
  return { database, clock, waking, reached };
}

describe('waking', () => {
  it('looks at every ledger at the start, a few at a time', async () => {
    const seen: number[] = [];
    const { waking } = setUp((ledger) => (seen.push(ledger), null), 25);
    waking.start();
    expect(seen.length).toBeLessThan(25);
    await sleep(100);
    expect(seen).toHaveLength(25);
  });

  it('looks again at the moment that the ledger named', async () => {
    const times: number[] = [];
    const { waking, clock } = setUp((_, now) => {
      times.push(now);
      return now + 1_500;
    });
    waking.start();
    clock.set(1_001_500);
    await sleep(1_700);
    expect(times).toEqual([1_000_000, 1_001_500]);
  });

  it('leaves one ledger that cannot be looked at aside, and looks at the others', () => {
    const seen: number[] = [];
    const { waking, database } = setUp((ledger) => {
      if (ledger === 1) throw new Error('poisoned');
      seen.push(ledger);
      return null;
    }, 3);
    waking.start();
    expect(seen).toEqual([2, 3]);
    expect(database.all('SELECT ledger, at FROM wakings')).toEqual([{ ledger: 1, at: 1_600_000 }]);
  });

  it('waits while nothing would get out, and then looks once', async () => {
    const times: number[] = [];
    const { waking, reached, clock } = setUp((_, now) => {
      times.push(now);
      return null;
    });
    reached.now = false;
    waking.start();
    clock.set(1_000_000 + 3_600_000);
    await sleep(50);
    expect(times).toEqual([]);
    reached.now = true;
    await sleep(2_100);
    expect(times).toEqual([1_000_000 + 3_600_000]);
  });

  it('looks at all again when the clock was set back by hours', async () => {
    const times: number[] = [];
    const { waking, clock } = setUp((_, now) => {
      times.push(now);
      return now + 86_400_000;
    });
    waking.start();
    clock.set(1_000_000 - 5 * 3_600_000);
    waking.touched(1);
    await sleep(3_200);
    expect(times).toEqual([1_000_000, 1_000_000 - 5 * 3_600_000]);
  }, 10_000);
});
