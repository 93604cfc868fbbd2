/** A grower's ledger in a few lines, for tests of the outlook. */
import { asDay, type Day } from '../../src/calendar/day.js';
import { fold } from '../../src/ledger/fold.js';
import type { Ledger } from '../../src/ledger/ledger.js';
import type { Posting } from '../../src/ledger/posting.js';
import { type Due, isDue } from '../../src/outlook/due.js';
import { dues, type Outlook } from '../../src/outlook/dues.js';
import { memoryKeeper } from '../../src/outlook/keeper.js';
import { type Site, siteOf } from '../../src/outlook/site.js';

/** Kept over all tests: forecasts are the same wherever they are asked for. */
export const keeper = memoryKeeper();

/** A posting with its day as text. */
export type Told = {
  readonly kind: Posting['kind'];
  readonly date: string;
  readonly [slot: string]: unknown;
};

export function ledgerOf(...told: readonly Told[]): Ledger {
  const { ledger, conflicts } = fold(
    told.map((each, index) => ({
      line: index + 1,
      at: 0,
      postedAt: 0,
      by: null,
      source: null,
      what: { ...each, date: asDay(each.date) } as unknown as Posting,
    })),
  );
  if (conflicts.length > 0) throw new Error(JSON.stringify(conflicts));
  return ledger;
}

export const northern: Site = siteOf({ zone: 'Europe/London', lastFrost: '05-05', firstFrost: '10-25' });
export const southern: Site = siteOf({ zone: 'Australia/Hobart', lastFrost: '10-20', firstFrost: '04-25' });

/** What is due or coming on that day. */
export function seen(ledger: Ledger, today: string, more: Partial<Outlook> = {}): readonly Due[] {
  return dues({ ledger, today: asDay(today), site: northern, keeper, ...more });
}

/** Kinds of what is due by that day, tending left out. */
export function kindsDue(ledger: Ledger, today: string, more: Partial<Outlook> = {}): string[] {
  return seen(ledger, today, more)
    .filter((due) => isDue(due, asDay(today)) && due.kind !== 'tend')
    .map(({ kind }) => kind);
}

/** The one due of that kind. */
export function the(kind: Due['kind'], all: readonly Due[]): Due {
  const found = all.filter((due) => due.kind === kind);
  if (found.length !== 1)
    throw new Error(`${found.length} of ${kind}: ${all.map(({ key }) => key).join(', ')}`);
  return found[0]!;
}

export function days(from: string, to: string): Day[] {
  const list: Day[] = [];
  for (let at = Date.parse(from); at <= Date.parse(to); at += 86_400_000)
    list.push(asDay(new Date(at).toISOString().slice(0, 10)));
  return list;
}
