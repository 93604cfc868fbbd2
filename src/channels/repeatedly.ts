/** Does something now and again every few seconds, until told to stop: what Telegram shows of a bot at work fades after five. */
import { setTimeout as sleep } from 'node:timers/promises';

const EVERY_MS = 4_000;
/** Drawing holds the program up: the first time is waited for, but no longer than this. */
const FIRST_MS = 1_000;

/** Resolves when it was done for the first time, or that takes too long. `work` must not reject. */
export async function repeatedly(work: () => Promise<void>): Promise<() => void> {
  const timer = setInterval(() => void work(), EVERY_MS);
  await Promise.race([work(), sleep(FIRST_MS, undefined, { ref: false })]);
  return () => clearInterval(timer);
}
