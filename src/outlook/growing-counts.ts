/** How many plants what lives will have given by a day, as a distribution. */
import { type Day, daysBetween } from '../calendar/day.js';
import { convolved, type LiveBatch, rootedInTime } from '../horticulture/on-track.js';
import { alive, type Batch, began } from '../ledger/batch.js';
import type { Ledger } from '../ledger/ledger.js';
import { fingerprint, type Keeper } from './keeper.js';
import {
  learntFrom,
  type RootingBasis,
  rootingBasis,
  rootingClock,
  rootingTemperatures,
} from './rooting-basis.js';
import { rootingStory } from './rooting-story.js';
import type { Site } from './site.js';

/** Where no day is named, a year is time enough. */
export const LONG_DAYS = 365;

interface Ahead {
  readonly ledger: Ledger;
  readonly site: Site;
  readonly keeper: Keeper;
}

/** Chances of 0, 1, 2 … plants rooted in time from batches not planted out, those that share a learning together. */
export function growingCounts(batches: readonly Batch[], rootedBy: Day | null, ahead: Ahead): Float64Array {
  const { ledger, site, keeper } = ahead;
  let sure = 0;
  const open: { live: Omit<LiveBatch, 'learnt'>; basis: RootingBasis; own: unknown }[] = [];
  for (const batch of batches) {
    const record = rootingStory(batch);
    const indoors = alive(batch) - Math.min(batch.plantedOut, alive(batch));
    if (
      record === null ||
      batch.plantedOut > 0 ||
      batch.rooted >= alive(batch) ||
      batch.hardeningSince !== null
    ) {
      sure += indoors;
      continue;
    }
    const temperatures = rootingTemperatures(ledger, batch);
    const rootedByDay = rootedBy === null ? LONG_DAYS : daysBetween(began(batch), rootedBy);
    const gone = batch.dispatched + Math.max(0, batch.lost - (batch.count - batch.rooted));
    open.push({
      live: { record, rootedByDay, gone, clock: rootingClock(batch, temperatures) },
      basis: rootingBasis(ledger, batch, site.hemisphere),
      own: [record, rootedByDay, gone, batch.crop, [...temperatures]],
    });
  }
  const key = fingerprint(JSON.stringify(open.map(({ own, basis }) => [own, basis.key])));
  const rooted = keeper.recall('foreseen', `growing ${key}`, () =>
    rootedInTime(open.map(({ live, basis }) => ({ ...live, learnt: learntFrom(basis, keeper) }))),
  );
  return convolved(certainly(sure), rooted);
}

function certainly(count: number): Float64Array {
  const chances = new Float64Array(count + 1);
  chances[count] = 1;
  return chances;
}
