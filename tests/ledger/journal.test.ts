/** The journal in SQLite gives back what was posted, each ledger its own. */
import { describe, expect, it } from 'vitest';
import { asDay } from '../../src/calendar/day.js';
import { openDatabase } from '../../src/ledger/database.js';
import { appendLine, linesIn, readJournal } from '../../src/ledger/journal.js';
import { forget, keep, kept } from '../../src/ledger/keeps.js';
import { createLedger } from '../../src/ledger/ledgers.js';
import { migrate } from '../../src/ledger/migrations.js';
import type { JournalLine } from '../../src/ledger/posting.js';

function twoLedgers() {
  const database = openDatabase(':memory:');
  migrate(database, ':memory:');
  createLedger(database, 'own', null, 0);
  createLedger(database, 'shared', null, 0);
  return database;
}

const struck: Omit<JournalLine, 'line'> = {
  at: 1_000,
  postedAt: 9_000,
  by: 'Bea',
  source: { chat: 'telegram:1', message: '12' },
  what: { kind: 'strike', variety: 'Ember Fox', count: 5, label: 'EF1', date: asDay('2026-03-02') },
};

describe('the journal', () => {
  it('numbers the lines of each ledger from 1 and gives them back whole', () => {
    const database = twoLedgers();
    appendLine(database, 1, struck);
    appendLine(database, 2, { ...struck, by: null, source: null });
    appendLine(database, 1, { ...struck, what: { amends: 1, entries: [] } });
    expect(readJournal(database, 1)).toEqual([
      { line: 1, ...struck },
      { line: 2, ...struck, what: { amends: 1, entries: [] } },
    ]);
    expect(readJournal(database, 1, 1).map(({ line }) => line)).toEqual([2]);
    expect(readJournal(database, 2)).toEqual([{ line: 1, ...struck, by: null, source: null }]);
    expect(linesIn(database, 3)).toBe(0);
  });
});

describe('what is kept beside the journal', () => {
  it('stands until it is replaced or forgotten, in its own chat', () => {
    const database = twoLedgers();
    const place = { ledger: 1, chat: 'telegram:1', kind: 'question' as const };
    keep(database, place, 'check/EF1', { about: 'check' }, 5);
    keep(database, place, 'check/EF1', { about: 'potOn' }, 6);
    expect(kept(database, place)).toEqual([{ name: 'check/EF1', keptAt: 6, value: { about: 'potOn' } }]);
    expect(kept(database, { ...place, chat: 'telegram:2' })).toEqual([]);
    forget(database, place, 'check/EF1');
    expect(kept(database, place)).toEqual([]);
  });
});
