/** Whether what lives gives what is wanted, and what to take while there is still time. */
import { addDays, type Day, daysBetween, latest } from '../calendar/day.js';
import { betaBinomial, chanceOfEnough } from '../horticulture/beta-binomial.js';
import { cropNamed } from '../horticulture/crops.js';
import { MOST_CUTTINGS, TIE } from '../horticulture/cuttings-to-take.js';
import { convolved } from '../horticulture/on-track.js';
import { expectedStrikeRate, type Learnt } from '../horticulture/rooting-learning.js';
import { rootedWithin, type TimingNode, timingOf } from '../horticulture/rounds.js';
import { smallest } from '../horticulture/smallest.js';
import { learnRate, nextBatchRate, type RateBelief, USUAL_SURVIVAL } from '../horticulture/strike-rate.js';
import { alive, isLive, isOf } from '../ledger/batch.js';
import type { Ledger } from '../ledger/ledger.js';
import { growingCounts, LONG_DAYS } from './growing-counts.js';
import { fingerprint, type Keeper } from './keeper.js';
import { nextBatch, stockOffers } from './next-round.js';
import { learntFrom, rootingBasis } from './rooting-basis.js';
import type { Site } from './site.js';
import { type Wanted, wantedOf } from './targets.js';

export interface Plan extends Wanted {
  /** The last day on which a cutting that roots is still ready in time; null where no day is named. */
  readonly rootedBy: Day | null;
  /** Living plants and cuttings of it now. */
  readonly living: number;
  /** That they give as many as are wanted, in time. */
  readonly chance: number;
  /** More cuttings that bring the chance to `CONFIDENCE` when struck on `from`; 0 where it is there already, null where none can. */
  readonly take: number | null;
  /** First day on which the stock offers cuttings, in the season for them. */
  readonly from: Day;
  /** Last day on which that many still do; null where nothing is to be taken, or no day is named. */
  readonly strikeBy: Day | null;
}

export const CONFIDENCE = 0.9;
/** Past this the round is no advice any more. Judgement. */
const MOST_TIMES_WANTED = 4;
const FEW_CUTTINGS = 20;

export interface Ahead {
  readonly ledger: Ledger;
  readonly today: Day;
  readonly site: Site;
  readonly keeper: Keeper;
}

export function plansOf(ahead: Ahead): readonly Plan[] {
  return wantedOf(ahead.ledger, ahead.site, ahead.today).map((wanted) => planFor(wanted, ahead));
}

/** Of one wish, told or only asked about. */
export function planFor(wanted: Wanted, ahead: Ahead): Plan {
  const { ledger, today, site, keeper } = ahead;
  const crop = wanted.crop === null ? null : cropNamed(wanted.crop);
  const after = (crop?.growOnDays ?? 0) + (crop?.hardenOffDays ?? 0);
  const rootedBy = wanted.by === null ? null : addDays(wanted.by, -after);
  const batches = [...ledger.batches.values()].filter((batch) => isLive(batch) && isOf(batch, wanted.plant));
  const from = stockOffers(wanted, ahead);
  const out = batches.reduce((sum, batch) => sum + Math.min(batch.plantedOut, alive(batch)), 0);
  const growing = growingCounts(batches, rootedBy, ahead);
  const need: Need = { growing, want: Math.max(0, wanted.want - out), survival: survivalOf(ledger) };
  const chance = chanceKept(growing, need.want, need.survival);
  const living = batches.reduce((sum, batch) => sum + alive(batch), 0);
  const soFar = { ...wanted, rootedBy, living, from, chance };
  if (chance >= CONFIDENCE - TIE) return { ...soFar, take: 0, strikeBy: null };
  const basis = rootingBasis(ledger, nextBatch(wanted, from, ahead), site.hemisphere);
  const struckOn = latest(from, today);
  const key = fingerprint(JSON.stringify([struckOn, rootedBy, need.want, need.survival, [...growing]]));
  const round = keeper.recall('foreseen', `round ${key} ${basis.key}`, () =>
    nextRound(need, learntFrom(basis, keeper), struckOn, rootedBy),
  );
  return { ...soFar, ...round };
}

interface Need {
  /** Chances of 0 … so many rooted in time of what lives. */
  readonly growing: Float64Array;
  readonly want: number;
  readonly survival: RateBelief;
}

/** The fewest cuttings, struck on a day, that make up what is missing; and the last day on which that many still do. */
function nextRound(
  { growing, want, survival }: Need,
  learnt: Learnt,
  struckOn: Day,
  rootedBy: Day | null,
): Pick<Plan, 'take' | 'strikeBy'> {
  const timing = timingOf(learnt);
  const span = rootedBy === null ? LONG_DAYS : daysBetween(struckOn, rootedBy);
  const enough = (take: number, later: number) =>
    chanceKept(
      convolved(growing, betaBinomial(take, rateInTime(learnt, timing, span - later))),
      want,
      survival,
    ) >=
    CONFIDENCE - TIE;
  const most = Math.min(MOST_CUTTINGS, MOST_TIMES_WANTED * want + FEW_CUTTINGS);
  const take = span < 1 ? null : smallest(1, most, (number) => enough(number, 0));
  if (take === null || rootedBy === null) return { take, strikeBy: null };
  const tooLate = smallest(1, span, (later) => !enough(take, later)) ?? span;
  return { take, strikeBy: addDays(struckOn, tooLate - 1) };
}

/** Learnt from batches that were planted out: of those rooted, how many came so far. */
function survivalOf(ledger: Ledger): RateBelief {
  const records = [...ledger.batches.values()]
    .filter(({ plantedOut, rooted }) => plantedOut > 0 && rooted > 0)
    .map(({ plantedOut, dispatched, rooted }) => ({
      tried: rooted,
      succeeded: Math.min(rooted, plantedOut + dispatched),
    }));
  return learnRate(USUAL_SURVIVAL, records);
}

/** Belief about the share of the next batch that roots within so many days: its strike rate, lowered, no surer than before. */
function rateInTime(learnt: Learnt, timing: readonly TimingNode[], days: number): RateBelief {
  const share = timing.reduce((sum, node) => sum + node.weight * rootedWithin(days, node), 0);
  const [a, b] = learnt.grid.prior.strikeRate;
  const next = nextBatchRate({ a, b });
  const strength = next.a + next.b;
  const mean = Math.min(1 - 1e-6, Math.max(1e-6, expectedStrikeRate(learnt) * share));
  return { a: strength * mean, b: strength * (1 - mean) };
}

/** Chance that of so many rooted at least `want` live until they are wanted. */
function chanceKept(rooted: Float64Array, want: number, survival: RateBelief): number {
  if (want <= 0) return 1;
  const enough = chanceOfEnough(want, rooted.length - 1, survival);
  return rooted.reduce((sum, chance, number) => sum + chance * enough[number]!, 0);
}
