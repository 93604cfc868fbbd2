/** Books in memory: for replays, and for tests that need no file. */
import type { JournalLine } from '../../ledger/posting.js';
import type { Bookkeeping, Speaker } from './bookkeeping.js';
import type { LedgerSettings } from '../settings/ledger-settings.js';
import type { Talk } from '../talk.js';
import type { Outgoing } from '../turn.js';
import type { LedgerName } from '../world.js';

export class MemoryBooks implements Bookkeeping {
  readonly sent: Outgoing[] = [];
  private readonly ledgers: (LedgerName & { readonly owner: string | null })[] = [];
  private readonly journals = new Map<number, JournalLine[]>();
  private readonly chats = new Map<string, number>();
  private readonly saved = new Map<number, Partial<LedgerSettings>>();
  private readonly talks = new Map<string, string>();

  constructor(private readonly settingsOfNew: Partial<LedgerSettings> = {}) {}

  transaction<T>(work: () => T): T {
    return work();
  }

  ledgerOf({ chat, from, group }: Speaker): LedgerName {
    const id = this.chats.get(chat);
    const known = this.ledgers.find((each) => each.id === id);
    if (known) return known;
    const made = this.open(group ? chat : 'own', group ? null : from.id);
    this.chats.set(chat, made.id);
    return made;
  }

  founder(): null {
    return null;
  }

  ledgersOf(grower: string): readonly LedgerName[] {
    return this.ledgers.filter(({ owner }) => owner === grower);
  }

  makeLedger(name: string, grower: string): LedgerName {
    return this.open(name, grower);
  }

  pointChat(chat: string, ledger: number): void {
    this.chats.set(chat, ledger);
  }

  linesAfter(ledger: number, after: number): readonly JournalLine[] {
    return (this.journals.get(ledger) ?? []).slice(after);
  }

  append(ledger: number, line: JournalLine): void {
    this.journals.get(ledger)?.push(line);
  }

  settings(ledger: number): Partial<LedgerSettings> {
    return this.saved.get(ledger) ?? {};
  }

  saveSettings(ledger: number, settings: LedgerSettings): void {
    this.saved.set(ledger, settings);
  }

  /** Kept as text, as a file would keep it. */
  talk(ledger: number, chat: string): Talk | null {
    const kept = this.talks.get(`${ledger} ${chat}`);
    return kept === undefined ? null : (JSON.parse(kept) as Talk);
  }

  keepTalk(ledger: number, chat: string, talk: Talk): void {
    this.talks.set(`${ledger} ${chat}`, JSON.stringify(talk));
  }

  queue(_ledger: number, outgoing: Outgoing): void {
    this.sent.push(outgoing);
  }

  private open(name: string, owner: string | null): LedgerName {
    const made = { id: this.ledgers.length + 1, name, owner, shared: owner === null };
    this.ledgers.push(made);
    this.journals.set(made.id, []);
    this.saved.set(made.id, this.settingsOfNew);
    return made;
  }
}
