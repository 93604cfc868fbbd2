/** The ledgers of a file: one a grower, one a group, more where someone asks for them. */
import type { Instant } from '../calendar/clock.js';
import type { Database } from './database.js';

export interface LedgerRecord {
  readonly id: number;
  readonly name: string;
  /** The grower whose own it is; none where the file's first ledger still waits for its owner, and for groups. */
  readonly owner?: string;
}

interface Stored {
  id: number;
  name: string;
  owner: string | null;
}

export function createLedger(database: Database, name: string, owner: string | null, at: Instant): number {
  return database.run('INSERT INTO ledgers (name, owner, created_at) VALUES (?, ?, ?)', name, owner, at)
    .lastId;
}

export function ledgerById(database: Database, id: number): LedgerRecord | undefined {
  const stored = database.get<Stored>('SELECT id, name, owner FROM ledgers WHERE id = ?', id);
  return stored && asRecord(stored);
}

/** All ledgers, the oldest first. */
export function allLedgers(database: Database): LedgerRecord[] {
  return database.all<Stored>('SELECT id, name, owner FROM ledgers ORDER BY id').map(asRecord);
}

/** The ledgers that a grower owns or belongs to, the oldest first. */
export function ledgersOfGrower(database: Database, grower: string): LedgerRecord[] {
  return database
    .all<Stored>(
      `SELECT id, name, owner FROM ledgers
       WHERE owner = ? OR id IN (SELECT ledger FROM members WHERE grower = ?) ORDER BY id`,
      grower,
      grower,
    )
    .map(asRecord);
}

/** The file's first ledger, the owner's own: made where there is none. */
export function firstLedger(database: Database, at: Instant): number {
  const first = database.get<{ id: number }>('SELECT id FROM ledgers ORDER BY id LIMIT 1');
  return first?.id ?? createLedger(database, 'own', null, at);
}

export function setOwner(database: Database, ledger: number, owner: string): void {
  database.run('UPDATE ledgers SET owner = ? WHERE id = ?', owner, ledger);
}

/** Settings as they were saved; an empty object where none were. */
export function ledgerSettings<S extends object>(database: Database, ledger: number): Partial<S> {
  const stored = database.get<{ settings: string }>('SELECT settings FROM ledgers WHERE id = ?', ledger);
  return JSON.parse(stored?.settings ?? '{}') as Partial<S>;
}

export function saveLedgerSettings(database: Database, ledger: number, settings: object): void {
  database.run('UPDATE ledgers SET settings = ? WHERE id = ?', JSON.stringify(settings), ledger);
}

function asRecord({ id, name, owner }: Stored): LedgerRecord {
  return { id, name, ...(owner !== null ? { owner } : {}) };
}
