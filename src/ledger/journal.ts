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

/** Appends one line under the next number of its ledger; call it inside the turn's transaction. */
export function appendLine(database: Database, ledger: number, line: Omit<JournalLine, 'line'>): JournalLine {
  const next = linesIn(database, ledger) + 1;
  database.run(
    'INSERT INTO journal (ledger, line, at, posted_at, by, chat, message, what) VALUES (?, ?, ?, ?, ?, ?, ?, ?)',
    ledger,
    next,
    line.at,
    line.postedAt,
    line.by,
    line.source?.chat ?? null,
    line.source?.message ?? null,
    JSON.stringify(line.what),
  );
  return { line: next, ...line };
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

/** How many lines a ledger's journal has, which is the number of its last. */
export function linesIn(database: Database, ledger: number): number {
  return (
    database.get<{ last: number | null }>('SELECT max(line) AS last FROM journal WHERE ledger = ?', ledger)
      ?.last ?? 0
  );
}
