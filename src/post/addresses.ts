/** What a channel learns about its chats: that one writes again, that one went away, that one has a new id. */
import type { Clock } from '../calendar/clock.js';
import { chatById, closeChat, moveChat, noteThread, reopenChat } from '../ledger/chats.js';
import type { Database } from '../ledger/database.js';
import { removeMember } from '../ledger/growers.js';

export class Addresses {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** Something came in from it, in a topic where the group has topics. */
  heardFrom(chat: string, thread?: number): void {
    reopenChat(this.database, chat);
    noteThread(this.database, chat, thread);
  }

  closed(chat: string, why: string): void {
    closeChat(this.database, chat, why, this.clock.now());
  }

  /** A grower went out of a group: its ledger stays with the group. */
  left(chat: string, grower: string): void {
    const ledger = chatById(this.database, chat)?.ledger;
    if (ledger !== undefined) removeMember(this.database, ledger, grower);
  }

  moved(from: string, to: string): void {
    moveChat(this.database, from, to);
  }
}
