/** The journal of a ledger in SQLite: what was posted, in order, never changed. */
import type { Instant } from '../calendar/clock.js';
import type { Database } from './database.js';

/** The message from which a line was read; the same message edited or delivered again has the same source. */
export interface MessageSource {
  readonly chat: string;
  readonly message: number;
}

/** One posting. `E` is whatever the ledger posts: entries, and what voids or amends them. */
export interface JournalLine<E = unknown> {
  /** Position in the journal, growing; the line's name for those that void or amend it. */
  readonly seq: number;
  /** When the message was sent. */
  readonly at: Instant;
  /** When it was written down here, which may be hours later. */
  readonly postedAt: Instant;
  /** Name of who said it. */
  readonly by: string;
  readonly source?: MessageSource;
  readonly entry: E;
}

interface Stored {
  seq: number;
  at: number;
  posted_at: number;
  by: string;
  chat: string | null;
  message: number | null;
  entry: string;
}

/** Appends one line and answers it with its `seq`; call it inside the turn's transaction. */
export function appendLine<E>(
  database: Database,
  ledger: number,
  line: Omit<JournalLine<E>, 'seq'>,
): JournalLine<E> {
  const { lastId } = database.run(
    'INSERT INTO journal (ledger, at, posted_at, by, chat, message, entry) VALUES (?, ?, ?, ?, ?, ?, ?)',
    ledger,
    line.at,
    line.postedAt,
    line.by,
    line.source?.chat ?? null,
    line.source?.message ?? null,
    JSON.stringify(line.entry),
  );
  return { seq: lastId, ...line };
}

/** The ledger's lines after `afterSeq` (all of them from 0), in the order of posting. */
export function readJournal<E>(database: Database, ledger: number, afterSeq = 0): JournalLine<E>[] {
  return database
    .all<Stored>('SELECT * FROM journal WHERE ledger = ? AND seq > ? ORDER BY seq', ledger, afterSeq)
    .map((stored) => ({
      seq: stored.seq,
      at: stored.at,
      postedAt: stored.posted_at,
      by: stored.by,
      ...(stored.chat !== null && stored.message !== null
        ? { source: { chat: stored.chat, message: stored.message } }
        : {}),
      entry: JSON.parse(stored.entry) as E,
    }));
}
