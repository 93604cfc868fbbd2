/** What a batch has shown of its rooting, as intervals in which cuttings rooted and cuttings still open. */

/** A look at a batch: `day` counts from striking (the day after is 1), `rooted` is cumulative. */
export interface RootCheck {
  readonly day: number;
  readonly rooted: number;
}

/** A batch as the rooting model sees it. Checks ascend in day and never fall in count. */
export interface RootingRecord {
  readonly struck: number;
  readonly checks: readonly RootCheck[];
  /** Cuttings lost so far; they stay among those struck. */
  readonly lost?: number;
  /** The last check was the clearing-out count: what had not rooted never does. */
  readonly final?: boolean;
}

/** `rooted` of them rooted after day `from` and by day `to`. */
export interface RootedBetween {
  readonly from: number;
  readonly to: number;
  readonly rooted: number;
}

/** A record split into what the likelihood needs. */
export interface RootingEvidence {
  readonly intervals: readonly RootedBetween[];
  /** How many have rooted. */
  readonly rooted: number;
  /** How many may yet root after day `lookedOn`. */
  readonly open: number;
  /** How many are known never to root: lost before rooting, or counted out. */
  readonly failed: number;
  /** Day of the last check, 0 without one. */
  readonly lookedOn: number;
}

/**
 * Splits a record. Lost cuttings count as not rooted while there are that many not rooted; beyond that they were rooted
 * ones that died, and stay counted as rooted.
 */
export function evidenceOf({ struck, checks, lost = 0, final = false }: RootingRecord): RootingEvidence {
  const intervals: RootedBetween[] = [];
  let rooted = 0;
  let lookedOn = 0;
  for (const check of checks) {
    if (check.rooted > rooted)
      intervals.push({ from: lookedOn, to: check.day, rooted: check.rooted - rooted });
    rooted = check.rooted;
    lookedOn = check.day;
  }
  const left = struck - rooted;
  const failed = final ? left : Math.min(lost, left);
  return { intervals, rooted, open: left - failed, failed, lookedOn };
}

/** Half of those struck, rounded up: a batch is ready when this many have rooted. */
export function halfOf(struck: number): number {
  return Math.ceil(struck / 2);
}

/**
 * Half of those expected to root, at least one: what makes a batch ready in advice to the grower. At a strike rate of a
 * quarter, half of those struck would never be reached though good plants stand there.
 */
export function halfOfExpected(struck: number, strikeRate: number): number {
  return Math.max(1, Math.ceil((struck * strikeRate) / 2 - 1e-9));
}
