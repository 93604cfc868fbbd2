/** How the numbers of a batch move when some of it is carried, potted, shared out or goes. */
import { alive, type Batch } from './batch.js';
import type { PotOn } from './entry.js';

/**
 * The most that can ever have rooted: those alive or sent out, and of the lost at most as many as were already known to
 * have rooted.
 */
export function rootedBound(batch: Batch): number {
  return alive(batch) + batch.dispatched + Math.min(batch.lost, batch.rooted);
}

/** Where the batch stands after `count` of it are carried to `to`, from `from` or from wherever most stand. */
export function move(batch: Batch, count: number, to: string, from?: string): Record<string, number> {
  const left = count >= alive(batch) ? {} : takeFrom(batch.standing, count, { from, spare: to });
  return { ...left, [to]: Math.min(alive(batch), (left[to] ?? 0) + count) };
}

/**
 * The batch's places after `count` of it are gone; its numbers are the caller's. What is planted out goes last: it is
 * what is still in pots that is given away, sold or parted.
 */
export function without(batch: Batch, count: number): Batch {
  const known = total(batch.standing);
  const unplaced = Math.max(0, alive(batch) - known);
  const gone = Math.max(0, count - unplaced);
  const planted = batch.acts.findLast(({ kind }) => kind === 'plantOut')?.entry;
  const bed = planted?.kind === 'plantOut' ? planted.place : undefined;
  const left = takeFrom(batch.standing, gone, { spare: bed });
  return { ...batch, standing: takeFrom(left, gone - (total(batch.standing) - total(left)), {}) };
}

/** Where the batch stands after `count` of it are planted out at `to`: those that had no bed yet. */
export function plantedAt(batch: Batch, count: number, to: string): Record<string, number> {
  const left = without(batch, count).standing;
  return { ...left, [to]: Math.min(alive(batch), (left[to] ?? 0) + count) };
}

/**
 * How many were ever potted on, after `count` are. A batch all of which fits again goes into larger pots: the same
 * plants are not counted twice.
 */
export function pottedAnew(batch: Batch, entry: PotOn, count: number): number {
  const all = entry.count === undefined || entry.count === 'all';
  const larger = isLarger(entry.potSize, batch.pottedOn > 0 ? batch.potSize : null);
  if (all || (larger && count <= batch.pottedOn)) return Math.max(batch.pottedOn, count);
  const together = batch.pottedOn + count;
  return together <= rootedBound(batch) ? together : Math.max(batch.pottedOn, count);
}

/**
 * Parts `count` living plants from a batch under a label of their own. What is known of the whole (rooted, potted on …)
 * is shared in proportion, so that the two add up to it. `place` is where the part stands, and is emptied first; else it
 * stands where most did.
 */
export function share(
  batch: Batch,
  count: number,
  label: string,
  place?: string,
): [kept: Batch, part: Batch] {
  const living = alive(batch);
  const portion = (number: number) =>
    Math.min(count, Math.round((Math.min(number, living) * count) / Math.max(1, living)));
  const standing = place === undefined ? takenFrom(batch.standing, count) : { [place]: count };
  const part: Batch = {
    ...batch,
    label,
    count,
    lost: 0,
    dispatched: 0,
    rooted: portion(batch.rooted),
    pottedOn: portion(batch.pottedOn),
    pinched: portion(batch.pinched),
    plantedOut: portion(batch.plantedOut),
    pots: null,
    standing,
  };
  const kept: Batch = {
    ...batch,
    count: batch.count - count,
    rooted: batch.rooted - part.rooted,
    pottedOn: batch.pottedOn - part.pottedOn,
    pinched: batch.pinched - part.pinched,
    plantedOut: batch.plantedOut - part.plantedOut,
    standing:
      place !== undefined && batch.standing[place] !== undefined
        ? takeFrom(batch.standing, count, { from: place })
        : without(batch, count).standing,
  };
  return [kept, part];
}

function takenFrom(standing: Readonly<Record<string, number>>, count: number): Record<string, number> {
  const left = takeFrom(standing, count, {});
  const taken: Record<string, number> = {};
  for (const [place, number] of Object.entries(standing)) {
    const gone = number - (left[place] ?? 0);
    if (gone > 0) taken[place] = gone;
  }
  return taken;
}

/** Takes `count` from `from` first, then from where most stand; `spare` is touched last. */
function takeFrom(
  standing: Readonly<Record<string, number>>,
  count: number,
  { from, spare }: { from?: string | undefined; spare?: string | undefined },
): Record<string, number> {
  const left: Record<string, number> = { ...standing };
  const order = Object.keys(left).sort(
    (a, b) => rank(a, from, spare) - rank(b, from, spare) || (left[b] ?? 0) - (left[a] ?? 0),
  );
  let open = count;
  for (const place of order) {
    if (place === spare) continue;
    const here = Math.min(open, left[place] ?? 0);
    open -= here;
    left[place] = (left[place] ?? 0) - here;
    if (left[place] === 0) delete left[place];
  }
  return left;
}

function rank(place: string, from: string | undefined, spare: string | undefined): number {
  return place === from ? 0 : place === spare ? 2 : 1;
}

function total(standing: Readonly<Record<string, number>>): number {
  return Object.values(standing).reduce((sum, count) => sum + count, 0);
}

const unitMillimetres: Readonly<Record<string, number>> = { mm: 1, cm: 10, in: 25.4 };
const unitMillilitres: Readonly<Record<string, number>> = { ml: 1, l: 1000, qt: 946, gal: 3785 };

/** Whether `next` is known to be a larger pot than `before`; sizes of unlike measures don't compare. */
function isLarger(next: string | undefined, before: string | null): boolean {
  if (next === undefined || before === null) return false;
  for (const units of [unitMillimetres, unitMillilitres]) {
    const [a, b] = [inUnits(next, units), inUnits(before, units)];
    if (a !== null && b !== null) return a > b;
  }
  return false;
}

function inUnits(size: string, units: Readonly<Record<string, number>>): number | null {
  const match = /^(\d+(?:\.\d+)?)([a-z]+)$/.exec(size);
  const unit = units[match?.[2] ?? ''];
  return match && unit !== undefined ? Number(match[1]) * unit : null;
}
