/** What a chat remembers of its talk about a ledger, as JSON beside the journal. */
import type { Instant } from '../calendar/clock.js';
import type { Database } from './database.js';

/** Null where they never talked. */
export function readTalk<T>(database: Database, ledger: number, chat: string): T | null {
  const stored = database.get<{ talk: string }>(
    'SELECT talk FROM talks WHERE ledger = ? AND chat = ?',
    ledger,
    chat,
  );
  return stored ? (JSON.parse(stored.talk) as T) : null;
}

/** Keeps it in place of what stood there. */
export function keepTalk(
  database: Database,
  ledger: number,
  chat: string,
  talk: object,
  keptAt: Instant,
): void {
  database.run(
    `INSERT INTO talks (ledger, chat, kept_at, talk) VALUES (?, ?, ?, ?)
     ON CONFLICT DO UPDATE SET kept_at = excluded.kept_at, talk = excluded.talk`,
    ledger,
    chat,
    keptAt,
    JSON.stringify(talk),
  );
}
