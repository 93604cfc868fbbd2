/** The ledger's file: opened safely, written by one, migrated whole, its faults named. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { LedgerFault, openDatabase } from '../../src/ledger/database.js';
import { ledgerPathIn, openLedgerFile } from '../../src/ledger/ledger-file.js';
import { migrate, schemaVersion, versionOf } from '../../src/ledger/migrations.js';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'slipnote-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function faultOf(work: () => unknown): LedgerFault {
  try {
    work();
  } catch (error) {
    if (error instanceof LedgerFault) return error;
    throw error;
  }
  throw new Error('no fault came');
}

describe('the ledger file', () => {
  it('runs with the write-ahead log and full synchronisation, after a reopening too', () => {
    openLedgerFile(folder).close();
    const { database, close } = openLedgerFile(folder);
    expect(database.get('PRAGMA journal_mode')).toEqual({ journal_mode: 'wal' });
    expect(database.get('PRAGMA synchronous')).toEqual({ synchronous: 2 });
    close();
  });

  it('is written by one at a time, and says so in one line to the second', () => {
    const first = openLedgerFile(folder);
    const fault = faultOf(() => openLedgerFile(folder));
    expect(fault.kind).toBe('locked');
    expect(fault.message).toMatch(/is being written by another slipnote/);
    expect(fault.message).not.toContain('\n');
    first.close();
    openLedgerFile(folder).close();
  });

  it('is read beside its writer', () => {
    const writer = openLedgerFile(folder);
    writer.database.run("INSERT INTO ledgers (name, created_at) VALUES ('own', 0)");
    const reader = openDatabase(ledgerPathIn(folder), { mode: 'read' });
    expect(reader.all('SELECT name FROM ledgers')).toEqual([{ name: 'own' }]);
    expect(() => reader.run('DELETE FROM ledgers')).toThrow(/cannot be written/);
    reader.close();
    writer.close();
  });

  it('of a newer version is refused and left as it was', () => {
    openLedgerFile(folder).close();
    const database = openDatabase(ledgerPathIn(folder));
    database.script(`PRAGMA user_version = ${schemaVersion + 1}`);
    database.close();
    const fault = faultOf(() => openLedgerFile(folder));
    expect(fault.kind).toBe('newer');
    expect(fault.message).toMatch(/newer slipnote .* update slipnote/);
  });

  it('that is no database is called damaged', () => {
    writeFileSync(ledgerPathIn(folder), 'a shopping list, nothing more. '.repeat(200));
    expect(faultOf(() => openLedgerFile(folder)).kind).toBe('corrupt');
  });

  it('in a folder that cannot be made gets a line that says what to do', () => {
    writeFileSync(join(folder, 'file'), '');
    expect(faultOf(() => openLedgerFile(join(folder, 'file', 'inner'))).message).toMatch(/set SLIPNOTE_DATA/);
  });
});

describe('a transaction', () => {
  it('leaves nothing behind when its work throws', () => {
    const database = openDatabase(':memory:');
    migrate(database, ':memory:');
    expect(() =>
      database.transaction(() => {
        database.run("INSERT INTO ledgers (name, created_at) VALUES ('own', 0)");
        database.transaction(() => {
          throw new Error('halfway');
        });
      }),
    ).toThrow('halfway');
    expect(database.all('SELECT * FROM ledgers')).toEqual([]);
  });
});

describe('a migration', () => {
  it('that is interrupted leaves the ledger as it was', () => {
    const database = openDatabase(':memory:');
    database.script('CREATE TABLE inbox (in_the_way INTEGER)');
    expect(() => migrate(database, ':memory:')).toThrow(/already exists/);
    expect(versionOf(database)).toBe(0);
    expect(database.all("SELECT name FROM sqlite_master WHERE name = 'ledgers'")).toEqual([]);
  });
});
