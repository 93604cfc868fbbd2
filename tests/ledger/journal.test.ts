/** The journal in SQLite gives back what was posted, each ledger its own. */
import { describe, expect, it } from 'vitest';
import { asDay } from '../../src/calendar/day.js';
import { openDatabase } from '../../src/ledger/database.js';
import { appendLine, readJournal } from '../../src/ledger/journal.js';
import { createLedger } from '../../src/ledger/ledgers.js';
import { migrate } from '../../src/ledger/migrations.js';
import { keepTalk, readTalk } from '../../src/ledger/talks.js';
import type { JournalLine } from '../../src/ledger/posting.js';

function twoLedgers() {
  const database = openDatabase(':memory:');
  migrate(database, ':memory:');
  createLedger(database, 'own', null, 0);
  createLedger(database, 'shared', null, 0);
  return database;
}

const struck: JournalLine = {
  line: 1,
  at: 1_000,
  postedAt: 9_000,
  by: 'Bea',
  source: { chat: 'telegram:1', message: '12' },
  what: { kind: 'strike', variety: 'Ember Fox', count: 5, label: 'EF1', date: asDay('2026-03-02') },
};

describe('the journal', () => {
  it('gives back the lines of each ledger whole and in order', () => {
    const database = twoLedgers();
    const takenBack: JournalLine = { ...struck, line: 2, what: { amends: 1, entries: [] } };
    appendLine(database, 1, struck);
    appendLine(database, 2, { ...struck, by: null, source: null });
    appendLine(database, 1, takenBack);
    expect(readJournal(database, 1)).toEqual([struck, takenBack]);
    expect(readJournal(database, 1, 1)).toEqual([takenBack]);
    expect(readJournal(database, 2)).toEqual([{ ...struck, by: null, source: null }]);
  });

  it('takes a line number once', () => {
    const database = twoLedgers();
    appendLine(database, 1, struck);
    expect(() => appendLine(database, 1, struck)).toThrow(/UNIQUE/);
  });
});

describe('a talk', () => {
  it('stands until it is replaced, in its own chat', () => {
    const database = twoLedgers();
    keepTalk(database, 1, 'telegram:1', { next: 1 }, 5);
    keepTalk(database, 1, 'telegram:1', { next: 2 }, 6);
    expect(readTalk(database, 1, 'telegram:1')).toEqual({ next: 2 });
    expect(readTalk(database, 1, 'telegram:2')).toBeNull();
  });
});
