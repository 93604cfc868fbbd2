/** Erases a grower for good: out of the ledger file, out of its backups, and out of any backup restored later. */
import { createHash } from 'node:crypto';
import { appendFileSync, existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Instant } from '../calendar/clock.js';
import { copiesIn, removeFile } from './backups.js';
import { type Database, openDatabase } from './database.js';

/** What a restore must know to erase again, without saying who it was: a hash of the grower's id, and when. */
interface Erasure {
  readonly grower: string;
  readonly at: Instant;
}

export interface Erased {
  readonly ledgers: number;
  readonly lines: number;
  readonly copiesRewritten: number;
  readonly copiesDropped: number;
}

/**
 * Erases a grower's own ledgers, chats and messages from the open file, vacuums it, rewrites every copy likewise, and
 * notes the fact for restores to come. Ledgers shared with a group keep their entries; the grower is a member no more.
 */
export function eraseGrower(database: Database, dataFolder: string, grower: string, at: Instant): Erased {
  noteErasure(dataFolder, { grower: hashOf(grower), at });
  const erased = eraseFrom(database, grower);
  // Models of speech hold the names of a grower's plants.
  rmSync(join(dataFolder, 'speech'), { recursive: true, force: true });
  const copies = copiesIn(dataFolder).map((path) => eraseFromCopy(path, grower));
  const rewritten = copies.filter(Boolean).length;
  return { ...erased, copiesRewritten: rewritten, copiesDropped: copies.length - rewritten };
}

/** Rewrites a copy without the grower; one that can't be opened is dropped, since nobody could say what it holds. */
function eraseFromCopy(path: string, grower: string): boolean {
  try {
    const copy = openDatabase(path, { mode: 'write', journal: 'file' });
    try {
      copy.script('PRAGMA journal_mode = DELETE');
      eraseFrom(copy, grower);
      return true;
    } finally {
      copy.close();
    }
  } catch {
    removeFile(path);
    return false;
  }
}

/** Applies every erasure of the data folder to a file that was restored; answers how many growers it erased again. */
export function eraseAgain(database: Database, dataFolder: string): number {
  const erasures = erasuresOf(dataFolder);
  const growers = new Set([
    ...database.all<{ id: string }>('SELECT id FROM growers').map(({ id }) => id),
    ...database
      .all<{ owner: string }>('SELECT owner FROM ledgers WHERE owner IS NOT NULL')
      .map(({ owner }) => owner),
  ]);
  let again = 0;
  for (const grower of growers) {
    const erasure = erasures.find((each) => each.grower === hashOf(grower));
    // Who came back after an erasure and began anew keeps what is newer.
    if (!erasure || beganAfter(database, grower, erasure.at)) continue;
    eraseFrom(database, grower);
    again += 1;
  }
  return again;
}

function eraseFrom(database: Database, grower: string): { ledgers: number; lines: number } {
  const counted = database.transaction(() => {
    const ledgers = database
      .all<{ id: number }>('SELECT id FROM ledgers WHERE owner = ?', grower)
      .map(({ id }) => id);
    let lines = 0;
    for (const id of ledgers) {
      lines += database.get<{ n: number }>('SELECT count(*) AS n FROM journal WHERE ledger = ?', id)?.n ?? 0;
      for (const { chat } of database.all<{ chat: string }>(
        'SELECT id AS chat FROM chats WHERE ledger = ?',
        id,
      )) {
        eraseChat(database, chat);
      }
      database.run('DELETE FROM outbox WHERE ledger = ?', id);
      // Journal, chats, talks, members and wakings go with their ledger.
      database.run('DELETE FROM ledgers WHERE id = ?', id);
    }
    eraseChat(database, grower);
    database.run('DELETE FROM invitations WHERE made_by = ? OR used_by = ?', grower, grower);
    database.run('DELETE FROM growers WHERE id = ?', grower);
    return { ledgers: ledgers.length, lines };
  });
  // Deleted rows stay readable in a file's free pages until it is written anew.
  database.script('VACUUM');
  database.get('PRAGMA wal_checkpoint(TRUNCATE)');
  return counted;
}

function eraseChat(database: Database, chat: string): void {
  database.run('DELETE FROM inbox WHERE chat = ?', chat);
  database.run('DELETE FROM outbox WHERE chat = ?', chat);
  database.run('DELETE FROM offered WHERE chat = ?', chat);
  database.run('DELETE FROM talks WHERE chat = ?', chat);
}

function beganAfter(database: Database, grower: string, at: Instant): boolean {
  const admitted = database.get<{ at: number }>(
    'SELECT admitted_at AS at FROM growers WHERE id = ?',
    grower,
  )?.at;
  const made = database.get<{ at: number | null }>(
    'SELECT min(created_at) AS at FROM ledgers WHERE owner = ?',
    grower,
  )?.at;
  return Math.min(admitted ?? Infinity, made ?? Infinity) > at;
}

function hashOf(grower: string): string {
  return createHash('sha256').update(`slipnote erasure ${grower}`).digest('hex');
}

function erasureFile(dataFolder: string): string {
  return join(dataFolder, 'erasures.jsonl');
}

function noteErasure(dataFolder: string, erasure: Erasure): void {
  appendFileSync(erasureFile(dataFolder), `${JSON.stringify(erasure)}\n`, { mode: 0o600 });
}

function erasuresOf(dataFolder: string): Erasure[] {
  if (!existsSync(erasureFile(dataFolder))) return [];
  return readFileSync(erasureFile(dataFolder), 'utf8')
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line) as Erasure)
    .sort((a, b) => b.at - a.at);
}
