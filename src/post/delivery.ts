/** Brings the outbox's letters to one channel: claimed, sent, marked; in a chat's order, at the channel's pace. */
import type { Clock, Instant } from '../calendar/clock.js';
import { type Log, traced } from '../log.js';
import { chatById, closeChat, moveChat } from '../ledger/chats.js';
import type { Database } from '../ledger/database.js';
import type { Outbox, PostKind, WaitingLetter } from './outbox.js';
import { type Monotonic, Pace, type PaceLimits } from './pace.js';

/** How a sending ended. */
export type Sent =
  | { readonly outcome: 'arrived'; readonly message?: string }
  /** The channel asks for a pause of everything. */
  | { readonly outcome: 'tooFast'; readonly waitSeconds: number }
  /** The chat takes nothing any more, until it says otherwise. */
  | { readonly outcome: 'closed'; readonly why: string }
  /** The chat has another id now. */
  | { readonly outcome: 'moved'; readonly to: string }
  /** The channel will never take this letter. */
  | { readonly outcome: 'refused'; readonly why: string }
  /** The channel was not reached, or gave no answer: it may have arrived. */
  | { readonly outcome: 'failed'; readonly why: string };

/** Whether a notice still holds: it may be moot by now, or the hour no longer civil. */
export type Recheck = 'holds' | 'moot' | { readonly notBefore: Instant };

export interface DeliveryPorts {
  /** Chats of this channel only: what stands before the colon of a chat's id. */
  readonly channel: string;
  readonly database: Database;
  readonly outbox: Outbox;
  readonly clock: Clock;
  readonly log: Log;
  readonly limits: PaceLimits;
  readonly isGroup: (chat: string) => boolean;
  /** Never rejects but for a fault of its own. */
  readonly send: (letter: WaitingLetter) => Promise<Sent>;
  /** Asked just before a notice is sent. */
  readonly recheck: (letter: WaitingLetter) => Recheck;
  /** Told of a letter that is given up, within the transaction that settles it. */
  readonly givenUp: (letter: WaitingLetter) => void;
}

const IN_FLIGHT = 3;
const LONGEST_SLEEP_MS = 60_000;
const LONGEST_HOLD_MS = 600_000;
const LONGEST_PAUSE_MS = 30_000;
/**
 * A letter that fails time after time is given up when it was tried so often and has waited so long: long enough to outlast
 * an outage, and so often that a clock set days on does not cost a letter.
 */
const MOST_TRIES = 20;
const LONGEST_WAIT_MS = 3 * 86_400_000;

export class Delivery {
  private readonly pace: Pace;
  /** Chats that are being sent to. */
  private readonly busy = new Set<string>();
  /** Chats that have to wait, and until when. */
  private readonly held = new Map<string, Monotonic>();
  private readonly inFlight = new Set<Promise<void>>();
  private pausedUntil: Monotonic = 0;
  private failuresInARow = 0;
  private timer: NodeJS.Timeout | undefined;
  private awaiting: (() => void)[] = [];
  private stopped = true;

  constructor(private readonly ports: DeliveryPorts) {
    this.pace = new Pace(ports.limits, performance.now());
  }

  start(): void {
    this.stopped = false;
    const doubtful = this.ports.outbox.doubtful();
    if (doubtful.length > 0) this.ports.log.warn('sent again in doubt', { count: doubtful.length });
    this.wake();
  }

  /** Something was queued, or a chat was opened: looks at once. */
  wake(): void {
    if (this.stopped) return;
    clearTimeout(this.timer);
    let waitMs = 0;
    while (waitMs === 0) waitMs = this.startNext();
    this.timer = setTimeout(() => this.wake(), Math.min(waitMs, LONGEST_SLEEP_MS));
    if (this.awaiting.length > 0 && this.isSettled()) for (const done of this.awaiting.splice(0)) done();
  }

  /** Resolves when nothing is left that is due. */
  settled(): Promise<void> {
    return new Promise((resolve) => {
      this.awaiting.push(resolve);
      this.wake();
    });
  }

  /** Sends nothing more, and resolves when what is in hand has been marked. */
  async stop(): Promise<void> {
    this.stopped = true;
    clearTimeout(this.timer);
    await Promise.all(this.inFlight);
  }

  /** Begins one sending; answers 0 where one began, else for how many milliseconds there is nothing to begin. */
  private startNext(): number {
    const now = performance.now();
    if (this.inFlight.size >= IN_FLIGHT) return LONGEST_SLEEP_MS;
    const waitMs = Math.max(this.pausedUntil - now, this.pace.waitMs(now));
    if (waitMs > 0) return Math.ceil(waitMs);
    for (const [chat, until] of this.held) if (until <= now) this.held.delete(chat);
    const passingOver = [...this.busy, ...this.held.keys()];
    const letter = this.due('reply', passingOver) ?? this.due('notice', passingOver);
    if (!letter) return this.untilNext(now);
    this.busy.add(letter.chat);
    const sending = this.deliver(letter)
      .catch((fault: unknown) => this.holdAfterFault(letter, fault))
      .finally(() => {
        this.inFlight.delete(sending);
        this.busy.delete(letter.chat);
        this.wake();
      });
    this.inFlight.add(sending);
    return 0;
  }

  private due(kind: PostKind, passingOver: readonly string[]): WaitingLetter | undefined {
    const { outbox, channel, clock } = this.ports;
    return outbox.due(channel, kind, clock.now(), passingOver, 1)[0];
  }

  private isSettled(): boolean {
    return this.inFlight.size === 0 && !this.due('reply', []) && !this.due('notice', []);
  }

  private untilNext(now: Monotonic): number {
    const { outbox, clock } = this.ports;
    const dueAt = outbox.nextDueAt(clock.now()) ?? Infinity;
    const released = Math.min(...this.held.values());
    return Math.max(1, Math.ceil(Math.min(dueAt - clock.now(), released - now)));
  }

  private async deliver(letter: WaitingLetter): Promise<void> {
    const { outbox, clock, recheck, send, isGroup } = this.ports;
    const now = clock.now();
    const verdict = letter.kind === 'notice' ? recheck(letter) : 'holds';
    if (verdict === 'moot') return outbox.drop(letter.seq, 'moot', now);
    if (verdict !== 'holds') return outbox.putOff(letter.seq, Math.max(verdict.notBefore, now + 1_000));
    outbox.claim(letter.seq, now);
    this.hold(letter.chat, this.pace.spend(letter.chat, isGroup(letter.chat), performance.now()));
    this.mark(letter, await send(letter));
  }

  private mark(letter: WaitingLetter, sent: Sent): void {
    const { outbox, database, clock, log } = this.ports;
    const now = clock.now();
    if (sent.outcome !== 'failed') this.failuresInARow = 0;
    switch (sent.outcome) {
      case 'arrived':
        return outbox.markSent(letter.seq, sent.message, now);
      case 'tooFast':
        log.warn('told to slow down', { seconds: sent.waitSeconds });
        return this.pause(sent.waitSeconds * 1000);
      case 'closed':
        log.info('chat takes no messages', { why: sent.why });
        if (!chatById(database, letter.chat)) return outbox.drop(letter.seq, `closed: ${sent.why}`, now);
        return closeChat(database, letter.chat, sent.why, now);
      case 'moved':
        log.info('chat has a new id');
        return moveChat(database, letter.chat, `${this.ports.channel}:${sent.to}`);
      case 'refused':
        log.error('letter refused', { key: letter.key, why: sent.why });
        return outbox.drop(letter.seq, `refused: ${sent.why}`, now);
      case 'failed':
        log.warn('letter not sent', { key: letter.key, why: sent.why, tries: letter.tries + 1 });
        if (letter.tries + 1 >= MOST_TRIES && now - letter.queuedAt >= LONGEST_WAIT_MS) {
          log.error('letter given up', { key: letter.key, why: sent.why, tries: letter.tries + 1 });
          return this.giveUp(letter, sent.why, now);
        }
        this.pause(Math.min(500 * 2 ** this.failuresInARow++, LONGEST_PAUSE_MS));
        return this.hold(letter.chat, Math.min(1000 * 2 ** letter.tries, LONGEST_HOLD_MS));
    }
  }

  /** Settled, and told to its chat in a short letter, unless that is what cannot be sent. */
  private giveUp(letter: WaitingLetter, why: string, now: Instant): void {
    const { database, outbox, givenUp } = this.ports;
    database.transaction(() => {
      outbox.drop(letter.seq, `given up: ${why}`, now);
      givenUp(letter);
    });
  }

  /** A fault of our own, a full disk for one: the letter stays, and its chat waits. */
  private holdAfterFault(letter: WaitingLetter, fault: unknown): void {
    this.ports.log.error('letter not dealt with', { key: letter.key, ...traced(fault) });
    this.hold(letter.chat, LONGEST_PAUSE_MS);
  }

  private hold(chat: string, ms: number): void {
    const until = performance.now() + ms;
    if (ms > 0 && until > (this.held.get(chat) ?? 0)) this.held.set(chat, until);
  }

  private pause(ms: number): void {
    this.pausedUntil = Math.max(this.pausedUntil, performance.now() + ms);
  }
}
