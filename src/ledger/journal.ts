/** The journal of a ledger in SQLite: what was posted, line by line, never changed. */
import type { Database } from './database.js';
import type { JournalLine } from './posting.js';

interface Stored {
  line: number;
  at: number;
  posted_at: number;
  by: string | null;
  chat: string | null;
  message: string | null;
  what: string;
}

/** Appends a line, numbered one above the last; call it inside the turn's transaction. A number that is taken throws. */
export function appendLine(database: Database, ledger: number, line: JournalLine): void {
  database.run(
    'INSERT INTO journal (ledger, line, at, posted_at, by, chat, message, what) VALUES (?, ?, ?, ?, ?, ?, ?, ?)',
    ledger,
    line.line,
    line.at,
    line.postedAt,
    line.by,
    line.source?.chat ?? null,
    line.source?.message ?? null,
    JSON.stringify(line.what),
  );
}

/** The ledger's lines after number `after` (all of them from 0), in the order of posting. */
export function readJournal(database: Database, ledger: number, after = 0): JournalLine[] {
  return database
    .all<Stored>(
      `SELECT line, at, posted_at, by, chat, message, what FROM journal
       WHERE ledger = ? AND line > ? ORDER BY line`,
      ledger,
      after,
    )
    .map(({ line, at, posted_at, by, chat, message, what }) => ({
      line,
      at,
      postedAt: posted_at,
      by,
      source: chat !== null && message !== null ? { chat, message } : null,
      what: JSON.parse(what) as JournalLine['what'],
    }));
}
