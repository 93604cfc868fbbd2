/** The parts of the running program introduced to each other: conversation, ledger and post, whatever the channel. */
import type { Clock, Instant } from './calendar/clock.js';
import { localTime } from './calendar/zone.js';
import type { Channel } from './channels/channel.js';
import { Desk } from './channels/desk.js';
import { keyWithinChat } from './channels/letter.js';
import type { Admission } from './conversation/settings/admission.js';
import { keptBooks } from './conversation/books/kept-books.js';
import { stillTrue } from './conversation/prompts/prompting.js';
import { Session } from './conversation/books/session.js';
import type { Incoming } from './conversation/turn.js';
import type { Speaker } from './conversation/books/bookkeeping.js';
import { ledgerIn } from './exchange/bringing-in.js';
import { stationMinima } from './exchange/station-minima.js';
import { chatById, chatsOfLedger, openChats } from './ledger/chats.js';
import type { Database } from './ledger/database.js';
import { atTheMachine, firstLedger } from './ledger/ledgers.js';
import { Errands, type RunErrand } from './errands-asked.js';
import type { Log } from './log.js';
import { civilMoment, isQuiet } from './outlook/digest-time.js';
import { Delivery, type Recheck } from './post/delivery.js';
import { Inbox } from './post/inbox.js';
import { Outbox, type WaitingLetter } from './post/outbox.js';
import { keepPruned } from './post/pruning.js';
import { Waking } from './post/waking.js';
import { channelWords } from './words/channel-words.js';
import { groupWelcome } from './words/setup.js';

export interface ProgramParts {
  readonly database: Database;
  readonly clock: Clock;
  readonly log: Log;
  /** Zone of a ledger whose growers have set none. */
  readonly zone: string;
  /** Name of the ledger that the terminal writes to; the owner's own without. */
  readonly terminalLedger?: string;
  readonly admission: Admission;
  readonly runErrand: RunErrand;
}

/** Begins the key of the letter that tells of others. */
const GIVEN_UP = 'given-up';

export class Program {
  readonly outbox: Outbox;
  readonly desk: Desk;
  /** Name of the Telegram bot that it serves. */
  bot: string | undefined;
  private session: Session;
  private channel: Channel | undefined;
  private delivery: Delivery | undefined;
  private waking: Waking | undefined;
  private readonly errands: Errands;

  constructor(private readonly parts: ProgramParts) {
    const { database, clock } = parts;
    this.errands = new Errands({
      log: parts.log,
      run: parts.runErrand,
      queue: (said) => {
        this.desk.queue(said);
        this.delivery?.wake();
      },
      showMaking: (chat, making) =>
        this.channel?.showMaking?.(chat, making, chatById(database, chat)?.thread),
    });
    this.atomically(() => firstLedger(database, clock.now()));
    this.outbox = new Outbox(database);
    this.desk = new Desk({
      outbox: this.outbox,
      now: () => clock.now(),
      atomically: (work) => this.atomically(work),
      takeTurn: (incoming) => this.takeTurn(incoming),
      pieces: (said) => (this.serves(said.chat) ? (this.channel?.pieces(said) ?? []) : []),
      chats: () => openChats(database),
      threadOf: (chat) => chatById(database, chat)?.thread,
      committed: () => this.afterCommit(),
    });
    this.session = this.freshSession();
  }

  /** Runs a channel until the signal or its end. `reached` tells whether what is said would get out. */
  async serve(channel: Channel, stop: AbortSignal, reached: () => boolean = () => true): Promise<void> {
    const { database, clock, log } = this.parts;
    this.channel = channel;
    const delivery = new Delivery({
      channel: channel.name,
      database,
      outbox: this.outbox,
      clock,
      log,
      limits: channel.limits,
      isGroup: (chat) => channel.isGroup(chat),
      send: (letter) => channel.send(letter),
      recheck: (letter) => this.recheck(letter),
      givenUp: (letter) => this.tellGivenUp(letter),
    });
    const waking = new Waking({
      database,
      clock,
      log,
      ready: reached,
      atomically: (work) => this.atomically(work),
      look: (ledger, now) => this.look(ledger, now),
      queued: () => delivery.wake(),
    });
    this.delivery = delivery;
    this.waking = waking;
    const stopPruning = keepPruned({ inbox: new Inbox(database), outbox: this.outbox, clock, log });
    delivery.start();
    waking.start();
    await channel.run(stop);
    waking.stop();
    stopPruning();
  }

  /** Resolves when errands are run and all that is due has been said. */
  async allSaid(): Promise<void> {
    await this.errands.done();
    await this.delivery?.settled();
  }

  /** Resolves when what is being sent has been marked; sends nothing more. */
  async stop(): Promise<void> {
    this.waking?.stop();
    await this.delivery?.stop();
  }

  /** The world of a chat, for what draws, exports and hears. */
  worldOf(incoming: Pick<Incoming, 'chat' | 'from' | 'group'>) {
    return this.session.world(incoming, this.parts.clock.now());
  }

  /** A grower who is known let the bot into a group: its ledger begins, theirs before anyone's, and the bot says how it is spoken to. */
  joined(speaker: Speaker): void {
    const now = this.parts.clock.now();
    if (!this.parts.admission.admits(speaker.from, now)) return;
    const { current } = this.session.world(speaker, now);
    this.desk.queue({ chat: speaker.chat, key: 'hello', text: groupWelcome(this.bot ?? '') }, current.id);
  }

  /** Reads the ledger anew: it was changed by another hand than a turn's. */
  forget(): void {
    this.session = this.freshSession();
  }

  private takeTurn(incoming: Incoming): void {
    const { admission, clock } = this.parts;
    const now = clock.now();
    if (incoming.from.id !== atTheMachine) {
      const admitted = admission.admit(incoming, now);
      if (!admitted.in) {
        if (admitted.say !== null)
          this.desk.queue({ chat: incoming.chat, key: `door-${incoming.message}`, text: admitted.say });
        return;
      }
    }
    for (const errand of this.session.turn(this.withDocumentRead(incoming), now))
      this.errands.ask(errand, incoming);
    const ledger = chatById(this.parts.database, incoming.chat)?.ledger;
    if (ledger !== undefined) this.waking?.touched(ledger);
  }

  /** A document is a ledger, rows of entries, a weather station's minima, or said to be no such thing. */
  private withDocumentRead(incoming: Incoming): Incoming {
    if (!incoming.document) return incoming;
    const { bytes } = incoming.document;
    const { journal, settings } = this.worldOf(incoming);
    const brought = ledgerIn(bytes, journal, this.parts.clock.now());
    if (brought !== null) return { ...incoming, brought };
    const read = stationMinima(bytes, { dateOrder: settings.dateOrder });
    return { ...incoming, weather: 'refused' in read ? read : { ...read, flagged: read.skipped.flagged } };
  }

  private afterCommit(): void {
    this.errands.runAll();
    this.delivery?.wake();
  }

  /** Queues what a ledger's chats are to hear at this moment; answers when to look again. */
  private look(ledger: number, now: Instant): Instant | null {
    const moments = chatsOfLedger(this.parts.database, ledger)
      .filter(({ id, closedAt }) => this.serves(id) && closedAt === undefined)
      .flatMap(({ id }) => {
        const speaker = this.speakerOf(id);
        this.session.prompt(speaker, now);
        return this.session.nextMoment(speaker, now) ?? [];
      });
    return moments.length > 0 ? Math.min(...moments) : null;
  }

  private recheck(letter: WaitingLetter): Recheck {
    const now = this.parts.clock.now();
    if (chatById(this.parts.database, letter.chat)?.ledger !== letter.ledger) return 'moot';
    const world = this.session.world(this.speakerOf(letter.chat), now);
    if (!stillTrue(world, keyWithinChat(letter.key))) return 'moot';
    const { settings } = world;
    return isQuiet(localTime(now, settings.zone), settings.quiet)
      ? { notBefore: civilMoment(now, settings) }
      : 'holds';
  }

  /** Once a chat, while that waits itself: several may be given up together. */
  private tellGivenUp({ chat, key }: WaitingLetter): void {
    if (keyWithinChat(key).startsWith(GIVEN_UP)) return;
    const told = this.parts.database.get(
      'SELECT 1 FROM outbox WHERE chat = ? AND settled_at IS NULL AND instr(key, ?) > 0',
      chat,
      ` ${GIVEN_UP}`,
    );
    if (!told)
      this.desk.queue({ chat, key: `${GIVEN_UP}-${this.parts.clock.now()}`, text: channelWords.givenUp });
  }

  /** Of what is said unasked: in a chat of one, that one; in a group nobody. */
  private speakerOf(chat: string): Pick<Incoming, 'chat' | 'from' | 'group'> {
    return { chat, group: this.channel?.isGroup(chat) ?? false, from: { id: chat, name: '' } };
  }

  private serves(chat: string): boolean {
    return chat.split(':')[0] === this.channel?.name;
  }

  /** What a session remembers of the ledger may never have been committed: after a fault it reads anew. */
  atomically<T>(work: () => T): T {
    const before = this.errands.waiting;
    try {
      return this.parts.database.transaction(work);
    } catch (fault) {
      this.session = this.freshSession();
      // Those of other turns in the same transaction are still to be run.
      this.errands.keep(before);
      throw fault;
    }
  }

  private freshSession(): Session {
    const { database, zone, terminalLedger } = this.parts;
    const books = keptBooks({
      database,
      queue: (ledger, said) => this.desk.queue(said, ledger),
      ...(terminalLedger !== undefined ? { terminalLedger } : {}),
    });
    return new Session(books, zone);
  }
}
