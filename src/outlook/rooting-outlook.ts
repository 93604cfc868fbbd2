/** When a live batch will have rooted, seen from the ledger: the model's answer as days of the calendar. */
import { addDays, type Day } from '../calendar/day.js';
import type { Hemisphere } from '../calendar/hemisphere.js';
import { LEAST_DAYS_BETWEEN_LOOKS, WASTED_LOOK_DAYS } from '../horticulture/next-check.js';
import { type DayQuantiles, forecast, type RootingForecast } from '../horticulture/rooting-forecast.js';
import { halfOfExpected, type RootingRecord } from '../horticulture/rooting-record.js';
import type { RootingClock } from '../horticulture/thermal-time.js';
import { expectedStrikeRate, type Learnt } from '../horticulture/rooting-learning.js';
import type { Batch } from '../ledger/batch.js';
import type { Ledger } from '../ledger/ledger.js';
import type { Keeper } from './keeper.js';
import {
  learntFrom,
  rootingBasis,
  rootingClock,
  type RootingGrounds,
  rootingTemperatures,
  type Teaching,
  teachingOf,
} from './rooting-basis.js';
import { rootingStory } from './rooting-story.js';

/** Plain JSON, so that it may be kept. */
export interface RootingOutlook {
  readonly state: RootingForecast['state'];
  readonly rooted: number;
  /** Rooted cuttings that make it worth potting on: half of those expected to root, at least one. */
  readonly need: number;
  /** One in ten, half and nine in ten of such batches are ready by then; null where it can't get ready any more. */
  readonly ready: { readonly p10: Day; readonly p50: Day; readonly p90: Day } | null;
  /** The same in days after striking, with decimals. */
  readonly readyDays: DayQuantiles | null;
  /** Day after striking of the last look; null before the first. */
  readonly lookedOn: number | null;
  readonly everChance: number;
  readonly oneMoreChance: number;
  /** When to look next; null once ready or given up. It does not move with the day of asking. */
  readonly nextCheck: Day | null;
  /** A look so many days earlier costs little, so that one walk may serve several batches. */
  readonly spareDays: number;
  readonly grounds: RootingGrounds & { readonly temperatures: boolean };
}

/** What a look may cost more than the best one before it is not bundled with others, in days of waiting. Judgement. */
const LITTLE_COST_DAYS = 0.4;
const MOST_SPARE_DAYS = 3;

interface Known {
  readonly teaching: Teaching;
  readonly hemisphere: Hemisphere;
  readonly outlook: RootingOutlook | null;
}

/** A batch is a value: of most of them a note changes nothing, and all are looked at after each. */
const known = new WeakMap<Batch, Known>();

/** Null for plants that came in rooted. */
export function rootingOutlook(
  ledger: Ledger,
  batch: Batch,
  hemisphere: Hemisphere,
  keeper: Keeper,
): RootingOutlook | null {
  const teaching = teachingOf(ledger);
  const before = known.get(batch);
  if (before?.teaching === teaching && before.hemisphere === hemisphere) return before.outlook;
  const outlook = outlookFound(ledger, batch, hemisphere, keeper);
  known.set(batch, { teaching, hemisphere, outlook });
  return outlook;
}

function outlookFound(
  ledger: Ledger,
  batch: Batch,
  hemisphere: Hemisphere,
  keeper: Keeper,
): RootingOutlook | null {
  const story = rootingStory(batch);
  if (story === null) return null;
  const basis = rootingBasis(ledger, batch, hemisphere);
  const temperatures = rootingTemperatures(ledger, batch);
  const own = JSON.stringify([batch.crop, story, [...temperatures]]);
  const seen = keeper.recall('foreseen', `rooting ${own} ${basis.key}`, () =>
    foreseen(learntFrom(basis, keeper), story, rootingClock(batch, temperatures)),
  );
  // What is new stands first: a copy that gains properties behind is slow to make, and there is one for each batch.
  return {
    grounds: { temperatures: temperatures.size > 0, ...basis.grounds },
    ...onDays(seen, batch.struck as Day),
  };
}

/** In days after striking, so that all batches of like conditions and size share it, whenever they were struck. */
type Foreseen = Omit<RootingOutlook, 'grounds' | 'ready' | 'nextCheck'> & {
  readonly nextCheckDay: number | null;
};

function onDays({ nextCheckDay, ...seen }: Foreseen, struck: Day): Omit<RootingOutlook, 'grounds'> {
  const on = (days: number) => addDays(struck, Math.round(days));
  const { readyDays } = seen;
  return {
    ready: readyDays && { p10: on(readyDays.p10), p50: on(readyDays.p50), p90: on(readyDays.p90) },
    nextCheck: nextCheckDay === null ? null : on(nextCheckDay),
    ...seen,
  };
}

function foreseen(learnt: Learnt, story: RootingRecord, clock: RootingClock): Foreseen {
  const need = halfOfExpected(story.struck, expectedStrikeRate(learnt));
  const lookedOn = story.checks.at(-1)?.day ?? 0;
  const seen = forecast(learnt, { batch: story, today: lookedOn, need, clock });
  const look = seen.nextCheck === null ? null : Math.max(seen.nextCheck, firstWorthwhileLook(seen, lookedOn));
  return {
    state: seen.state,
    rooted: seen.rooted,
    need: seen.need,
    readyDays: seen.ready,
    lookedOn: lookedOn === 0 ? null : lookedOn,
    everChance: seen.everChance,
    oneMoreChance: seen.oneMoreChance,
    nextCheckDay: look,
    spareDays: look === null ? 0 : spareDays(seen, look, lookedOn),
  };
}

/**
 * The next-check rule weighs one look, not those that follow it when it finds nothing; where little is known it would look at
 * once, and again. So no look before there is this chance that the batch got ready since the last. Judgement.
 */
const WORTHWHILE_CHANCE = 0.25;

function firstWorthwhileLook(
  { readyChanceBy, everChance, settledOn }: RootingForecast,
  lookedOn: number,
): number {
  const wanted = WORTHWHILE_CHANCE * everChance;
  let [low, high] = [lookedOn, Math.ceil(settledOn)];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (readyChanceBy(middle) < wanted) low = middle;
    else high = middle;
  }
  return high;
}

/** How many days before the best one a look costs little more: what waiting is saved against what is more likely wasted. */
function spareDays({ readyChanceBy, everChance }: RootingForecast, best: number, lookedOn: number): number {
  const readyBy = (day: number) => Math.min(1, readyChanceBy(day) / everChance);
  let spare = 0;
  let saved = 0;
  for (
    let day = best - 1;
    day >= Math.max(lookedOn + LEAST_DAYS_BETWEEN_LOOKS, best - MOST_SPARE_DAYS);
    day--
  ) {
    saved += (readyBy(day) + readyBy(day + 1)) / 2;
    if (WASTED_LOOK_DAYS * (readyBy(best) - readyBy(day)) - saved > LITTLE_COST_DAYS) break;
    spare = best - day;
  }
  return spare;
}
