/** Erases a grower for good: out of the ledger file, out of its backups, and out of any backup restored later. */
import { createHash } from 'node:crypto';
import { appendFileSync, existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Instant } from '../calendar/clock.js';
import { copiesIn, removeFile } from './backups.js';
import { type Database, openDatabase } from './database.js';

/** What a restore must know to erase again, without saying who or what it was: a hash of the grower or ledger, and when. */
type Erasure = { readonly at: Instant } & ({ readonly grower: string } | { readonly ledger: string });

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
  const copies = copiesIn(dataFolder).map((path) => eraseFromCopy(path, (copy) => eraseFrom(copy, grower)));
  const rewritten = copies.filter(Boolean).length;
  return { ...erased, copiesRewritten: rewritten, copiesDropped: copies.length - rewritten };
}

/** Erases the ledger of a group in the same way: its entries, and what its chats said of it. */
export function eraseShared(database: Database, dataFolder: string, ledger: number, at: Instant): Erased {
  const name = nameOfShared(database, ledger);
  if (name === null) return { ledgers: 0, lines: 0, copiesRewritten: 0, copiesDropped: 0 };
  noteErasure(dataFolder, { ledger: name, at });
  const erased = whole(database, () => eraseLedger(database, ledger));
  rmSync(join(dataFolder, 'speech'), { recursive: true, force: true });
  const again = (copy: Database) => {
    if (nameOfShared(copy, ledger) === name) whole(copy, () => eraseLedger(copy, ledger));
  };
  const copies = copiesIn(dataFolder).map((path) => eraseFromCopy(path, again));
  const rewritten = copies.filter(Boolean).length;
  return { ledgers: 1, lines: erased, copiesRewritten: rewritten, copiesDropped: copies.length - rewritten };
}

/** Rewrites a copy without it; one that can't be opened is dropped, since nobody could say what it holds. */
function eraseFromCopy(path: string, erase: (copy: Database) => unknown): boolean {
  try {
    const copy = openDatabase(path, { mode: 'write', journal: 'file' });
    try {
      copy.script('PRAGMA journal_mode = DELETE');
      erase(copy);
      return true;
    } finally {
      copy.close();
    }
  } catch {
    removeFile(path);
    return false;
  }
}

/** Applies every erasure of the data folder to a file that was restored; answers how many growers and groups it erased again. */
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
    const erasure = erasures.find((each) => 'grower' in each && each.grower === hashOf(grower));
    // Who came back after an erasure and began anew keeps what is newer.
    if (!erasure || beganAfter(database, grower, erasure.at)) continue;
    eraseFrom(database, grower);
    again += 1;
  }
  for (const { id } of database.all<{ id: number }>('SELECT id FROM ledgers WHERE owner IS NULL')) {
    const name = nameOfShared(database, id);
    if (!erasures.some((each) => 'ledger' in each && each.ledger === name)) continue;
    whole(database, () => eraseLedger(database, id));
    again += 1;
  }
  return again;
}

function eraseFrom(database: Database, grower: string): { ledgers: number; lines: number } {
  return whole(database, () => {
    const ledgers = database
      .all<{ id: number }>('SELECT id FROM ledgers WHERE owner = ?', grower)
      .map(({ id }) => id);
    let lines = 0;
    for (const id of ledgers) lines += eraseLedger(database, id);
    eraseChat(database, grower);
    database.run('DELETE FROM invitations WHERE made_by = ? OR used_by = ?', grower, grower);
    database.run('DELETE FROM growers WHERE id = ?', grower);
    return { ledgers: ledgers.length, lines };
  });
}

/** All of it in one transaction, and nothing left of it in the file's free pages, which stay readable until it is written anew. */
function whole<T>(database: Database, erase: () => T): T {
  const erased = database.transaction(erase);
  database.script('VACUUM');
  database.get('PRAGMA wal_checkpoint(TRUNCATE)');
  return erased;
}

/** Answers how many lines its journal had. */
function eraseLedger(database: Database, id: number): number {
  const lines = database.get<{ n: number }>('SELECT count(*) AS n FROM journal WHERE ledger = ?', id)?.n ?? 0;
  // A grower's own chat that was switched to a group's ledger has talked about other ledgers too.
  const chats = database.all<{ chat: string }>(
    `SELECT id AS chat FROM chats WHERE ledger = ?
     AND NOT (id IN (SELECT id FROM growers) AND (SELECT owner FROM ledgers WHERE id = ?) IS NULL)`,
    id,
    id,
  );
  for (const { chat } of chats) eraseChat(database, chat);
  database.run('DELETE FROM outbox WHERE ledger = ?', id);
  // Journal, chats, talks, members and wakings go with their ledger.
  database.run('DELETE FROM ledgers WHERE id = ?', id);
  return lines;
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

/** Of a group's ledger, the same in every copy of the file; null where it is none. */
function nameOfShared(database: Database, id: number): string | null {
  const made = database.get<{ at: number }>(
    'SELECT created_at AS at FROM ledgers WHERE id = ? AND owner IS NULL',
    id,
  )?.at;
  return made === undefined ? null : hashOf(`ledger ${id} of ${made}`);
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
