/** Opens the ledger of a data folder as the one process that writes it. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { type Database, LedgerFault, openDatabase } from './database.js';
import { integrityFault, lastGoodBackup } from './backups.js';
import { migrate } from './migrations.js';
import { takeWriteLock } from './write-lock.js';

export interface LedgerFile {
  readonly path: string;
  readonly database: Database;
  /** Closes the file and frees the write lock. */
  close(): void;
}

export function ledgerPathIn(folder: string): string {
  return join(folder, 'ledger.sqlite');
}

/** Makes the folder and the ledger where there are none, and brings its tables up to date. Throws `LedgerFault`. */
export function openLedgerFile(folder: string): LedgerFile {
  const path = ledgerPathIn(folder);
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
  } catch (error) {
    throw new LedgerFault(
      'readOnly',
      `The folder ${folder} cannot be made (${(error as NodeJS.ErrnoException).code}): set SLIPNOTE_DATA to one that this user may write to.`,
      { cause: error },
    );
  }
  const lock = takeWriteLock(path);
  let database: Database | undefined;
  try {
    database = openDatabase(path);
    refuseDamaged(database, path);
    migrate(database, path);
  } catch (error) {
    database?.close();
    lock.release();
    throw error instanceof LedgerFault && error.kind === 'corrupt' ? withBackup(error, folder) : error;
  }
  const open = database;
  return {
    path,
    database: open,
    close() {
      open.close();
      lock.release();
    },
  };
}

function refuseDamaged(database: Database, path: string): void {
  const fault = integrityFault(database);
  if (fault !== null) throw new LedgerFault('corrupt', `The ledger ${path} is damaged (${fault}).`);
}

function withBackup(fault: LedgerFault, folder: string): LedgerFault {
  const good = lastGoodBackup(folder);
  const advice = good
    ? `The last good backup is ${good.path}: npm run -s restore -- ${good.path}`
    : 'There is no good backup in its folder.';
  return new LedgerFault('corrupt', `${fault.message} ${advice}`, { cause: fault });
}
