/** Updates that wait for a poller, with the Bot API's own rules of offsets and confirmation. */
import type { Update } from 'grammy/types';

interface Poll {
  readonly limit: number;
  readonly answer: (updates: Update[] | 'conflict') => void;
  readonly timer: NodeJS.Timeout;
}

/** A second call with the same offset within this time gets one update at most (as was seen of the real one). */
const SAME_OFFSET_MS = 500;

export class UpdateQueue {
  private waiting: Update[] = [];
  private poll: Poll | undefined;
  private lastOffset: number | undefined;
  private lastAt = -Infinity;

  add(update: Update): void {
    this.waiting.push(update);
    if (this.poll) this.answerPoll(this.poll, this.waiting.slice(0, this.poll.limit));
  }

  /** How many are not confirmed. */
  get length(): number {
    return this.waiting.length;
  }

  /**
   * Confirms and forgets all below `offset`, answers up to `limit` of the rest, and waits up to `timeoutMs` where there
   * are none. A poll that waits already is told of the conflict.
   */
  take(offset: number | undefined, limit: number, timeoutMs: number): Promise<Update[] | 'conflict'> {
    if (offset !== undefined) this.waiting = this.waiting.filter(({ update_id }) => update_id >= offset);
    if (this.poll) this.answerPoll(this.poll, 'conflict');
    const now = performance.now();
    const hurried = offset !== undefined && offset === this.lastOffset && now - this.lastAt < SAME_OFFSET_MS;
    this.lastOffset = offset;
    this.lastAt = now;
    const most = hurried ? 1 : limit;
    if (this.waiting.length > 0 || timeoutMs === 0) return Promise.resolve(this.waiting.slice(0, most));
    return new Promise((answer) => {
      const poll: Poll = { limit, answer, timer: setTimeout(() => this.answerPoll(poll, []), timeoutMs) };
      this.poll = poll;
    });
  }

  /** Ends the poll that waits: its client went away, or the fake closes. */
  dropPoll(): void {
    if (this.poll) this.answerPoll(this.poll, []);
  }

  private answerPoll(poll: Poll, updates: Update[] | 'conflict'): void {
    clearTimeout(poll.timer);
    if (this.poll === poll) this.poll = undefined;
    poll.answer(updates);
  }
}
