/** What a ledger keeps beside its journal: pending questions, drafts, snoozes, as named JSON values. */
import type { Instant } from '../calendar/clock.js';
import type { Database } from './database.js';

export type KeepKind = 'question' | 'draft' | 'snooze' | 'promise' | 'note';

export interface Kept<V> {
  readonly name: string;
  readonly keptAt: Instant;
  readonly value: V;
}

/** Where a value is kept: of one chat, or of the whole ledger where `chat` is ''. */
export interface KeepPlace {
  readonly ledger: number;
  readonly chat: string;
  readonly kind: KeepKind;
}

/** Keeps `value` under `name`, in place of what stood there. */
export function keep(
  database: Database,
  { ledger, chat, kind }: KeepPlace,
  name: string,
  value: unknown,
  keptAt: Instant,
): void {
  database.run(
    `INSERT INTO keeps (ledger, chat, kind, name, kept_at, value) VALUES (?, ?, ?, ?, ?, ?)
     ON CONFLICT DO UPDATE SET kept_at = excluded.kept_at, value = excluded.value`,
    ledger,
    chat,
    kind,
    name,
    keptAt,
    JSON.stringify(value),
  );
}

/** All values of that kind, oldest first. */
export function kept<V>(database: Database, { ledger, chat, kind }: KeepPlace): Kept<V>[] {
  return database
    .all<{ name: string; kept_at: number; value: string }>(
      'SELECT name, kept_at, value FROM keeps WHERE ledger = ? AND chat = ? AND kind = ? ORDER BY kept_at, name',
      ledger,
      chat,
      kind,
    )
    .map(({ name, kept_at, value }) => ({ name, keptAt: kept_at, value: JSON.parse(value) as V }));
}

export function forget(database: Database, { ledger, chat, kind }: KeepPlace, name: string): void {
  database.run(
    'DELETE FROM keeps WHERE ledger = ? AND chat = ? AND kind = ? AND name = ?',
    ledger,
    chat,
    kind,
    name,
  );
}
