/** What turns ask to be done outside the ledger, once they are committed: run side by side, each answered by a letter of its own. */
import type { Channel } from './channels/channel.js';
import type { Incoming, Outgoing } from './conversation/turn.js';
import type { Errand } from './conversation/world.js';
import { type Log, traced } from './log.js';
import { errandWords } from './words/errand-words.js';

/** What an errand brings back; null where it is done without a word. */
export type RunErrand = (
  errand: Errand,
  incoming: Incoming,
) => Promise<Omit<Outgoing, 'chat' | 'key'> | null>;

interface ErrandsParts {
  readonly log: Log;
  readonly run: RunErrand;
  readonly queue: (said: Outgoing) => void;
  readonly showMaking: (chat: string, making: Making) => Promise<(() => void) | undefined> | undefined;
}

type Making = Parameters<NonNullable<Channel['showMaking']>>[1];

/** What of these takes a while and ends in a file. */
const MADE: Partial<Record<Errand['kind'], Making>> = {
  picture: 'picture',
  labels: 'document',
  export: 'document',
};

type Task = { readonly errand: Errand; readonly incoming: Incoming };

export class Errands {
  private asked: Task[] = [];
  private readonly underWay = new Set<Promise<void>>();

  constructor(private readonly parts: ErrandsParts) {}

  /** Keeps an errand until its turn is committed. */
  ask(errand: Errand, incoming: Incoming): void {
    this.asked.push({ errand, incoming });
  }

  /** How many wait to be run. */
  get waiting(): number {
    return this.asked.length;
  }

  /** Forgets those asked by turns that were not committed: all but the first so many. */
  keep(first: number): void {
    this.asked = this.asked.slice(0, first);
  }

  /** Begins all that wait. */
  runAll(): void {
    for (const task of this.asked.splice(0)) {
      const run = this.runOne(task).finally(() => this.underWay.delete(run));
      this.underWay.add(run);
    }
  }

  /** Resolves when those under way are done. */
  async done(): Promise<void> {
    await Promise.all(this.underWay);
  }

  private async runOne({ errand, incoming }: Task): Promise<void> {
    const { log, run, queue, showMaking } = this.parts;
    const { chat, message } = incoming;
    const making = MADE[errand.kind];
    const made = making && (await showMaking(chat, making));
    const key = `errand-${message}`;
    try {
      const said = await run(errand, incoming);
      if (said) queue({ chat, key, replyTo: message, ...said });
    } catch (fault) {
      log.error('errand failed', { errand: errand.kind, ...traced(fault) });
      queue({ chat, key, text: errandWords.failed });
    } finally {
      made?.();
    }
  }
}
