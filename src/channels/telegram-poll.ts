/** Fetches updates and keeps each batch before the Bot API may forget it; backs off from every kind of fault. */
import { setTimeout as sleep } from 'node:timers/promises';
import { type Log, traced } from '../log.js';
import type { Arrival } from '../post/inbox.js';
import { type BotApi, BotFault, type Update } from './telegram.js';
import { chatOfUpdate } from './telegram-update.js';

export interface PollPorts {
  readonly api: BotApi;
  readonly bot: string;
  readonly log: Log;
  /** Keeps a batch, so that the Bot API may forget it; where it throws, the batch comes again. Polling goes on when it resolves. */
  readonly take: (arrivals: readonly Arrival[]) => Promise<void>;
}

const POLL_SECONDS = 25;
/** The client's own limit is minutes: a connection that died silently must not cost so much. */
const ABORT_MS = (POLL_SECONDS + 10) * 1000;
const BATCH = 100;
const LONGEST_BACKOFF_MS = 30_000;
/** A conflict comes at every redeploy, until the other poller's last call has run out. */
const CONFLICT_MS = 3_000;
const BAD_TOKEN_MS = 60_000;

export async function pollUpdates(ports: PollPorts, stop: AbortSignal): Promise<void> {
  let offset: number | undefined;
  let failures = 0;
  while (!stop.aborted) {
    try {
      const request = {
        limit: BATCH,
        timeoutSeconds: POLL_SECONDS,
        ...(offset !== undefined ? { offset } : {}),
      };
      const updates = await ports.api.updates(
        request,
        AbortSignal.any([stop, AbortSignal.timeout(ABORT_MS)]),
      );
      await ports.take(arrivalsOf(updates, ports));
      // An empty answer has confirmed all before. Without an offset the next poll also sees updates numbered lower,
      // as the Bot API may number them after an idle week.
      offset = nextOffset(updates);
      failures = 0;
    } catch (fault) {
      if (stop.aborted) return;
      await pause(backoffMs(fault, failures++, ports.log), stop);
    }
  }
}

function arrivalsOf(updates: readonly Update[], { bot, log }: PollPorts): Arrival[] {
  return updates.flatMap((update) => {
    if (Number.isSafeInteger(update?.update_id))
      return [{ bot, updateId: update.update_id, chat: chatOfUpdate(update), body: JSON.stringify(update) }];
    log.warn('update without a number passed over');
    return [];
  });
}

function nextOffset(updates: readonly Update[]): number | undefined {
  const ids = updates.map((update) => update?.update_id).filter(Number.isSafeInteger);
  return ids.length > 0 ? Math.max(...ids) + 1 : undefined;
}

function backoffMs(fault: unknown, failures: number, log: Log): number {
  const growing = Math.min(500 * 2 ** Math.min(failures, 10), LONGEST_BACKOFF_MS);
  if (!(fault instanceof BotFault)) {
    // The ledger's disk, for one: the batch was not kept, so the Bot API keeps it.
    log.error('updates not kept', { ...traced(fault), failures: failures + 1 });
    return growing;
  }
  log.warn('poll failed', { kind: fault.kind, why: fault.why, failures: failures + 1 });
  if (fault.kind === 'conflict') return CONFLICT_MS;
  if (fault.kind === 'badToken') return BAD_TOKEN_MS;
  if (fault.kind === 'tooFast') return fault.waitSeconds * 1000;
  return growing;
}

async function pause(ms: number, stop: AbortSignal): Promise<void> {
  await sleep(ms, undefined, { signal: stop }).catch(() => undefined);
}
