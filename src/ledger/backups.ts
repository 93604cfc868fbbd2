/** Copies of the ledger: made by SQLite's own online backup while it is in use, checked by opening them, kept by age. */
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { addDays, type Day, dayNumber, parseDay } from '../calendar/day.js';
import { type Database, LedgerFault, openDatabase } from './database.js';
import { schemaVersion, versionOf } from './migrations.js';

export interface Backup {
  readonly path: string;
  readonly day: Day;
}

export function backupFolderIn(dataFolder: string): string {
  return join(dataFolder, 'backups');
}

/** The backups of a data folder, newest first; unchecked. */
export function backupsIn(dataFolder: string): Backup[] {
  const folder = backupFolderIn(dataFolder);
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .flatMap((name) => {
      const day = parseDay(/^ledger-(\d{4}-\d{2}-\d{2})\.sqlite$/.exec(name)?.[1] ?? '');
      return day === null ? [] : [{ path: join(folder, name), day }];
    })
    .sort((a, b) => b.day.localeCompare(a.day));
}

/**
 * Copies the open ledger to `path`, whole and consistent, and proves the copy by opening it; an older file there is
 * replaced only then. Throws `LedgerFault` where the copy can't be made or is no good.
 */
export async function copyLedger(database: Database, path: string): Promise<void> {
  const part = `${path}.part`;
  removeFile(part);
  try {
    await database.backup(part);
    inOneFile(part);
  } catch (error) {
    removeFile(part);
    throw new LedgerFault(
      'broken',
      `The copy ${path} could not be written (${(error as Error).message}): check the folder and the free space.`,
      { cause: error },
    );
  }
  const fault = faultOf(part);
  if (fault !== null) {
    removeFile(part);
    throw new LedgerFault(
      'corrupt',
      `The copy ${path} failed its check (${fault}); the ledger itself was left alone.`,
    );
  }
  renameSync(part, path);
  removeFile(part);
}

/** Leaves nothing beside the copy, so that it can be carried about as one file. */
function inOneFile(path: string): void {
  const copy = openDatabase(path, { mode: 'write', journal: 'file' });
  copy.script('PRAGMA journal_mode = DELETE');
  copy.close();
}

/** Makes the day's backup, then drops those that their age no longer keeps. Answers the new file's path. */
export async function backUp(database: Database, dataFolder: string, today: Day): Promise<string> {
  const folder = backupFolderIn(dataFolder);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const path = join(folder, `ledger-${today}.sqlite`);
  await copyLedger(database, path);
  const all = backupsIn(dataFolder);
  const keep = new Set(
    keptByAge(
      all.map(({ day }) => day),
      today,
    ),
  );
  for (const backup of all) if (!keep.has(backup.day)) removeFile(backup.path);
  return path;
}

/** Every file of the data folder that may hold growers' entries beside the ledger itself: backups, and ledgers moved aside by a restore. */
export function copiesIn(dataFolder: string): string[] {
  const aside = readdirSync(dataFolder).filter((name) => /^ledger\.sqlite-replaced-\w+$/.test(name));
  return [...backupsIn(dataFolder).map(({ path }) => path), ...aside.map((name) => join(dataFolder, name))];
}

const daily = 14;
const weekly = 10;
const monthly = 24;

/** Which days' backups are kept: each of the last 14 days, the first of each of 10 weeks, of each of 24 months. */
export function keptByAge(days: readonly Day[], today: Day): Day[] {
  const oldestFirst = [...days].sort();
  const seen = new Set<string>();
  return oldestFirst.filter((day) => {
    if (day > addDays(today, -daily)) return true;
    const week = `week ${Math.floor((dayNumber(day) + 3) / 7)}`;
    const month = `month ${day.slice(0, 7)}`;
    const first = (key: string) => !seen.has(key) && Boolean(seen.add(key));
    const keepWeek = day > addDays(today, -7 * weekly) && first(week);
    const keepMonth = day > addDays(today, -Math.ceil(30.5 * monthly)) && first(month);
    return keepWeek || keepMonth;
  });
}

/** The newest backup that opens and passes its check; null where there is none. */
export function lastGoodBackup(dataFolder: string): Backup | null {
  return backupsIn(dataFolder).find(({ path }) => faultOf(path) === null) ?? null;
}

/** What is wrong with the ledger at `path`, in a few words; null where it opens, is whole and of a version we know. */
export function faultOf(path: string): string | null {
  let database: Database | undefined;
  try {
    database = openDatabase(path, { mode: 'read' });
    const version = versionOf(database);
    if (version < 1) return 'it holds no ledger';
    if (version > schemaVersion) return `it was written by a newer slipnote (version ${version})`;
    return integrityFault(database);
  } catch (error) {
    return error instanceof LedgerFault ? error.kind : (error as Error).message;
  } finally {
    database?.close();
  }
}

/** SQLite's own check of pages, indices and constraints: its first complaint, null where there is none. */
export function integrityFault(database: Database): string | null {
  const [first] = database.all<{ integrity_check: string }>('PRAGMA integrity_check(1)');
  const answer = first?.integrity_check ?? 'no answer';
  return answer === 'ok' ? null : answer.replace(/\s+/g, ' ').replace('*** in database main *** ', '');
}

/** A database file with what SQLite keeps beside it. */
export function removeFile(path: string): void {
  for (const suffix of ['', '-wal', '-shm']) rmSync(`${path}${suffix}`, { force: true });
}
