/** What a chat remembers of its talk about a ledger, as JSON beside the journal. */
import type { Instant } from '../calendar/clock.js';
import type { Database } from './database.js';

interface Known {
  readonly text: string;
  readonly talk: object;
}

/** The talks kept last, each with its text: one that stands as it did need not be parsed again. */
const known = new WeakMap<Database, Map<string, Known>>();
const REMEMBERED = 50;

/** Null where they never talked. */
export function readTalk<T>(database: Database, ledger: number, chat: string): T | null {
  const stored = database.get<{ talk: string }>(
    'SELECT talk FROM talks WHERE ledger = ? AND chat = ?',
    ledger,
    chat,
  );
  if (!stored) return null;
  const before = known.get(database)?.get(keyOf(ledger, chat));
  return (before?.text === stored.talk ? before.talk : JSON.parse(stored.talk)) as T;
}

/** Keeps it in place of what stood there. */
export function keepTalk(
  database: Database,
  ledger: number,
  chat: string,
  talk: object,
  keptAt: Instant,
): void {
  const text = JSON.stringify(talk);
  remember(database, keyOf(ledger, chat), { text, talk });
  database.run(
    `INSERT INTO talks (ledger, chat, kept_at, talk) VALUES (?, ?, ?, ?)
     ON CONFLICT DO UPDATE SET kept_at = excluded.kept_at, talk = excluded.talk`,
    ledger,
    chat,
    keptAt,
    text,
  );
}

function keyOf(ledger: number, chat: string): string {
  return `${ledger} ${chat}`;
}

function remember(database: Database, key: string, talk: Known): void {
  const talks = known.get(database) ?? new Map<string, Known>();
  known.set(database, talks);
  talks.delete(key);
  talks.set(key, talk);
  const [oldest] = talks.keys();
  if (talks.size > REMEMBERED && oldest !== undefined) talks.delete(oldest);
}
