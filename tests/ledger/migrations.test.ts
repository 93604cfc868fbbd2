/** Ledgers of every released schema version open with today's program, and fold to what they held. */
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openDatabase } from '../../src/ledger/database.js';
import { fold } from '../../src/ledger/fold.js';
import { readJournal } from '../../src/ledger/journal.js';
import { ledgerSettings } from '../../src/ledger/ledgers.js';
import { migrate, schemaVersion, versionOf } from '../../src/ledger/migrations.js';
import { Outbox } from '../../src/post/outbox.js';

const folder = resolve(import.meta.dirname, '../../fixtures/ledgers');

function frozen(version: number) {
  const database = openDatabase(':memory:');
  database.script(readFileSync(join(folder, `version-${version}.sql`), 'utf8'));
  return database;
}

describe('a frozen ledger of version 1', () => {
  it('is brought up to date with nothing of it lost', () => {
    const database = frozen(1);
    expect(versionOf(database)).toBe(1);
    const before = database.all('SELECT * FROM journal');
    migrate(database, 'frozen');
    expect(versionOf(database)).toBe(schemaVersion);
    expect(database.all('SELECT * FROM journal')).toEqual(before);
    const { ledger, conflicts } = fold(readJournal(database, 1));
    expect(conflicts).toEqual([]);
    const batches = [...ledger.batches.values()];
    expect(batches.map(({ label, variety, crop }) => [label, variety, crop])).toEqual([
      ['EF1', 'Ember Fox', 'dahlia'],
      ['MW1', 'Marble Wren', 'fuchsia'],
    ]);
    // Ten were taken and one lost; the check that was taken back does not count.
    expect(ledger.standing.map(({ entry }) => entry.kind)).toEqual(['strike', 'strike', 'loss', 'target']);
    expect(ledgerSettings(database, 1)).toMatchObject({ lastFrost: '05-20', digestAt: '08:00' });
    expect(new Outbox(database).offerOf('terminal', 'undo:1-1')?.means).toBe('undo:1-1');
    expect(database.all('PRAGMA foreign_key_check')).toEqual([]);
  });

  it('stays whole where a step is interrupted, and goes on from there', () => {
    const database = frozen(1);
    database.script('CREATE INDEX offered_by_key ON offered (means)');
    const before = database.all('SELECT name FROM sqlite_master ORDER BY name');
    expect(() => migrate(database, 'frozen')).toThrow(/already exists/);
    expect(versionOf(database)).toBe(1);
    expect(database.all('SELECT name FROM sqlite_master ORDER BY name')).toEqual(before);
    database.script('DROP INDEX offered_by_key');
    migrate(database, 'frozen');
    expect(versionOf(database)).toBe(schemaVersion);
  });

  it('has the same tables and indices afterwards as a ledger made today', () => {
    const shape = (database: ReturnType<typeof frozen>) =>
      database.all("SELECT name, sql FROM sqlite_master WHERE name NOT LIKE 'sqlite%' ORDER BY name");
    const fresh = openDatabase(':memory:');
    migrate(fresh, 'fresh');
    const old = frozen(1);
    migrate(old, 'frozen');
    expect(shape(old)).toEqual(shape(fresh));
  });
});
