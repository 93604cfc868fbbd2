/** A file that tells a monitor when the bot last got through, and an alarm in the log when that is long ago. */
import { renameSync, writeFileSync } from 'node:fs';
import type { Log } from '../log.js';

const WRITTEN_EVERY_MS = 10_000;
const WATCHED_EVERY_MS = 60_000;
/** A poll and its retries take no longer. */
const QUIET_MS = 90_000;
/** Polls end every 25 seconds: several of them failed by then. */
const SILENT_MS = 300_000;

export class Heartbeat {
  private lastBeat = performance.now();
  private hasBeaten = false;
  private lastWritten = -Infinity;
  private readonly watch: NodeJS.Timeout;

  constructor(
    private readonly path: string,
    private readonly now: () => number,
    private readonly log: Log,
  ) {
    this.watch = setInterval(() => this.look(), WATCHED_EVERY_MS);
    this.watch.unref();
  }

  /** A poll got through. */
  beat(): void {
    this.lastBeat = performance.now();
    this.hasBeaten = true;
    if (this.lastBeat - this.lastWritten < WRITTEN_EVERY_MS) return;
    this.lastWritten = this.lastBeat;
    try {
      // Renamed into place, so that a monitor never reads half of it.
      writeFileSync(
        `${this.path}.new`,
        `${JSON.stringify({ lastPollAt: new Date(this.now()).toISOString() })}\n`,
      );
      renameSync(`${this.path}.new`, this.path);
    } catch (fault) {
      this.log.warn('heartbeat not written', { code: (fault as NodeJS.ErrnoException).code ?? null });
    }
  }

  /** Whether a poll got through lately. */
  get alive(): boolean {
    return this.hasBeaten && performance.now() - this.lastBeat < QUIET_MS;
  }

  stop(): void {
    clearInterval(this.watch);
  }

  private look(): void {
    const silentMs = performance.now() - this.lastBeat;
    if (silentMs > SILENT_MS) this.log.error('no poll got through', { seconds: Math.round(silentMs / 1000) });
  }
}
