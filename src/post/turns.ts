/** Work of many chats: a chat's in order, the chats in turn, as many in one transaction as a moment allows. */
import { type Log, traced } from '../log.js';

/** One thing to be dealt with. */
export interface Work {
  readonly chat: string;
  /** What has to be awaited first, a voice note heard for one; the chat's other work does not wait for it. */
  readonly prepare?: () => Promise<void>;
  /** Deals with it, within a transaction; leaves nothing behind where it throws. */
  readonly run: () => void;
  /** Sets it aside with its fault, within a transaction. */
  readonly failed: (fault: unknown) => void;
}

export interface TurnsPorts {
  /** All of it or nothing; a call within another leaves nothing behind where it throws, and the other goes on. */
  readonly atomically: <T>(work: () => T) => T;
  /** Whether a fault passes by itself, a full disk for one, so that the same work is tried again. */
  readonly passes: (fault: unknown) => boolean;
  /** What came of some work is committed. */
  readonly committed: () => void;
  readonly log: Log;
}

/** After so long a transaction is committed, so that sendings and polls get their turn. */
const SLICE_MS = 20;
const RETRY_MS = 5_000;

export class Turns {
  private readonly queues = new Map<string, Work[]>();
  /** Chats with work, the longest ready first. */
  private ready: string[] = [];
  /** Being prepared, and not in a queue yet. */
  private readonly preparing = new Set<Work>();
  private next: NodeJS.Immediate | undefined;
  private retry: NodeJS.Timeout | undefined;
  private stopped = false;
  private waiting: { readonly atMost: number; readonly done: () => void }[] = [];
  private inHand = 0;

  constructor(private readonly ports: TurnsPorts) {}

  /**
   * Runs `bring` in a transaction and deals with what it brings in the same one, as far as a moment allows. Throws what
   * the transaction throws; then nothing was brought.
   */
  add(bring: () => readonly Work[]): void {
    this.slice(bring);
  }

  /** Resolves when no more than so many are in hand, or when it was stopped. */
  roomFor(atMost: number): Promise<void> {
    if (this.inHand <= atMost || this.stopped) return Promise.resolve();
    return new Promise((done) => this.waiting.push({ atMost, done }));
  }

  /**
   * Deals with what it can within `graceMs`, and begins nothing after that: the rest stays where it was brought from.
   */
  async stop(graceMs: number): Promise<void> {
    const end = performance.now() + graceMs;
    clearTimeout(this.retry);
    while (this.inHand > this.preparing.size && performance.now() < end) {
      if (this.ready.length > 0) this.slice();
      await new Promise((resolve) => setTimeout(resolve, this.ready.length > 0 ? 0 : 20));
    }
    this.stopped = true;
    clearImmediate(this.next);
    clearTimeout(this.retry);
    for (const { done } of this.waiting.splice(0)) done();
  }

  private slice(bring: () => readonly Work[] = () => []): void {
    const begunAt = performance.now();
    const brought: Work[] = [];
    const dealt: Work[] = [];
    try {
      this.ports.atomically(() => {
        for (const work of bring()) {
          brought.push(work);
          this.accept(work);
        }
        while (performance.now() - begunAt < SLICE_MS) {
          const work = this.takeReady();
          if (!work) break;
          dealt.push(work);
          this.deal(work);
        }
      });
    } catch (fault) {
      this.putBack(dealt, brought);
      this.retry = setTimeout(() => this.schedule(), RETRY_MS);
      if (brought.length > 0) throw fault;
      this.ports.log.error('updates wait', { count: this.inHand, ...traced(fault) });
      return;
    }
    this.inHand -= dealt.length;
    if (dealt.length > 0) this.ports.committed();
    this.tellRoom();
    this.schedule();
  }

  private deal(work: Work): void {
    try {
      this.ports.atomically(() => work.run());
    } catch (fault) {
      if (this.ports.passes(fault)) throw fault;
      this.ports.atomically(() => work.failed(fault));
    }
  }

  private accept(work: Work): void {
    this.inHand++;
    if (!work.prepare) return this.enqueue(work);
    this.preparing.add(work);
    work
      .prepare()
      .catch((fault: unknown) => this.ports.log.error('not prepared', traced(fault)))
      .finally(() => {
        // Forgotten meanwhile where the transaction that brought it failed.
        if (!this.preparing.delete(work)) return;
        this.enqueue(work);
        this.schedule();
      });
  }

  private enqueue(work: Work): void {
    const queue = this.queues.get(work.chat);
    if (queue) queue.push(work);
    else {
      this.queues.set(work.chat, [work]);
      this.ready.push(work.chat);
    }
  }

  /** The first of the chat that is longest ready; the chat goes to the end of the line. */
  private takeReady(): Work | undefined {
    const chat = this.ready.shift();
    if (chat === undefined) return undefined;
    const queue = this.queues.get(chat) ?? [];
    const work = queue.shift();
    if (queue.length > 0) this.ready.push(chat);
    else this.queues.delete(chat);
    return work;
  }

  /** Nothing was committed: what was dealt with is dealt with again, what was brought is forgotten. */
  private putBack(dealt: readonly Work[], brought: readonly Work[]): void {
    for (const work of [...dealt].reverse()) {
      const queue = this.queues.get(work.chat);
      if (queue) queue.unshift(work);
      else this.queues.set(work.chat, [work]);
    }
    const forgotten = new Set(brought);
    for (const work of brought) {
      this.preparing.delete(work);
      const left = (this.queues.get(work.chat) ?? []).filter((each) => !forgotten.has(each));
      if (left.length > 0) this.queues.set(work.chat, left);
      else this.queues.delete(work.chat);
    }
    this.inHand -= brought.length;
    this.ready = [...this.queues.keys()];
  }

  private schedule(): void {
    if (this.stopped || this.ready.length === 0) return;
    clearImmediate(this.next);
    this.next = setImmediate(() => this.slice());
  }

  private tellRoom(): void {
    const told = this.waiting.filter(({ atMost }) => this.inHand <= atMost);
    this.waiting = this.waiting.filter((each) => !told.includes(each));
    for (const { done } of told) done();
  }
}
