/** What the forecast of a batch rests on: a range to begin with, and the grower's earlier batches. */
import type { Hemisphere } from '../calendar/hemisphere.js';
import { type Crop, cropNamed, type Range } from '../horticulture/crops.js';
import { rootingDays, strikePrior, wayOf } from '../horticulture/cutting-season.js';
import { clockFrom, plainClock, type RootingClock } from '../horticulture/thermal-time.js';
import { priorFromRange, type RootingPrior } from '../horticulture/rooting-prior.js';
import type { PastBatch } from '../horticulture/rooting-learning.js';
import { halfOf } from '../horticulture/rooting-record.js';
import { daysBetween } from '../calendar/day.js';
import { type Batch, began, placeOf } from '../ledger/batch.js';
import { entriesOf, type Ledger } from '../ledger/ledger.js';
import { lastDay } from '../calendar/span.js';
import { isSettled, rootingStory } from './rooting-story.js';
import { isHeated } from './standing.js';

export interface RootingBasis {
  readonly prior: RootingPrior;
  readonly history: readonly PastBatch[];
  readonly guess: StartingGuess;
  /** How earlier batches went; null where there are none. */
  readonly seen: SeenBefore | null;
}

/** Where the range to begin with comes from. */
export interface StartingGuess {
  readonly from: 'taught' | 'crop' | 'anyCutting';
  readonly days: Range;
  readonly heated: boolean;
}

/** Of `batches` earlier ones that got ready, `count` took `days` (found by then). */
export interface SeenBefore {
  readonly batches: number;
  readonly count: number;
  readonly days: Range;
}

/** Soft cuttings of a plant that nobody knows. From memory; doubtful on purpose. */
const ANY_CUTTING: { readonly days: Range; readonly strikePrior: readonly [number, number] } = {
  days: [12, 35],
  strikePrior: [4, 2],
};
/** An earlier batch under unlike conditions says less of this one. Judgement. */
const OTHER_CONDITIONS_WEIGHT = 0.5;
/** More than so many batches teach nothing new, and cost time. */
const MOST_HISTORY = 20;

/** Everything but the batch's own checks; the same for all live batches of one crop under the same conditions. */
export function rootingBasis(ledger: Ledger, batch: Batch, hemisphere: Hemisphere): RootingBasis {
  const heated = isHeated(placeOf(batch));
  const crop = batch.crop === null ? null : cropNamed(batch.crop);
  const circumstances = { cutting: batch.cutting ?? undefined, struckOn: began(batch), hemisphere };
  const taught = batch.crop === null ? undefined : ledger.taught.get(batch.crop.toLowerCase());
  const guess: StartingGuess =
    taught !== undefined
      ? { from: 'taught', days: taught, heated }
      : crop
        ? { from: 'crop', days: rootingDays(crop, { ...circumstances, heated }), heated }
        : { from: 'anyCutting', days: ANY_CUTTING.days, heated };
  const rate = crop ? strikePrior(crop, circumstances) : ANY_CUTTING.strikePrior;
  const history = historyOf(ledger, batch, heated);
  return { prior: priorFromRange(guess.days, rate), history, guess, seen: seenIn(history) };
}

/** Thermal time where the temperature at the batch's own place was reported since it was struck; else a day is a day. */
export function rootingClock(ledger: Ledger, batch: Batch): RootingClock {
  const place = placeOf(batch);
  const crop = batch.crop === null ? null : cropNamed(batch.crop);
  if (place === null || crop === null || batch.struck === null) return plainClock;
  const sums = new Map<number, { sum: number; n: number }>();
  for (const { entry } of entriesOf(ledger, 'reading')) {
    const day = daysBetween(batch.struck, lastDay(entry.date));
    if (entry.celsius === undefined || day < 1 || entry.place?.toLowerCase() !== place.toLowerCase())
      continue;
    const { sum, n } = sums.get(day) ?? { sum: 0, n: 0 };
    sums.set(day, { sum: sum + entry.celsius, n: n + 1 });
  }
  const [low, high] = crop.mediumCelsius;
  return clockFrom(new Map([...sums].map(([day, { sum, n }]) => [day, sum / n])), (low + high) / 2);
}

function historyOf(ledger: Ledger, batch: Batch, heated: boolean): PastBatch[] {
  return [...ledger.batches.values()]
    .filter((past) => past.label !== batch.label && isAlike(past, batch) && isSettled(past))
    .sort((a, b) => (began(a) < began(b) ? 1 : -1))
    .slice(0, MOST_HISTORY)
    .flatMap((past) => {
      const story = rootingStory(past);
      if (story === null) return [];
      const clock = rootingClock(ledger, past);
      const alike = past.cutting === batch.cutting && isHeated(placeOf(past)) === heated;
      return {
        ...story,
        checks: story.checks.map(({ day, rooted }) => ({ day: clock.thermal(day), rooted })),
        ...(alike ? {} : { weight: OTHER_CONDITIONS_WEIGHT }),
      };
    });
}

/** Of the same crop; a plant whose crop nobody told learns from its own variety. */
function isAlike(past: Batch, batch: Batch): boolean {
  if (batch.crop !== null) return past.crop?.toLowerCase() === batch.crop.toLowerCase();
  return batch.variety !== null && past.variety?.toLowerCase() === batch.variety.toLowerCase();
}

function seenIn(history: readonly PastBatch[]): SeenBefore | null {
  const found = history
    .filter(({ weight }) => weight === undefined)
    .flatMap(({ struck, checks }) => checks.find(({ rooted }) => rooted >= halfOf(struck)) ?? [])
    .map(({ day }) => Math.round(day))
    .sort((a, b) => a - b);
  if (found.length === 0) return null;
  // With five or more, the odd one out at either end is left to speak for itself.
  const spared = found.length >= 5 ? Math.floor(found.length / 8) + 1 : 0;
  const middle =
    found.length > 2 * spared
      ? found.slice(Math.floor(spared / 2), found.length - Math.ceil(spared / 2))
      : found;
  return { batches: found.length, count: middle.length, days: [middle[0]!, middle.at(-1)!] };
}

/** What the crop table knows of the batch's way of being taken; null for an unknown crop. */
export function knownWay(batch: Batch, hemisphere: Hemisphere) {
  const crop: Crop | null = batch.crop === null ? null : cropNamed(batch.crop);
  if (crop === null) return null;
  return {
    crop,
    way: wayOf(crop, { cutting: batch.cutting ?? undefined, struckOn: began(batch), hemisphere }),
  };
}
