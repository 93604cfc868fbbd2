/** Wakes at the earliest moment at which a ledger has something to say, and at each moment that comes after. */
import type { Clock, Instant } from '../calendar/clock.js';
import { type Log, traced } from '../log.js';
import type { Database } from '../ledger/database.js';

export interface WakingPorts {
  readonly database: Database;
  readonly clock: Clock;
  readonly log: Log;
  /** All of the work or nothing. */
  readonly atomically: (work: () => void) => void;
  /** Whether what is said would get out: while it would not, looking waits, so that one look catches up on all. */
  readonly ready: () => boolean;
  /**
   * Queues what the ledger has to say at this moment, within the transaction around it, and answers when to look again;
   * null where nothing is in sight. What was queued before under the same key is not queued again.
   */
  readonly look: (ledger: number, now: Instant) => Instant | null;
  /** Something was queued. */
  readonly queued: () => void;
}

/** A timer never sleeps longer, so that a clock that was set, or a machine that slept, is noticed. */
const LONGEST_SLEEP_MS = 60_000;
/** A clock that gains or loses more than this on the machine's own running time was set. */
const CLOCK_SET_MS = 30_000;
/** A ledger that was just written to is looked at when the grower has finished, not at each note. */
const SETTLING_MS = 3_000;
/** What a fault in looking costs: the ledger waits, the others do not. */
const AFTER_FAULT_MS = 600_000;
const NOT_READY_MS = 2_000;
/** So many ledgers, then messages get their turn. */
const AT_A_TIME = 10;

export class Waking {
  private timer: NodeJS.Timeout | undefined;
  private stopped = true;
  /** Ledgers that changed, and when they will have settled. */
  private readonly changed = new Map<number, number>();
  private lastWall = 0;
  private lastRunning = 0;

  constructor(private readonly ports: WakingPorts) {}

  /** Looks at every ledger once: whatever was missed while the program was away is caught up on. */
  start(): void {
    this.stopped = false;
    this.lookAtAllFrom(this.ports.clock.now());
    this.noteClocks();
    this.tick();
  }

  stop(): void {
    this.stopped = true;
    clearTimeout(this.timer);
  }

  /** Something in the ledger changed, so that what it has to say may have changed too. */
  touched(ledger: number): void {
    // Kept in mind only: after a crash every ledger is looked at anyway.
    this.changed.set(ledger, performance.now() + SETTLING_MS);
    if (this.changed.size === 1) this.sleep(Math.min(SETTLING_MS, this.untilNextMs()));
  }

  private tick(): void {
    if (this.stopped) return;
    if (!this.ports.ready()) return this.sleep(NOT_READY_MS);
    try {
      this.noticeSetClock();
      this.lookAtSome();
    } catch (fault) {
      this.ports.log.error('waking failed', traced(fault));
    }
    this.sleep(this.untilNextMs());
  }

  private lookAtSome(): void {
    const { database, clock, queued } = this.ports;
    const now = clock.now();
    const due = database
      .all<{ ledger: number }>('SELECT ledger FROM wakings WHERE at <= ? ORDER BY at LIMIT ?', now, AT_A_TIME)
      .map(({ ledger }) => ledger);
    const settled = [...this.changed].filter(([, at]) => at <= performance.now()).map(([ledger]) => ledger);
    const ledgers = [...new Set([...due, ...settled])].slice(0, AT_A_TIME);
    for (const ledger of ledgers) {
      this.changed.delete(ledger);
      this.lookAt(ledger, now);
    }
    if (ledgers.length > 0) queued();
  }

  private lookAt(ledger: number, now: Instant): void {
    const { database, atomically, look, log } = this.ports;
    try {
      atomically(() => {
        const next = look(ledger, now);
        if (next === null) database.run('DELETE FROM wakings WHERE ledger = ?', ledger);
        else this.set(ledger, Math.max(next, now + 1_000));
      });
    } catch (fault) {
      log.error('looking at a ledger failed', { ledger, ...traced(fault) });
      this.set(ledger, now + AFTER_FAULT_MS);
    }
  }

  private set(ledger: number, at: Instant): void {
    this.ports.database.run(
      'INSERT INTO wakings (ledger, at) VALUES (?, ?) ON CONFLICT DO UPDATE SET at = excluded.at',
      ledger,
      at,
    );
  }

  private lookAtAllFrom(now: Instant): void {
    this.ports.database.run(
      'INSERT INTO wakings (ledger, at) SELECT id, ? FROM ledgers WHERE true ON CONFLICT DO UPDATE SET at = excluded.at',
      now,
    );
  }

  /** After the clock was set back, moments worked out before lie too far ahead; after it was set on, they are past anyway. */
  private noticeSetClock(): void {
    const gained = this.ports.clock.now() - this.lastWall - (performance.now() - this.lastRunning);
    this.noteClocks();
    if (Math.abs(gained) < CLOCK_SET_MS) return;
    this.ports.log.warn('the clock was set', { gainedSeconds: Math.round(gained / 1000) });
    this.lookAtAllFrom(this.ports.clock.now());
  }

  private noteClocks(): void {
    this.lastWall = this.ports.clock.now();
    this.lastRunning = performance.now();
  }

  private untilNextMs(): number {
    const next = this.ports.database.get<{ at: number | null }>('SELECT min(at) AS at FROM wakings')?.at;
    const untilNext = next == null ? LONGEST_SLEEP_MS : next - this.ports.clock.now();
    const untilSettled = Math.min(...this.changed.values()) - performance.now();
    return Math.max(0, Math.min(untilNext, untilSettled));
  }

  private sleep(ms: number): void {
    if (this.stopped) return;
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.tick(), Math.min(ms, LONGEST_SLEEP_MS));
  }
}
