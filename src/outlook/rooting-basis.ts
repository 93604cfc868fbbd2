/** What the forecast of a batch rests on: a range to begin with, and the grower's earlier batches. */
import { daysBetween } from '../calendar/day.js';
import type { Hemisphere } from '../calendar/hemisphere.js';
import { lastDay } from '../calendar/span.js';
import { cropNamed, type Crop } from '../horticulture/crops.js';
import { rootingDays, strikePrior, wayOf } from '../horticulture/cutting-season.js';
import { type EarlierSpan, earlierSpan } from '../horticulture/earlier-span.js';
import { poolFor, type RecordedBatch, type RootingConditions } from '../horticulture/pooling.js';
import { learn, type Learnt, type PastBatch } from '../horticulture/rooting-learning.js';
import { type DaysRange, priorFromRange, type RootingPrior } from '../horticulture/rooting-prior.js';
import { clockFrom, plainClock, type RootingClock } from '../horticulture/thermal-time.js';
import { type Batch, began, placeOf } from '../ledger/batch.js';
import { entriesOf, type Ledger } from '../ledger/ledger.js';
import { fingerprint, type Keeper } from './keeper.js';
import { isSettled, rootingStory } from './rooting-story.js';
import { isHeated } from './standing.js';

export interface RootingBasis {
  /** Names prior and history whole: what is worked out from them may be kept under it. */
  readonly key: string;
  readonly prior: RootingPrior;
  readonly history: readonly PastBatch[];
  readonly grounds: RootingGrounds;
}

/** The same in figures for a sentence. */
export interface RootingGrounds {
  readonly usualDays: DaysRange;
  /** Whether the range is the crop table's, the grower's own, or that of any soft cutting. */
  readonly usualFrom: 'table' | 'grower' | 'anyCutting';
  /** How earlier batches under the same conditions went; null where none got ready. */
  readonly earlier: EarlierSpan | null;
  /** How many of those there are. */
  readonly batches: number;
  /** They stood in the same place. */
  readonly here: boolean;
}

/** Soft cuttings of a plant that nobody knows. From memory, and wide on purpose. */
const ANY_CUTTING = { days: [12, 35] as DaysRange, strikePrior: [4, 2] as const };

/** All that earlier batches teach rests on, and what was worked out from it. */
interface Lessons {
  readonly settled: readonly Batch[];
  readonly readings: Readings;
  readonly taught: Ledger['taught'];
  readonly known: Map<string, unknown>;
}

type Readings = ReturnType<typeof entriesOf<'reading'>>;

/** A ledger is a value: what follows from it need be worked out once … */
const readingsIn = new WeakMap<Ledger, Readings>();
const lessonsIn = new WeakMap<Ledger, Lessons>();
/** … and what follows from its settled batches, of which this is the first, holds from note to note. */
const lessonsFrom = new WeakMap<Batch, Lessons>();
/** Where nothing is settled yet, nothing is taught but by the conditions themselves, in whatever ledger. */
const unschooled = new Map<string, unknown>();
const REMEMBERED = 500;

/** Everything but the batch's own checks; the same for all live batches struck under the same conditions. */
export function rootingBasis(ledger: Ledger, batch: Batch, hemisphere: Hemisphere): RootingBasis {
  const usual = usualOf(ledger, batch, hemisphere);
  const conditions = conditionsOf(batch);
  const { settled, known } = lessonsOf(ledger);
  return once(known, `basis ${hemisphere} ${JSON.stringify([usual, conditions])}`, () => {
    const past = once(known, `past ${conditions.crop} ${hemisphere}`, () =>
      recordsOf(ledger, settled, conditions.crop, hemisphere),
    );
    const pool = poolFor(conditions, usual.days, past);
    const prior = priorFromRange(usual.days, usual.strikePrior);
    return {
      key: fingerprint(JSON.stringify([prior.logMedian, prior.strikeRate, pool.history])),
      prior,
      history: pool.history,
      grounds: {
        usualDays: usual.days,
        usualFrom: usual.from,
        earlier: earlierSpan(pool.alike),
        batches: pool.alike.length,
        here: conditions.place !== undefined,
      },
    };
  });
}

export function learntFrom({ key, prior, history }: RootingBasis, keeper: Keeper): Learnt {
  return keeper.recall('learnt', key, () => learn(prior, history));
}

function lessonsOf(ledger: Ledger): Lessons {
  const before = lessonsIn.get(ledger);
  if (before) return before;
  const lessons = lessonsFound(ledger);
  lessonsIn.set(ledger, lessons);
  return lessons;
}

/** Those of an earlier ledger where it had the same to teach. */
function lessonsFound(ledger: Ledger): Lessons {
  const { batches, taught } = ledger;
  const settled = [...batches.values()].filter(isSettled);
  const [first] = settled;
  if (first === undefined) {
    if (unschooled.size > REMEMBERED) unschooled.clear();
    return { settled, readings: [], taught, known: unschooled };
  }
  const readings = readingsOf(ledger);
  const earlier = lessonsFrom.get(first);
  if (
    earlier &&
    isSame(earlier.settled, settled) &&
    isSame(earlier.readings, readings) &&
    isSame([...earlier.taught].flat(), [...taught].flat())
  )
    return earlier;
  const lessons = { settled, readings, taught, known: new Map<string, unknown>() };
  lessonsFrom.set(first, lessons);
  return lessons;
}

/** All that a forecast takes from a ledger beside its batch; one and the same object for as long as that holds. */
export interface Teaching {
  readonly readings: Readings;
  readonly taught: Ledger['taught'];
}

const teachingIn = new WeakMap<Ledger, Teaching>();
const lastTaught = new WeakMap<Lessons['known'], Teaching>();

export function teachingOf(ledger: Ledger): Teaching {
  const before = teachingIn.get(ledger);
  if (before) return before;
  const { known } = lessonsOf(ledger);
  const { taught } = ledger;
  const readings = readingsOf(ledger);
  const earlier = lastTaught.get(known);
  const holds =
    earlier && isSame(earlier.readings, readings) && isSame([...earlier.taught].flat(), [...taught].flat());
  const teaching = holds ? earlier : { readings, taught };
  lastTaught.set(known, teaching);
  teachingIn.set(ledger, teaching);
  return teaching;
}

function readingsOf(ledger: Ledger): Readings {
  const readings = readingsIn.get(ledger) ?? entriesOf(ledger, 'reading');
  readingsIn.set(ledger, readings);
  return readings;
}

function isSame<T>(a: readonly T[], b: readonly T[]): boolean {
  return a.length === b.length && a.every((each, at) => each === b[at]);
}

function once<T>(known: Map<string, unknown>, key: string, work: () => T): T {
  if (!known.has(key)) known.set(key, work());
  return known.get(key) as T;
}

/** Mean temperature (°C) reported of the batch's own place, by day after striking. */
export function rootingTemperatures(ledger: Ledger, batch: Batch): ReadonlyMap<number, number> {
  const place = placeOf(batch)?.toLowerCase();
  const means = new Map<number, number>();
  if (place === undefined || batch.struck === null) return means;
  const readings = readingsOf(ledger);
  const counts = new Map<number, number>();
  for (const { entry } of readings) {
    const day = daysBetween(batch.struck, lastDay(entry.date));
    if (entry.celsius === undefined || day < 1 || entry.place?.toLowerCase() !== place) continue;
    const count = counts.get(day) ?? 0;
    means.set(day, ((means.get(day) ?? 0) * count + entry.celsius) / (count + 1));
    counts.set(day, count + 1);
  }
  return means;
}

/** Thermal time from those temperatures; where none are known, or the crop is not, a day is a day. */
export function rootingClock(batch: Batch, temperatures: ReadonlyMap<number, number>): RootingClock {
  const crop = batch.crop === null ? null : cropNamed(batch.crop);
  if (crop === null) return plainClock;
  const [low, high] = crop.mediumCelsius;
  return clockFrom(temperatures, (low + high) / 2);
}

/** The crop, and the way in which the batch was taken, as the crop table has them; null for an unknown crop. */
export function knownWay(batch: Batch, hemisphere: Hemisphere) {
  const crop: Crop | null = batch.crop === null ? null : cropNamed(batch.crop);
  return crop && { crop, way: wayOf(crop, circumstances(batch, hemisphere)) };
}

function usualOf(ledger: Ledger, batch: Batch, hemisphere: Hemisphere) {
  const given = circumstances(batch, hemisphere);
  const crop = batch.crop === null ? null : cropNamed(batch.crop);
  const rate = crop ? strikePrior(crop, given) : ANY_CUTTING.strikePrior;
  const taught = batch.crop === null ? undefined : ledger.taught.get(batch.crop.toLowerCase());
  if (taught !== undefined) return { days: taught, strikePrior: rate, from: 'grower' } as const;
  if (crop === null) return { ...ANY_CUTTING, from: 'anyCutting' } as const;
  const days = rootingDays(crop, { ...given, heated: isHeated(placeOf(batch)) });
  return { days, strikePrior: rate, from: 'table' } as const;
}

function circumstances(batch: Batch, hemisphere: Hemisphere) {
  return { cutting: batch.cutting ?? undefined, struckOn: began(batch), hemisphere };
}

/** A plant whose crop nobody told learns from its own variety. */
function kindOf({ crop, variety }: Batch): string {
  return (crop ?? variety ?? '').toLowerCase();
}

function conditionsOf(batch: Batch): RootingConditions {
  const place = placeOf(batch);
  return {
    crop: kindOf(batch),
    cutting: batch.cutting ?? undefined,
    medium: batch.medium ?? undefined,
    place: place?.toLowerCase(),
    heated: place === null ? undefined : isHeated(place),
  };
}

/** Batches of a kind that have something to teach, the newest first, in thermal days where known. */
function recordsOf(
  ledger: Ledger,
  settled: readonly Batch[],
  kind: string,
  hemisphere: Hemisphere,
): RecordedBatch[] {
  return settled
    .filter((past) => kindOf(past) === kind)
    .sort((a, b) => (began(a) < began(b) ? 1 : -1))
    .flatMap((past) => {
      const story = rootingStory(past);
      if (story === null) return [];
      const clock = rootingClock(past, rootingTemperatures(ledger, past));
      return {
        ...story,
        checks: story.checks.map(({ day, rooted }) => ({ day: clock.thermal(day), rooted })),
        conditions: conditionsOf(past),
        usualDays: usualOf(ledger, past, hemisphere).days,
      };
    });
}
