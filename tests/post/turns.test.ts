/** Work of many chats: in order within a chat, in turn between them, committed together, none lost to a fault. */
import { setTimeout as sleep } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { type Database, openDatabase } from '../../src/ledger/database.js';
import { silentLog } from '../../src/log.js';
import { Turns, type Work } from '../../src/post/turns.js';

class Passing extends Error {}

function setUp() {
  const database: Database = openDatabase(':memory:');
  database.script('CREATE TABLE done (what TEXT)');
  let commits = 0;
  let refuse = 0;
  const turns = new Turns({
    atomically: (work) =>
      database.transaction(() => {
        const result = work();
        if (refuse > 0) {
          refuse--;
          throw new Passing('disk full');
        }
        return result;
      }),
    passes: (fault) => fault instanceof Passing,
    committed: () => commits++,
    log: silentLog,
  });
  const note = (what: string) => void database.run('INSERT INTO done VALUES (?)', what);
  const work = (chat: string, what: string, more: Partial<Work> = {}): Work => ({
    chat,
    run: () => note(what),
    failed: () => note(`${what} set aside`),
    ...more,
  });
  return {
    turns,
    work,
    note,
    done: () => database.all<{ what: string }>('SELECT what FROM done').map(({ what }) => what),
    commits: () => commits,
    refuseNext: (times: number) => (refuse = times),
  };
}

describe('turns', () => {
  it('deal with what one transaction brought in that same transaction, chats in turn', () => {
    const { turns, work, done, commits } = setUp();
    turns.add(() => [work('a', 'a1'), work('a', 'a2'), work('b', 'b1'), work('a', 'a3')]);
    expect(done()).toEqual(['a1', 'b1', 'a2', 'a3']);
    expect(commits()).toBe(1);
  });

  it('set aside what fails, with nothing of it left behind, and go on', () => {
    const { turns, work, note, done } = setUp();
    const poisoned = () => {
      note('half of it');
      throw new TypeError('poisoned');
    };
    turns.add(() => [work('a', 'a1', { run: poisoned }), work('a', 'a2')]);
    expect(done()).toEqual(['a1 set aside', 'a2']);
  });

  it('let a chat go on while something of it is prepared', async () => {
    const { turns, work, done } = setUp();
    turns.add(() => [work('a', 'voice', { prepare: () => sleep(30) }), work('a', 'text')]);
    expect(done()).toEqual(['text']);
    await sleep(80);
    expect(done()).toEqual(['text', 'voice']);
  });

  it('forget what a failed transaction brought, since it will be brought again', async () => {
    const { turns, work, done, refuseNext } = setUp();
    refuseNext(2);
    expect(() => turns.add(() => [work('a', 'a1')])).toThrow('disk full');
    refuseNext(0);
    expect(done()).toEqual([]);
    turns.add(() => [work('a', 'a1')]);
    expect(done()).toEqual(['a1']);
    await turns.roomFor(0);
    await turns.stop(0);
  });

  it('deal with a crowd in slices, so that others get their turn, and finish it', async () => {
    const { turns, work, done } = setUp();
    const slow = () => {
      const until = performance.now() + 3;
      while (performance.now() < until);
    };
    turns.add(() => Array.from({ length: 30 }, (_, index) => work('a', `${index}`, { run: slow })));
    let turnsOfOthers = 0;
    const others = setInterval(() => turnsOfOthers++, 1);
    await turns.roomFor(0);
    clearInterval(others);
    expect(turnsOfOthers).toBeGreaterThan(1);
    expect(done()).toEqual([]);
  });

  it('stop within their grace, what is left staying where it came from', async () => {
    const { turns, work, done } = setUp();
    turns.add(() => [work('a', 'voice', { prepare: () => sleep(200) }), work('b', 'text')]);
    await turns.stop(20);
    await sleep(250);
    expect(done()).toEqual(['text']);
  });
});
