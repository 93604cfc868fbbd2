/** One turn while it is being worked out: what it has posted, changed and said so far. */
import type { Instant } from '../calendar/clock.js';
import type { Day } from '../calendar/day.js';
import { localDay } from '../calendar/zone.js';
import { fold, postTo } from '../ledger/fold.js';
import type { LoggedEntry } from '../ledger/entry.js';
import type { Ledger } from '../ledger/ledger.js';
import type { Amendment, JournalLine, Line, Posting } from '../ledger/posting.js';
import { type Conflict, isRefusal, type Refusal } from '../ledger/refusal.js';
import type { HeardWord } from '../language/note.js';
import type { LedgerSettings } from './settings/ledger-settings.js';
import { type Reply, reply } from './reply.js';
import type { Asked, Offer, Origin, Talk } from './talk.js';
import type { Outgoing } from './turn.js';
import type { Errand, Turned, World } from './world.js';

/** How many messages of ours can still be tapped or answered, and how many of the growers' are remembered. */
const REMEMBERED = 40;
/** How many questions of ours may wait; nobody answers an eleventh. */
const ASKS = 10;

export interface Draft {
  readonly text: string;
  /** Absent where it was typed. */
  readonly words?: readonly HeardWord[];
  readonly origin: Origin;
  /** Whether it was said to be meant as the rules read it. */
  readonly meant?: boolean;
  /** Of the message of ours to which it was spoken in reply. */
  readonly answers?: string;
}

export class Sitting {
  journal: JournalLine[];
  ledger: Ledger;
  settings: LedgerSettings;
  talk: Talk;
  readonly errands: Errand[] = [];
  readonly reply: Reply = reply();
  /** The words that are being taken; empty for a tap. */
  text = '';
  /** What was heard or doubted, and has just been said to be right: it is done next, as if it were said. */
  draft: Draft | null = null;
  /** Lines whose batch nobody named: it was the only one. */
  readonly assumed: Line[] = [];
  /** Entries that the ledger refused for good. */
  readonly refused: { readonly entry: LoggedEntry; readonly refusal: Refusal }[] = [];
  private readonly outgoing: Outgoing[] = [];
  private readonly before: number;

  constructor(
    readonly world: World,
    /** The moment at which it is worked out. */
    readonly now: Instant,
    /** The message that is being taken, and who sent it when. */
    public origin: Origin,
  ) {
    this.journal = [...world.journal];
    this.before = this.journal.length;
    this.ledger = world.ledger;
    this.settings = world.settings;
    this.talk = world.talk;
  }

  /** The local day on which the note was sent. */
  get today(): Day {
    return this.dayOf(this.origin.at);
  }

  get keeper(): World['keeper'] {
    return this.world.keeper;
  }

  dayOf(at: Instant): Day {
    return localDay(at, this.settings.zone);
  }

  /** Posts an entry, or answers why it cannot follow; then nothing has changed. */
  post(what: Posting, origin: Origin = this.origin): Line | Refusal {
    const line = { ...this.lineFor(origin), what };
    const after = postTo(this.ledger, line);
    if (isRefusal(after)) return after;
    this.journal.push(line);
    this.ledger = after;
    return line.line;
  }

  /** What would no longer follow if these amendments were made; empty where all is well. */
  conflictsOf(amendments: readonly Amendment[]): readonly Conflict[] {
    return fold(this.withAmendments(amendments)).conflicts;
  }

  /** Makes amendments, or answers what would no longer follow; then nothing has changed. */
  amend(amendments: readonly Amendment[]): readonly Conflict[] {
    const journal = this.withAmendments(amendments);
    const { ledger, conflicts } = fold(journal);
    if (conflicts.length > 0) return conflicts;
    this.journal = journal;
    this.ledger = ledger;
    return [];
  }

  /** Appends lines as they came from another ledger, with their own moments and growers. */
  append(lines: readonly Omit<JournalLine, 'line'>[]): void {
    this.journal = [
      ...this.journal,
      ...lines.map((line, index) => ({ ...line, line: this.journal.length + index + 1 })),
    ];
    this.ledger = fold(this.journal).ledger;
  }

  /** Keeps a question open; it is put with this turn's reply, or when those before it are answered. */
  ask(asked: Asked, origin: Origin = this.origin): void {
    this.talk = {
      ...this.talk,
      nextAsk: this.talk.nextAsk + 1,
      asks: [...this.talk.asks, { id: this.talk.nextAsk, key: null, askedAt: this.now, origin, asked }].slice(
        -ASKS,
      ),
    };
  }

  change(change: Partial<Talk>): void {
    this.talk = { ...this.talk, ...change };
  }

  /** Says something in a message of its own and answers its key. */
  say(
    message: Omit<Outgoing, 'chat' | 'key'>,
    about: { lines?: readonly Line[]; key?: string } = {},
  ): string {
    const key = about.key ?? `${this.world.chat}/${this.world.current.id}/${this.talk.next}`;
    const offer: Offer = {
      key,
      buttons: (message.buttons ?? []).flat(),
      lines: about.lines ?? [],
    };
    this.outgoing.push({ chat: this.world.chat, key, ...message });
    this.change({ next: this.talk.next + 1, offers: [...this.talk.offers, offer].slice(-REMEMBERED) });
    return key;
  }

  end(): Turned {
    return {
      world: {
        ...this.world,
        journal: this.journal,
        ledger: this.ledger,
        settings: this.settings,
        talk: this.talk,
      },
      lines: this.journal.slice(this.before),
      outgoing: this.outgoing,
      errands: this.errands,
    };
  }

  private withAmendments(amendments: readonly Amendment[]): JournalLine[] {
    const journal = [...this.journal];
    for (const what of amendments)
      journal.push({ ...this.lineFor(this.origin), line: journal.length + 1, what });
    return journal;
  }

  private lineFor({ at, by, message }: Origin): Omit<JournalLine, 'what'> {
    return {
      line: this.journal.length + 1,
      at,
      postedAt: this.now,
      by,
      source: { chat: this.world.chat, message },
    };
  }
}
