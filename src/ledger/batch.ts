/** A batch: plants begun together under one label, with all that has been done to them. */
import type { Day } from '../calendar/day.js';
import type { CuttingType, Plant } from './entry.js';
import type { Line, Posting } from './posting.js';

/** One thing done to or seen on a batch, its counts resolved to numbers. */
export interface Act {
  readonly line: Line;
  readonly kind: Posting['kind'];
  /** Where only a span was said, its last day. */
  readonly on: Day;
  /** How many it was done to, or for a check how many have ever rooted by then; null where "some" was said. */
  readonly count: number | null;
  readonly entry: Posting;
}

export interface Batch {
  readonly label: string;
  readonly variety: string | null;
  readonly crop: string | null;
  /** Where only a span was said, its first day; null for plants that came in rooted. */
  readonly struck: Day | null;
  readonly received: Day | null;
  /** How many it began with, as corrected; a split moves some to another batch, a merger all. */
  readonly count: number;
  readonly pots: number | null;
  readonly cutting: CuttingType | null;
  readonly medium: string | null;
  readonly hormone: boolean | null;
  readonly potSize: string | null;
  /** How many stand where; what is not listed stands nowhere known. */
  readonly standing: Readonly<Record<string, number>>;
  /** How many ever rooted, were potted on, pinched, planted out. */
  readonly rooted: number;
  readonly pottedOn: number;
  readonly pinched: number;
  readonly plantedOut: number;
  readonly lost: number;
  readonly dispatched: number;
  readonly hardeningSince: Day | null;
  readonly mergedInto: string | null;
  /** In the order told. */
  readonly acts: readonly Act[];
}

/** How many live, those planted out among them. */
export function alive(batch: Batch): number {
  return batch.count - batch.lost - batch.dispatched;
}

export function isLive(batch: Batch): boolean {
  return alive(batch) > 0;
}

/** The day on which it was struck, or came in. */
export function began(batch: Batch): Day {
  return (batch.struck ?? batch.received) as Day;
}

/** Where most of it stands, of two places with as many the one told later; null where nobody said. */
export function placeOf(batch: Batch): string | null {
  let place: string | null = null;
  let most = 0;
  for (const [name, count] of Object.entries(batch.standing)) {
    if (count >= most) [place, most] = [name, count];
  }
  return place;
}

/** Whether any of it stands there. */
export function standsAt(batch: Batch, place: string): boolean {
  return Object.keys(batch.standing).some((name) => name.toLowerCase() === place.toLowerCase());
}

/** Whether a number of rooted cuttings was ever told. */
export function rootsKnown(batch: Batch): boolean {
  return batch.rooted > 0 || batch.acts.some((act) => act.kind === 'check' && act.count !== null);
}

/** What "all of them" means for potting on and planting out: the rooted where a check is known, else all that live. */
export function allReady(batch: Batch): number {
  return batch.rooted > 0 ? Math.min(batch.rooted, alive(batch)) : alive(batch);
}

/** Those not planted out yet. */
export function indoors(batch: Batch): number {
  return Math.max(0, alive(batch) - batch.plantedOut);
}

/** Whether the batch is of that plant; what the plant leaves open matches everything. Names compare without case. */
export function isOf(batch: Batch, plant: Plant): boolean {
  return same(plant.batch, batch.label) && same(plant.variety, batch.variety) && same(plant.crop, batch.crop);
}

function same(wanted: string | undefined, has: string | null): boolean {
  return wanted === undefined || wanted.toLowerCase() === has?.toLowerCase();
}
