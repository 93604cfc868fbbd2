/** All that is due or will be, derived from the ledger: the way in of the outlook. */
import { addDays, type Day, daysBetween, latest } from '../calendar/day.js';
import { alive, type Batch, began, isLive } from '../ledger/batch.js';
import type { Ledger } from '../ledger/ledger.js';
import { bundled } from './bundling.js';
import { type Due, type DueKind, isDue } from './due.js';
import { growingDues } from './due-growing.js';
import { bringInDues, frostWarnings } from './due-frost.js';
import { tendingDues } from './due-tending.js';
import { reminderDues } from './due-reminders.js';
import { rootingDues } from './due-rooting.js';
import { strikeDues } from './due-strikes.js';
import type { Keeper } from './keeper.js';
import { rootingOutlook } from './rooting-outlook.js';
import { type Growing, growingOf, isResting, springAfter } from './season.js';
import type { Site } from './site.js';
import { type Snooze, snoozed } from './snoozing.js';

export interface Outlook {
  readonly ledger: Ledger;
  readonly today: Day;
  readonly site: Site;
  /** Kept from one derivation to the next, so that a forecast is worked out once. */
  readonly keeper: Keeper;
  readonly snoozes?: readonly Snooze[];
  /** Keys that a grower has answered or put off for good. */
  readonly settled?: ReadonlySet<string>;
}

/** What is due by today and what is coming, earliest first; nothing that is moot, settled or too late. */
export function dues(outlook: Outlook): readonly Due[] {
  const { ledger, today, site, snoozes = [], settled = new Set() } = outlook;
  const batches = [...ledger.batches.values()].filter(isLive);
  const all = [
    ...bundled(batches.flatMap((batch) => batchDues(outlook, batch))),
    ...tendingDues(
      ledger,
      batches.filter((batch) => isRooting(batch, outlook)),
      today,
    ),
    ...frostWarnings(ledger, site, today),
    ...bringInDues(ledger, site, today),
    ...strikeDues(outlook),
    ...reminderDues(ledger, today),
  ];
  return oneQuestionEach(
    snoozed(all, snoozes, ledger).filter(
      (due) => !settled.has(due.key) && (due.tooLateAfter === null || today <= due.tooLateAfter),
    ),
    today,
  ).sort((a, b) => compare(a.from, b.from) || compare(a.key, b.key));
}

/** What one batch asks for, now and later. */
export function batchDues({ ledger, today, site, keeper }: Outlook, batch: Batch): readonly Due[] {
  const growing = growingOf(batch, site);
  const rooting = needsRoots(batch) ? rootingOutlook(ledger, batch, site.hemisphere, keeper) : null;
  const found = [
    ...(rooting === null ? [] : rootingDues(batch, rooting, growing, site)),
    ...growingDues(batch, growing, { today, site }),
  ];
  return growing?.overwinters ? found.map((due) => afterWinter(due, batch, growing, { today, site })) : found;
}

/** Nothing falls into the winter's rest, and what was due before it is not late after it: it begins anew. */
function afterWinter(
  due: Due,
  batch: Batch,
  growing: Growing,
  { today, site }: Pick<Outlook, 'today' | 'site'>,
): Due {
  const resting = isResting(today, growing, site);
  const woke = springAfter(resting ? today : began(batch), site);
  if ((!resting && today < woke) || due.from >= woke) return due;
  const bestBy = addDays(woke, daysBetween(due.from, due.bestBy));
  return {
    ...due,
    from: woke,
    bestBy,
    ...(due.tooLateAfter === null ? {} : { tooLateAfter: latest(due.tooLateAfter, bestBy) }),
  };
}

function needsRoots(batch: Batch): boolean {
  return (
    batch.struck !== null &&
    batch.hardeningSince === null &&
    batch.plantedOut === 0 &&
    batch.pottedOn < alive(batch)
  );
}

function isRooting(batch: Batch, { today, site }: Outlook): boolean {
  return (
    needsRoots(batch) &&
    batch.pottedOn === 0 &&
    batch.rooted < alive(batch) &&
    !isResting(today, growingOf(batch, site), site)
  );
}

/** Where a batch could be asked about twice on one day, what takes it furthest comes first, and alone. */
const FURTHEST_FIRST: readonly DueKind[] = ['plantOut', 'hardenOff', 'potOn', 'pinch', 'check', 'clearOut'];

function oneQuestionEach(all: readonly Due[], today: Day): Due[] {
  const first = new Map<string, Due>();
  const rank = (due: Due) => FURTHEST_FIRST.indexOf(due.kind);
  for (const due of all) {
    const [label] = due.labels;
    if (rank(due) < 0 || label === undefined || !isDue(due, today)) continue;
    const other = first.get(label);
    if (!other || rank(due) < rank(other)) first.set(label, due);
  }
  return all.filter((due) => rank(due) < 0 || !isDue(due, today) || first.get(due.labels[0] ?? '') === due);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
