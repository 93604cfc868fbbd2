/** Where the time comes from: the machine's clock, or one that a test or a replay moves on. */

/** Milliseconds since 1970-01-01T00:00Z. */
export type Instant = number;

export interface Clock {
  now(): Instant;
}

export const machineClock: Clock = { now: () => Date.now() };

/** A clock that stands still until it is set. */
export class SetClock implements Clock {
  constructor(private instant: Instant) {}

  now(): Instant {
    return this.instant;
  }

  set(instant: Instant): void {
    this.instant = instant;
  }
}
