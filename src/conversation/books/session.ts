/** One transaction a turn: takes the world from the books, has the turn worked out, and keeps all that came of it. */
import type { Instant } from '../../calendar/clock.js';
import { advance, fold } from '../../ledger/fold.js';
import { type Keeper, memoryKeeper } from '../../outlook/keeper.js';
import { emptyLedger, type Ledger } from '../../ledger/ledger.js';
import type { JournalLine } from '../../ledger/posting.js';
import { newLedgerAsked, noSuchLedger, switched } from '../../words/instructions.js';
import type { Bookkeeping, Speaker } from './bookkeeping.js';
import { converse } from '../converse.js';
import { defaultSettings } from '../settings/ledger-settings.js';
import { nextMoment, prompt } from '../prompts/prompting.js';
import { newTalk } from '../talk.js';
import type { Incoming } from '../turn.js';
import { ledgerMeant } from '../settings/switching.js';
import type { Errand, LedgerName, Turned, World } from '../world.js';

interface Cached {
  readonly journal: readonly JournalLine[];
  readonly ledger: Ledger;
}

/** A folded ledger of a season is some hundred kilobytes. */
const MOST_CACHED = 500;

export class Session {
  private readonly cache = new Map<number, Cached>();

  constructor(
    private readonly books: Bookkeeping,
    /** Zone of a ledger whose growers have set none. */
    private readonly zone: string,
    private readonly keeper: Keeper = memoryKeeper(),
  ) {}

  /** Takes one message, tap or voice note; answers the errands that remain to be run once it is committed. */
  turn(incoming: Incoming, now: Instant): readonly Errand[] {
    return this.whole(() => {
      const world = this.world(incoming, now);
      const turned = converse(world, incoming, now);
      this.keep(turned, now);
      return turned.errands.filter((errand) => !this.switches(errand, incoming, turned, now));
    });
  }

  /** Says what is due at this moment. */
  prompt(speaker: Speaker, now: Instant): void {
    this.whole(() => this.keep(prompt(this.world(speaker, now), now), now));
  }

  /** When next to call `prompt`; null while there is nothing to say. */
  nextMoment(speaker: Speaker, now: Instant): Instant | null {
    return this.whole(() => nextMoment(this.world(speaker, now), now));
  }

  /** The world as it stands for a speaker. */
  world(speaker: Speaker, now: Instant): World {
    const { chat, from, group } = speaker;
    const current = this.books.ledgerOf(speaker, now);
    const { journal, ledger } = this.ledger(current.id);
    return {
      chat,
      group,
      journal,
      ledger,
      settings: { ...defaultSettings(this.zone), ...this.books.settings(current.id) },
      talk: this.books.talk(current.id, chat) ?? newTalk,
      keeper: this.keeper,
      current,
      ledgers: group ? [current] : this.books.ledgersOf(from.id),
      founder: current.shared ? this.books.founder(current.id) : null,
    };
  }

  /** Folded from the books, only the lines that are new. */
  private ledger(id: number): Cached {
    const known = this.cache.get(id) ?? { journal: [], ledger: emptyLedger };
    const news = this.books.linesAfter(id, known.journal.length);
    if (news.length === 0) return known;
    const journal = [...known.journal, ...news];
    const cached = { journal, ledger: advance(known.ledger, news) ?? fold(journal).ledger };
    this.remember(id, cached);
    return cached;
  }

  private keep({ world, lines, outgoing }: Turned, now: Instant): void {
    const { id } = world.current;
    for (const line of lines) this.books.append(id, line);
    this.books.saveSettings(id, world.settings);
    this.books.keepTalk(id, world.chat, world.talk, now);
    for (const each of outgoing) this.books.queue(id, each, now);
    this.remember(id, { journal: world.journal, ledger: world.ledger });
  }

  /** The ledgers used last; an older one is folded again when it is wanted. */
  private remember(id: number, cached: Cached): void {
    this.cache.delete(id);
    this.cache.set(id, cached);
    const [oldest] = this.cache.keys();
    if (this.cache.size > MOST_CACHED && oldest !== undefined) this.cache.delete(oldest);
  }

  private switches(errand: Errand, incoming: Incoming, { world }: Turned, now: Instant): boolean {
    if (errand.kind !== 'switchLedger') return false;
    const wanted = errand.name.trim();
    const chosen: LedgerName | undefined =
      (errand.create
        ? world.ledgers.find(({ name }) => name.toLowerCase() === wanted.toLowerCase())
        : ledgerMeant(world.ledgers, wanted)) ??
      (errand.create && !world.group ? this.books.makeLedger(wanted, incoming.from.id, now) : undefined);
    if (chosen && !world.group) this.books.pointChat(incoming.chat, chosen.id);
    const text = world.group
      ? newLedgerAsked
      : chosen
        ? switched(chosen.name)
        : noSuchLedger(
            wanted,
            world.ledgers.map(({ name }) => name),
          );
    const key = `${world.chat}/${world.current.id}/${world.talk.next}`;
    this.books.keepTalk(world.current.id, world.chat, { ...world.talk, next: world.talk.next + 1 }, now);
    this.books.queue(world.current.id, { chat: world.chat, key, text, replyTo: incoming.message }, now);
    return true;
  }

  private whole<T>(work: () => T): T {
    try {
      return this.books.transaction(work);
    } catch (error) {
      // What was cached may never have been committed.
      this.cache.clear();
      throw error;
    }
  }
}
