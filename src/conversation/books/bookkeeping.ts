/** Where worlds are kept: what a session needs of the books, in memory or in a ledger file. */
import type { Instant } from '../../calendar/clock.js';
import type { JournalLine } from '../../ledger/posting.js';
import type { LedgerSettings } from '../settings/ledger-settings.js';
import type { Talk } from '../talk.js';
import type { Incoming, Outgoing } from '../turn.js';
import type { LedgerName } from '../world.js';

/** Who speaks in which chat. */
export type Speaker = Pick<Incoming, 'chat' | 'from' | 'group' | 'title'>;

/** All of it is synchronous; reads within `transaction` see its own writes. */
export interface Bookkeeping {
  /** Runs `work` whole or not at all: where it throws, nothing of it stays. */
  transaction<T>(work: () => T): T;
  /** The ledger that the chat writes to, made where the chat is new; `from` is who speaks. A group's is called like the group. */
  ledgerOf(speaker: Speaker, at: Instant): LedgerName;
  /** Who has shared a group's ledger longest; null where nobody does. */
  founder(ledger: number): { readonly id: string; readonly name: string } | null;
  /** Ledgers that the grower may write to. */
  ledgersOf(grower: string): readonly LedgerName[];
  /** Makes a ledger of the grower's own. */
  makeLedger(name: string, grower: string, at: Instant): LedgerName;
  /** Lets the chat write to that ledger from now on. */
  pointChat(chat: string, ledger: number): void;
  /** Lines of the ledger's journal after number `after`, in order. */
  linesAfter(ledger: number, after: number): readonly JournalLine[];
  append(ledger: number, line: JournalLine): void;
  /** As saved, zone and all; empty where nothing was. */
  settings(ledger: number): Partial<LedgerSettings>;
  saveSettings(ledger: number, settings: LedgerSettings): void;
  /** What the chat remembers of its talk about the ledger; null where they never talked. */
  talk(ledger: number, chat: string): Talk | null;
  keepTalk(ledger: number, chat: string, talk: Talk, at: Instant): void;
  /** Puts into the outbox, to be sent once this transaction is committed. */
  queue(ledger: number, outgoing: Outgoing, now: Instant): void;
}
