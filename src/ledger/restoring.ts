/** Puts a backup in the ledger's place; what stood there is moved aside, never deleted. */
import { copyFileSync, existsSync, mkdirSync, renameSync } from 'node:fs';
import type { Instant } from '../calendar/clock.js';
import { faultOf, removeFile } from './backups.js';
import { type Database, LedgerFault, openDatabase } from './database.js';
import { eraseAgain } from './erasure.js';
import { ledgerPathIn } from './ledger-file.js';
import { migrate } from './migrations.js';
import { takeWriteLock } from './write-lock.js';

export interface Restored {
  readonly lines: number;
  /** Where the ledger that stood there was moved to; null where there was none. */
  readonly movedTo: string | null;
  /** Growers who had been erased since the backup was made, and were erased again. */
  readonly erasedAgain: number;
}

/**
 * Restores the backup at `from` into the data folder. Refuses, with a `LedgerFault`, while the ledger is being written,
 * where the backup is no good, and (unless `overNewer`) where the ledger that stands there holds later entries.
 */
export function restoreLedger(from: string, dataFolder: string, now: Instant, overNewer: boolean): Restored {
  if (!existsSync(from)) throw new LedgerFault('noFile', `There is no backup at ${from}.`);
  const fault = faultOf(from);
  if (fault !== null)
    throw new LedgerFault('corrupt', `The backup ${from} can't be used (${fault}); nothing was changed.`);
  mkdirSync(dataFolder, { recursive: true, mode: 0o700 });
  const path = ledgerPathIn(dataFolder);
  const lock = takeWriteLock(path);
  try {
    if (existsSync(path) && !overNewer) refuseOverNewer(path, from);
    const movedTo = existsSync(path) ? moveAside(path, now) : null;
    copyFileSync(from, `${path}.part`);
    renameSync(`${path}.part`, path);
    return { movedTo, ...settle(path, dataFolder) };
  } finally {
    lock.release();
  }
}

function refuseOverNewer(path: string, from: string): void {
  const [here, there] = [lastPosted(path), lastPosted(from)];
  if (here === null || there === null || here <= there) return;
  throw new LedgerFault(
    'newer',
    `The ledger ${path} holds entries later than the backup's last: add --over-newer to restore all the same; it is then moved aside, not deleted.`,
  );
}

/** When the last line was posted; null where the file can't be read or holds none. */
function lastPosted(path: string): Instant | null {
  let database: Database | undefined;
  try {
    database = openDatabase(path, { mode: 'read' });
    return database.get<{ at: number | null }>('SELECT max(posted_at) AS at FROM journal')?.at ?? null;
  } catch {
    return null;
  } finally {
    database?.close();
  }
}

function moveAside(path: string, now: Instant): string {
  const aside = `${path}-replaced-${new Date(now).toISOString().replace(/[:.]/g, '')}`;
  for (const suffix of ['', '-wal', '-shm']) {
    if (existsSync(`${path}${suffix}`)) renameSync(`${path}${suffix}`, `${aside}${suffix}`);
  }
  return aside;
}

function settle(path: string, dataFolder: string): { lines: number; erasedAgain: number } {
  removeFile(`${path}.part`);
  const database = openDatabase(path);
  try {
    migrate(database, path);
    const erasedAgain = eraseAgain(database, dataFolder);
    const lines = database.get<{ n: number }>('SELECT count(*) AS n FROM journal')?.n ?? 0;
    return { lines, erasedAgain };
  } finally {
    database.close();
  }
}
