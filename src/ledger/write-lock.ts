/** Lets one process alone write a ledger; the lock goes with the process, however that ends. */
import { type Database, LedgerFault, openDatabase } from './database.js';

export interface WriteLock {
  release(): void;
}

/**
 * Takes the lock that stands beside the ledger at `ledgerPath`; throws `LedgerFault` of kind `locked` where another
 * process has it. It is SQLite's own exclusive lock on a file of its own, which the system frees even after SIGKILL
 * and which leaves readers of the ledger alone.
 */
export function takeWriteLock(ledgerPath: string): WriteLock {
  let lock: Database | undefined;
  try {
    lock = openDatabase(`${ledgerPath}-writer`, { mode: 'write', waitMs: 0, journal: 'file' });
    lock.script('BEGIN EXCLUSIVE');
    const held = lock;
    return { release: () => held.close() };
  } catch (error) {
    lock?.close();
    if (!(error instanceof LedgerFault) || error.kind !== 'locked') throw error;
    throw new LedgerFault(
      'locked',
      `The ledger ${ledgerPath} is being written by another slipnote: stop that one first, or set SLIPNOTE_DATA to another folder.`,
    );
  }
}
