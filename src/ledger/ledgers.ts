/** The ledgers of a file: one a grower, one a group, more where someone asks for them. */
import type { Instant } from '../calendar/clock.js';
import type { Database } from './database.js';

export interface LedgerRecord {
  readonly id: number;
  readonly name: string;
  /** The grower whose own it is, `terminal` until someone owns the file; none where it is a group's. */
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

/** Calls a ledger otherwise, as its group is called otherwise. */
export function renameLedger(database: Database, id: number, name: string): void {
  database.run('UPDATE ledgers SET name = ? WHERE id = ? AND name <> ?', name, id, name);
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

/** Who sits at the machine itself: owner of the file until a grower of a bot owns it. */
export const atTheMachine = 'terminal';

/** The file's first ledger, its owner's own: made where there is none. */
export function firstLedger(database: Database, at: Instant): LedgerRecord {
  const first = database.get<Stored>('SELECT id, name, owner FROM ledgers ORDER BY id LIMIT 1');
  if (first) return asRecord(first);
  const id = createLedger(database, 'own', atTheMachine, at);
  return { id, name: 'own', owner: atTheMachine };
}

/** All that belonged to the machine's own seat belongs to that grower from now on. */
export function handOver(database: Database, grower: string): void {
  database.run('UPDATE ledgers SET owner = ? WHERE owner = ?', grower, atTheMachine);
}

/** The ledger of that name that a grower owns or belongs to; without a grower, any of that name. */
export function ledgerNamed(database: Database, name: string, grower?: string): LedgerRecord | undefined {
  const among = grower === undefined ? allLedgers(database) : ledgersOfGrower(database, grower);
  return among.find((ledger) => ledger.name.toLowerCase() === name.toLowerCase());
}

/** Settings as they were saved; an empty object where none were. */
export function ledgerSettings<S extends object>(database: Database, ledger: number): Partial<S> {
  const stored = database.get<{ settings: string }>('SELECT settings FROM ledgers WHERE id = ?', ledger);
  return JSON.parse(stored?.settings ?? '{}') as Partial<S>;
}

export function saveLedgerSettings(database: Database, ledger: number, settings: object): void {
  const json = JSON.stringify(settings);
  database.run('UPDATE ledgers SET settings = ? WHERE id = ? AND settings <> ?', json, ledger, json);
}

function asRecord({ id, name, owner }: Stored): LedgerRecord {
  return { id, name, ...(owner !== null ? { owner } : {}) };
}
