/** Which ledger a chat writes to, and whether the chat can be written to. */
import type { Instant } from '../calendar/clock.js';
import type { Database } from './database.js';

export interface Chat {
  /** Channel and the channel's own id: `telegram:-1001`, `terminal:here`. */
  readonly id: string;
  readonly ledger: number;
  /** The topic of a forum group in which it was last written to. */
  readonly thread?: number;
  /** Set while the chat takes no messages (blocked, left, deactivated). */
  readonly closedAt?: Instant;
}

interface Stored {
  id: string;
  ledger: number;
  thread: number | null;
  closed_at: number | null;
}

export function chatById(database: Database, id: string): Chat | undefined {
  const stored = database.get<Stored>('SELECT id, ledger, thread, closed_at FROM chats WHERE id = ?', id);
  return stored && asChat(stored);
}

/** The chats that write to a ledger, in the order of their names. */
export function chatsOfLedger(database: Database, ledger: number): Chat[] {
  return database
    .all<Stored>('SELECT id, ledger, thread, closed_at FROM chats WHERE ledger = ? ORDER BY id', ledger)
    .map(asChat);
}

/** Lets a chat write to a ledger from now on, whichever it wrote to before. */
export function pointChat(database: Database, id: string, ledger: number): void {
  database.run(
    'INSERT INTO chats (id, ledger) VALUES (?, ?) ON CONFLICT DO UPDATE SET ledger = excluded.ledger',
    id,
    ledger,
  );
}

export function noteThread(database: Database, id: string, thread: number | undefined): void {
  database.run(
    'UPDATE chats SET thread = ? WHERE id = ? AND thread IS NOT ?',
    thread ?? null,
    id,
    thread ?? null,
  );
}

/** The chat takes no messages until it is opened again; what waits for it waits on. */
export function closeChat(database: Database, id: string, why: string, at: Instant): void {
  database.run('UPDATE chats SET closed_at = ?, closed_why = ? WHERE id = ?', at, why, id);
}

export function reopenChat(database: Database, id: string): void {
  database.run(
    'UPDATE chats SET closed_at = NULL, closed_why = NULL WHERE id = ? AND closed_at IS NOT NULL',
    id,
  );
}

/** A group that became another chat keeps its ledger, its talk, its buttons and what waits to be said. */
export function moveChat(database: Database, from: string, to: string): void {
  database.transaction(() => {
    const old = chatById(database, from);
    if (old) {
      pointChat(database, to, old.ledger);
      reopenChat(database, to);
      database.run('DELETE FROM chats WHERE id = ?', from);
    }
    // The new chat numbers its messages from 1 again: those heard before must not pass for them.
    database.run(
      `UPDATE OR REPLACE talks SET chat = ?, talk = json_set(talk, '$.heard', json('[]')) WHERE chat = ?`,
      to,
      from,
    );
    database.run('UPDATE OR REPLACE offered SET chat = ? WHERE chat = ?', to, from);
    database.run('UPDATE outbox SET chat = ? WHERE chat = ? AND settled_at IS NULL', to, from);
  });
}

function asChat({ id, ledger, thread, closed_at }: Stored): Chat {
  return {
    id,
    ledger,
    ...(thread !== null ? { thread } : {}),
    ...(closed_at !== null ? { closedAt: closed_at } : {}),
  };
}

/** How many chats are open. */
export function openChats(database: Database): number {
  return (
    database.get<{ open: number }>('SELECT count(*) AS open FROM chats WHERE closed_at IS NULL')?.open ?? 0
  );
}
