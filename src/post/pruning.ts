/** Forgets, once an hour while the program runs, what of the post was settled long ago. */
import type { Clock } from '../calendar/clock.js';
import { type Log, traced } from '../log.js';
import type { Inbox } from './inbox.js';
import type { Outbox } from './outbox.js';

const EVERY_MS = 3_600_000;

export interface PruningPorts {
  readonly inbox: Inbox;
  readonly outbox: Outbox;
  readonly clock: Clock;
  readonly log: Log;
}

/** Prunes at once and every hour; answers how to stop. A fault is logged and tried again with the next. */
export function keepPruned({ inbox, outbox, clock, log }: PruningPorts): () => void {
  const prune = () => {
    try {
      inbox.prune(clock.now());
      outbox.prune(clock.now());
    } catch (fault) {
      log.error('post not pruned', traced(fault));
    }
  };
  prune();
  const hourly = setInterval(prune, EVERY_MS);
  hourly.unref();
  return () => clearInterval(hourly);
}
