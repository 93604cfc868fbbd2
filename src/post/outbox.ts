/** What is to be said, kept until it has been: each key once, claimed before it is sent and marked after. */
import type { Instant } from '../calendar/clock.js';
import type { Database } from '../ledger/database.js';

/** Replies go before notices. */
export type PostKind = 'reply' | 'notice';

export interface Letter {
  /** A key that was ever queued is not queued again. */
  readonly key: string;
  readonly chat: string;
  readonly ledger?: number;
  readonly kind: PostKind;
  /** JSON that the channel's sender understands. */
  readonly body: string;
  readonly attachment?: Uint8Array;
  /** Not to be sent earlier. */
  readonly dueAt: Instant;
  /** The buttons that the message offers. */
  readonly offers?: readonly Offer[];
}

/** A button: what it carries, which the channel may limit, and what that means. */
export interface Offer {
  readonly data: string;
  readonly means: string;
}

export interface WaitingLetter {
  readonly seq: number;
  readonly key: string;
  readonly chat: string;
  readonly ledger?: number;
  readonly kind: PostKind;
  readonly body: string;
  readonly attachment?: Uint8Array;
  readonly dueAt: Instant;
  readonly queuedAt: Instant;
  /** How often it was claimed before; above 0, it may have arrived already. */
  readonly tries: number;
}

interface Stored {
  seq: number;
  key: string;
  ledger: number | null;
  chat: string;
  kind: PostKind;
  body: string;
  attachment: Uint8Array | null;
  queued_at: number;
  due_at: number;
  tries: number;
}

/**
 * How long a letter that was settled is remembered: until then its key is not queued again, a reply to it is understood and
 * its buttons work. Longer than a batch takes from its cutting to its pot.
 */
const REMEMBERED_MS = 90 * 86_400_000;

const ABOUT_CURRENT_LEDGER =
  '(outbox.ledger IS NULL OR outbox.ledger = (SELECT ledger FROM chats WHERE id = ?))';

export class Outbox {
  constructor(private readonly database: Database) {}

  /** Queues a letter; false where its key was queued before. Call it in the transaction that caused it. */
  queue(letter: Letter, now: Instant): boolean {
    const { changes } = this.database.run(
      `INSERT INTO outbox (key, ledger, chat, kind, body, attachment, queued_at, due_at)
       VALUES (?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (key) DO NOTHING`,
      letter.key,
      letter.ledger ?? null,
      letter.chat,
      letter.kind,
      letter.body,
      letter.attachment ?? null,
      now,
      letter.dueAt,
    );
    if (changes === 0) return false;
    for (const { data, means } of letter.offers ?? [])
      this.database.run(
        `INSERT INTO offered (chat, data, key, means) VALUES (?, ?, ?, ?)
         ON CONFLICT DO UPDATE SET key = excluded.key, means = excluded.means`,
        letter.chat,
        data,
        letter.key,
        means,
      );
    return true;
  }

  /**
   * Letters of a kind due by `now`, oldest first, to open chats whose ids start with `channel` and that are not among
   * `passingOver`.
   */
  due(channel: string, kind: PostKind, now: Instant, passingOver: readonly string[], limit: number) {
    return this.database
      .all<Stored>(
        `SELECT seq, key, ledger, chat, kind, body, attachment, queued_at, due_at, tries FROM outbox
         WHERE settled_at IS NULL AND kind = ? AND due_at <= ? AND (chat || ':') GLOB ?
           AND chat NOT IN (SELECT value FROM json_each(?))
           AND NOT EXISTS (SELECT 1 FROM chats WHERE chats.id = outbox.chat AND closed_at IS NOT NULL)
         ORDER BY due_at, seq LIMIT ?`,
        kind,
        now,
        `${channel}:*`,
        JSON.stringify(passingOver),
        limit,
      )
      .map(asLetter);
  }

  /** When the next letter that is not yet due falls due; undefined where none waits. */
  nextDueAt(now: Instant): Instant | undefined {
    const times = (['reply', 'notice'] as const).flatMap(
      (kind) =>
        this.database.get<{ due_at: number }>(
          'SELECT due_at FROM outbox WHERE settled_at IS NULL AND kind = ? AND due_at > ? ORDER BY due_at LIMIT 1',
          kind,
          now,
        )?.due_at ?? [],
    );
    return times.length > 0 ? Math.min(...times) : undefined;
  }

  /** Written down before the sending begins, so that a crash leaves a doubt and not a loss. */
  claim(seq: number, now: Instant): void {
    this.database.run('UPDATE outbox SET claimed_at = ?, tries = tries + 1 WHERE seq = ?', now, seq);
  }

  /** It arrived; `message` is the channel's number for it. */
  markSent(seq: number, message: string | undefined, now: Instant): void {
    this.settle(seq, 'sent', now, message);
  }

  /** No longer true by the time it was to be sent, or never to be taken by the channel: it is not sent. */
  drop(seq: number, why: string, now: Instant): void {
    this.settle(seq, why, now);
  }

  /** Not to be sent before `dueAt`. */
  putOff(seq: number, dueAt: Instant): void {
    this.database.run('UPDATE outbox SET due_at = ? WHERE seq = ?', dueAt, seq);
  }

  /** Letters that were claimed and not sent when the program last ended: each may have arrived. */
  doubtful(): string[] {
    return this.database
      .all<{ key: string }>('SELECT key FROM outbox WHERE settled_at IS NULL AND tries > 0 ORDER BY seq')
      .map(({ key }) => key);
  }

  /** Key of our message with that number in a chat, where it spoke of the ledger that the chat writes to now. */
  keyOfMessage(chat: string, message: string): string | undefined {
    return this.database.get<{ key: string }>(
      `SELECT key FROM outbox WHERE chat = ? AND message = ? AND ${ABOUT_CURRENT_LEDGER}`,
      chat,
      message,
      chat,
    )?.key;
  }

  /**
   * What a button that this chat was offered means, and the key of the message that offered it last; undefined where none
   * did, or the chat writes to another ledger by now, so that the press is refused.
   */
  offerOf(chat: string, data: string): { readonly key: string; readonly means: string } | undefined {
    return this.database.get<{ key: string; means: string }>(
      `SELECT offered.key AS key, means FROM offered JOIN outbox USING (key)
       WHERE offered.chat = ? AND data = ? AND ${ABOUT_CURRENT_LEDGER}`,
      chat,
      data,
      chat,
    );
  }

  /** Forgets what was settled 90 days ago, and its buttons. */
  prune(now: Instant): void {
    const before = now - REMEMBERED_MS;
    this.database.transaction(() => {
      this.database.run(
        'DELETE FROM offered WHERE key IN (SELECT key FROM outbox WHERE settled_at < ?)',
        before,
      );
      this.database.run('DELETE FROM outbox WHERE settled_at < ?', before);
    });
  }

  private settle(seq: number, outcome: string, now: Instant, message?: string): void {
    this.database.run(
      'UPDATE outbox SET settled_at = ?, outcome = ?, message = ?, attachment = NULL WHERE seq = ?',
      now,
      outcome,
      message ?? null,
      seq,
    );
  }
}

function asLetter(stored: Stored): WaitingLetter {
  return {
    seq: stored.seq,
    key: stored.key,
    chat: stored.chat,
    kind: stored.kind,
    body: stored.body,
    dueAt: stored.due_at,
    queuedAt: stored.queued_at,
    tries: stored.tries,
    ...(stored.ledger !== null ? { ledger: stored.ledger } : {}),
    ...(stored.attachment !== null ? { attachment: stored.attachment } : {}),
  };
}
