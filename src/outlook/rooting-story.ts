/** A batch of the ledger as the rooting model sees it. */
import { type Day, daysBetween } from '../calendar/day.js';
import type { RootCheck, RootingRecord } from '../horticulture/rooting-record.js';
import { alive, type Batch } from '../ledger/batch.js';

/**
 * Its checks by day after striking, with what potting on tells of roots that nobody counted; null for plants that came in
 * rooted. Looks on one day are one look.
 */
export function rootingStory(batch: Batch): RootingRecord | null {
  if (batch.struck === null) return null;
  const struck = batch.struck;
  const byDay = new Map<number, number>();
  let rooted = 0;
  for (const { kind, on, count } of [...batch.acts].sort((a, b) =>
    a.on < b.on ? -1 : a.on > b.on ? 1 : a.line - b.line,
  )) {
    const seen =
      kind === 'check'
        ? (count ?? Math.max(1, rooted))
        : kind === 'potOn'
          ? Math.max(rooted, count ?? 0)
          : null;
    if (seen === null) continue;
    rooted = Math.min(batch.count, Math.max(rooted, seen));
    byDay.set(Math.max(1, daysBetween(struck, on)), rooted);
  }
  const checks: RootCheck[] = [...byDay].map(([day, count]) => ({ day, rooted: count }));
  return { struck: batch.count, checks, lost: Math.min(batch.lost, batch.count) };
}

/** Whether it can teach later batches: some roots were counted and none is waited for any more. */
export function isSettled(batch: Batch): boolean {
  const over =
    alive(batch) === 0 ||
    batch.pottedOn >= alive(batch) ||
    batch.plantedOut > 0 ||
    batch.hardeningSince !== null;
  return over && batch.struck !== null && batch.acts.some(({ kind }) => kind === 'check' || kind === 'potOn');
}

/** The day of the last look for roots, else that of striking. */
export function lastLook(batch: Batch): Day {
  const looks = batch.acts.filter(({ kind }) => kind === 'check' || kind === 'potOn').map(({ on }) => on);
  return looks.reduce(
    (latest, day) => (day > latest ? day : latest),
    batch.struck ?? (batch.received as Day),
  );
}
