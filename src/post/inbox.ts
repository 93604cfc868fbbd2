/** Updates as they came, kept before the sender may forget them, until each is dealt with. */
import type { Instant } from '../calendar/clock.js';
import type { Database } from '../ledger/database.js';

export interface Arrival {
  readonly bot: string;
  readonly updateId: number;
  /** Updates of one chat are handled in order. */
  readonly chat: string;
  /** The update as JSON. */
  readonly body: string;
}

interface Stored {
  bot: string;
  update_id: number;
  chat: string;
  body: string;
}

/**
 * How long a settled update is remembered, so that its second delivery is known. The Bot API delivers again for a day at
 * most, and numbers updates anew at random after an idle week: longer memory would take a new update for an old one.
 */
const REMEMBERED_MS = 3 * 86_400_000;
/** How long what could not be dealt with is kept, for whoever runs the bot to look at. */
const ASIDE_MS = 90 * 86_400_000;

export class Inbox {
  constructor(private readonly database: Database) {}

  /** Commits a batch in one transaction and answers those that are new; only after it may the offset advance. */
  take(arrivals: readonly Arrival[], now: Instant): Arrival[] {
    return this.database.transaction(() =>
      arrivals.filter(
        ({ bot, updateId, chat, body }) =>
          this.database.run(
            'INSERT INTO inbox (bot, update_id, chat, received_at, body) VALUES (?, ?, ?, ?, ?) ON CONFLICT DO NOTHING',
            bot,
            updateId,
            chat,
            now,
            body,
          ).changes === 1,
      ),
    );
  }

  /** Taken and not dealt with, oldest first: what a crash left behind. */
  waiting(bot: string): Arrival[] {
    return this.database
      .all<Stored>(
        'SELECT bot, update_id, chat, body FROM inbox WHERE bot = ? AND settled_at IS NULL ORDER BY received_at, update_id',
        bot,
      )
      .map(({ bot, update_id, chat, body }) => ({ bot, updateId: update_id, chat, body }));
  }

  /** Dealt with; call it in the transaction of what came of it. */
  settle({ bot, updateId }: Arrival, now: Instant): void {
    this.database.run(
      "UPDATE inbox SET settled_at = ?, body = '' WHERE bot = ? AND update_id = ?",
      now,
      bot,
      updateId,
    );
  }

  /** It cannot be dealt with: kept whole with its fault, out of the way of the rest. */
  setAside({ bot, updateId }: Arrival, fault: string, now: Instant): void {
    this.database.run(
      'UPDATE inbox SET settled_at = ?, fault = ?, tries = tries + 1 WHERE bot = ? AND update_id = ?',
      now,
      fault,
      bot,
      updateId,
    );
  }

  /** Forgets what was dealt with three days ago, and what was set aside 90 days ago. */
  prune(now: Instant): void {
    this.database.run('DELETE FROM inbox WHERE settled_at < ? AND fault IS NULL', now - REMEMBERED_MS);
    this.database.run('DELETE FROM inbox WHERE settled_at < ?', now - ASIDE_MS);
  }
}
