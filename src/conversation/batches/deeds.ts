/** Standing entries as receipts need them, and lists of what the ledger holds. */
import { firstDay } from '../../calendar/span.js';
import type { Ledger, StandingEntry } from '../../ledger/ledger.js';
import type { Line } from '../../ledger/posting.js';
import type { Done } from '../../words/receipts.js';
import type { Speech } from '../../words/speech.js';
import type { Sitting } from '../sitting.js';

/** What stands on these lines, in the order of the journal. */
export function standingOn(ledger: Ledger, lines: readonly Line[]): StandingEntry[] {
  const wanted = new Set(lines);
  // What a turn speaks of stands near the end, and the order is the journal's: no need to go through it all.
  const first = Math.min(...lines);
  let from = ledger.standing.length;
  while (from > 0 && (ledger.standing[from - 1]?.line ?? 0) >= first) from--;
  return ledger.standing.slice(from).filter((each) => wanted.has(each.line));
}

export function doneOf(ledger: Ledger, { line, entry, touched }: StandingEntry): Done {
  const batches = touched.flatMap((label) => ledger.batches.get(label) ?? []);
  const [only] = batches;
  const act =
    batches.length === 1
      ? only?.acts.find((each) => each.line === line && each.entry.kind === entry.kind)
      : undefined;
  return { entry, touched: batches, count: act?.count ?? null };
}

export function speechOf({ settings, today }: Pick<Sitting, 'settings' | 'today'>): Speech {
  return { wording: settings.wording, units: settings.units, today };
}

/** Standing entries in the order in which they were done; those of one day in the order told. */
export function byDay(entries: readonly StandingEntry[]): StandingEntry[] {
  return [...entries].sort((a, b) => {
    const [one, other] = [firstDay(a.entry.date), firstDay(b.entry.date)];
    return one < other ? -1 : one > other ? 1 : a.line - b.line;
  });
}
