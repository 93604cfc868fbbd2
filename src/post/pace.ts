/** How fast a channel may be sent to: so much in all, so much a chat, so much a group. */

/** Milliseconds of a clock that only runs forward. */
export type Monotonic = number;

export interface PaceLimits {
  /** Of all chats together. */
  readonly perSecond: number;
  readonly perSecondInChat: number;
  readonly perMinuteInGroup: number;
}

/** Telegram's own figures are about 30 a second, 1 a second in a chat and 20 a minute in a group (its Bots FAQ). */
export const telegramPace: PaceLimits = { perSecond: 25, perSecondInChat: 1, perMinuteInGroup: 20 };

export const unhurried: PaceLimits = {
  perSecond: Infinity,
  perSecondInChat: Infinity,
  perMinuteInGroup: Infinity,
};

/** A quarter of a group's minute may go out at once, the rest is spread. */
const GROUP_BURST = 5;

interface Bucket {
  tokens: number;
  filledAt: Monotonic;
}

interface Filling {
  readonly capacity: number;
  readonly perMs: number;
}

export class Pace {
  private readonly all: Bucket;
  private readonly chats = new Map<string, Bucket>();
  private readonly filling: { readonly all: Filling; readonly chat: Filling; readonly group: Filling };

  constructor(limits: PaceLimits, now: Monotonic) {
    this.filling = {
      all: { capacity: Math.max(1, limits.perSecond / 5), perMs: limits.perSecond / 1000 },
      chat: { capacity: 1, perMs: limits.perSecondInChat / 1000 },
      group: {
        capacity: GROUP_BURST,
        perMs: Math.min(limits.perSecondInChat / 1000, (limits.perMinuteInGroup - GROUP_BURST) / 60_000),
      },
    };
    this.all = { tokens: this.filling.all.capacity, filledAt: now };
  }

  /** Milliseconds until any message may go. */
  waitMs(now: Monotonic): number {
    return untilToken(this.all, this.filling.all, now);
  }

  /** Counts one message to a chat, and answers how long that chat has to wait for its next, in milliseconds. */
  spend(chat: string, group: boolean, now: Monotonic): number {
    const filling = group ? this.filling.group : this.filling.chat;
    take(this.all, this.filling.all, now);
    const bucket = this.chats.get(chat) ?? { tokens: filling.capacity, filledAt: now };
    take(bucket, filling, now);
    this.chats.delete(chat);
    this.chats.set(chat, bucket);
    this.forgetFull(now);
    return untilToken(bucket, filling, now);
  }

  /** A bucket of more than a minute ago is full again: least lately used first, a few at a time. */
  private forgetFull(now: Monotonic): void {
    for (const [chat, { filledAt }] of this.chats) {
      if (now - filledAt < 60_000) return;
      this.chats.delete(chat);
    }
  }
}

function take(bucket: Bucket, filling: Filling, now: Monotonic): void {
  bucket.tokens = fill(bucket, filling, now) - 1;
  bucket.filledAt = now;
}

function untilToken(bucket: Bucket, filling: Filling, now: Monotonic): number {
  const tokens = fill(bucket, filling, now);
  return tokens >= 1 ? 0 : Math.ceil((1 - tokens) / filling.perMs);
}

function fill(bucket: Bucket, { capacity, perMs }: Filling, now: Monotonic): number {
  if (perMs === Infinity) return capacity;
  return Math.min(capacity, bucket.tokens + (now - bucket.filledAt) * perMs);
}
