/** The ledger's tables, version by version; forward only, each step whole or not at all. */
import { type Database, LedgerFault } from './database.js';

/**
 * One step a schema version, oldest first. A released step is never edited: add another. `fixtures/ledgers` keeps a
 * frozen ledger of each version for the tests.
 */
const steps: readonly string[] = [
  `
  CREATE TABLE ledgers (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    owner TEXT,
    settings TEXT NOT NULL DEFAULT '{}',
    created_at INTEGER NOT NULL,
    UNIQUE (owner, name)
  );
  CREATE TABLE growers (
    id TEXT PRIMARY KEY,
    name TEXT NOT NULL,
    admitted_at INTEGER NOT NULL,
    admitted_by TEXT
  ) WITHOUT ROWID;
  CREATE TABLE members (
    ledger INTEGER NOT NULL REFERENCES ledgers (id) ON DELETE CASCADE,
    grower TEXT NOT NULL REFERENCES growers (id) ON DELETE CASCADE,
    since INTEGER NOT NULL,
    PRIMARY KEY (ledger, grower)
  ) WITHOUT ROWID;
  CREATE TABLE invitations (
    code_hash TEXT PRIMARY KEY,
    made_by TEXT,
    expires_at INTEGER NOT NULL,
    used_by TEXT,
    used_at INTEGER
  ) WITHOUT ROWID;
  CREATE TABLE chats (
    id TEXT PRIMARY KEY,
    ledger INTEGER NOT NULL REFERENCES ledgers (id) ON DELETE CASCADE,
    thread INTEGER,
    closed_at INTEGER,
    closed_why TEXT
  ) WITHOUT ROWID;
  CREATE INDEX chats_of_ledger ON chats (ledger);

  -- What was logged, in the order in which it was posted; never changed, never deleted but with its ledger.
  CREATE TABLE journal (
    ledger INTEGER NOT NULL REFERENCES ledgers (id) ON DELETE CASCADE,
    line INTEGER NOT NULL,
    at INTEGER NOT NULL,
    posted_at INTEGER NOT NULL,
    by TEXT,
    chat TEXT,
    message TEXT,
    what TEXT NOT NULL,
    PRIMARY KEY (ledger, line)
  ) WITHOUT ROWID;

  -- What a chat remembers of its talk about a ledger: questions that wait, prompts given, snoozes.
  CREATE TABLE talks (
    ledger INTEGER NOT NULL REFERENCES ledgers (id) ON DELETE CASCADE,
    chat TEXT NOT NULL,
    kept_at INTEGER NOT NULL,
    talk TEXT NOT NULL,
    PRIMARY KEY (ledger, chat)
  ) WITHOUT ROWID;

  -- Updates as they came, committed before the sender is told that they did.
  CREATE TABLE inbox (
    bot TEXT NOT NULL,
    update_id INTEGER NOT NULL,
    chat TEXT NOT NULL,
    received_at INTEGER NOT NULL,
    body TEXT NOT NULL,
    settled_at INTEGER,
    fault TEXT,
    tries INTEGER NOT NULL DEFAULT 0,
    PRIMARY KEY (bot, update_id)
  ) WITHOUT ROWID;
  CREATE INDEX inbox_waiting ON inbox (bot, update_id) WHERE settled_at IS NULL;

  -- What is to be said. A key is never said twice on purpose; claimed and not sent after a crash is a doubt.
  CREATE TABLE outbox (
    seq INTEGER PRIMARY KEY AUTOINCREMENT,
    key TEXT NOT NULL UNIQUE,
    ledger INTEGER,
    chat TEXT NOT NULL,
    kind TEXT NOT NULL,
    body TEXT NOT NULL,
    attachment BLOB,
    queued_at INTEGER NOT NULL,
    due_at INTEGER NOT NULL,
    claimed_at INTEGER,
    tries INTEGER NOT NULL DEFAULT 0,
    settled_at INTEGER,
    outcome TEXT,
    message TEXT
  );
  CREATE INDEX outbox_due ON outbox (kind, due_at, seq) WHERE settled_at IS NULL;
  CREATE INDEX outbox_waiting_of_chat ON outbox (chat, seq) WHERE settled_at IS NULL;
  CREATE INDEX outbox_of_message ON outbox (chat, message) WHERE message IS NOT NULL;

  -- Buttons that a chat was offered, what they carry and what that means; a press of any other is forged or out of date.
  CREATE TABLE offered (
    chat TEXT NOT NULL,
    data TEXT NOT NULL,
    key TEXT NOT NULL,
    means TEXT NOT NULL,
    PRIMARY KEY (chat, data)
  ) WITHOUT ROWID;

  -- When a ledger next has something to say: kept from what was last worked out, and worked out anew when it comes.
  CREATE TABLE wakings (
    ledger INTEGER PRIMARY KEY REFERENCES ledgers (id) ON DELETE CASCADE,
    at INTEGER NOT NULL
  );
  CREATE INDEX wakings_by_time ON wakings (at);
  `,
  `
  -- What was settled long ago is found to be forgotten without a walk through all.
  CREATE INDEX outbox_settled ON outbox (settled_at) WHERE settled_at IS NOT NULL;
  CREATE INDEX inbox_settled ON inbox (settled_at) WHERE settled_at IS NOT NULL;
  CREATE INDEX offered_by_key ON offered (key);
  `,
];

/** The schema version that this program writes. */
export const schemaVersion = steps.length;

/**
 * Brings the tables up to `schemaVersion`. Each step and its version number are one transaction, so that an interruption
 * leaves the ledger at the last whole version. Throws `LedgerFault` of kind `newer` where the file is ahead of the program.
 */
export function migrate(database: Database, path: string): void {
  const version = versionOf(database);
  refuseNewer(version, path);
  for (let next = version; next < steps.length; next++) {
    database.transaction(() => {
      // Another process may have taken the step while this one waited for the lock.
      if (versionOf(database) !== next) return;
      database.script(steps[next] ?? '');
      database.script(`PRAGMA user_version = ${next + 1}`);
    });
  }
}

/** Throws `LedgerFault` unless a reader of this program's version can use the file as it is. */
export function requireCurrent(database: Database, path: string): void {
  const version = versionOf(database);
  refuseNewer(version, path);
  if (version < schemaVersion)
    throw new LedgerFault(
      'broken',
      `The ledger ${path} is of an earlier version (${version}, this program writes ${schemaVersion}): start slipnote once to bring it up to date.`,
    );
}

export function versionOf(database: Database): number {
  return Number(database.get<{ user_version: number }>('PRAGMA user_version')?.user_version ?? 0);
}

function refuseNewer(version: number, path: string): void {
  if (version > schemaVersion)
    throw new LedgerFault(
      'newer',
      `The ledger ${path} was written by a newer slipnote (version ${version}, this program knows ${schemaVersion}): update slipnote; nothing was changed.`,
    );
}
