/** From the day that plants must stand rooted back to rounds of cuttings: how many, when, and the last day that does. */
import { cuttingsToTake, MOST_CUTTINGS, TIE } from './cuttings-to-take.js';
import { chanceOfRounds, type RoundsQuestion } from './rounds.js';
import { smallest } from './smallest.js';
import { nextBatchRate } from './strike-rate.js';

/** What a stock plant yields: so many shoots now, and as many again every so many days. */
export interface Stock {
  readonly shoots: number;
  readonly everyDays: number;
}

/** A cut stock plant of soft growth shoots again in about two weeks. Common practice, no source. */
export const USUAL_RESHOOT_DAYS = 14;

export interface ScheduleQuestion extends RoundsQuestion {
  readonly confidence: number;
  /** From today to the day by which they must have rooted. */
  readonly daysLeft: number;
  /** As many as are wanted on any day where it is missing. */
  readonly stock?: Stock | undefined;
}

/** A round struck so many days from today. */
export interface PlannedRound {
  readonly inDays: number;
  readonly take: number;
}

export type Schedule =
  | {
      readonly tooLate: false;
      readonly rounds: readonly PlannedRound[];
      readonly p: number;
      /** Days from today to the last start on which the same number still reaches the confidence. */
      readonly latestInDays: number;
    }
  | {
      readonly tooLate: true;
      /** The best that can still be done. */
      readonly rounds: readonly PlannedRound[];
      readonly p: number;
      /** The most plants that those rounds give at the confidence. */
      readonly canHave: number;
      /** Days from today by which the number wanted can be rooted at the confidence; null where not in two years. */
      readonly rootedInDays: number | null;
    };

const TWO_YEARS = 730;

/** The fewest cuttings that reach the confidence, struck as early as the stock allows. */
export function scheduleRounds(question: ScheduleQuestion): Schedule {
  const { want, confidence, daysLeft, stock } = question;
  if (want === 0) return { tooLate: false, rounds: [], p: 1, latestInDays: Math.max(0, daysLeft) };
  const chance = (take: number, start: number, left = daysLeft) =>
    chanceOfRounds(
      roundsOf(take, start, stock).map(({ inDays, take: each }) => ({ take: each, daysLeft: left - inDays })),
      question,
    );
  const enough = (p: number) => p >= confidence - TIE;
  const most = capacity(daysLeft, stock);
  const take = most < want ? null : smallest(want, most, (n) => enough(chance(n, 0)));
  if (take !== null) {
    const firstLate = smallest(1, Math.max(1, daysLeft), (start) => !enough(chance(take, start)));
    return {
      tooLate: false,
      rounds: roundsOf(take, 0, stock),
      p: chance(take, 0),
      latestInDays: (firstLate ?? daysLeft) - 1,
    };
  }
  const leisurely = cuttingsToTake({
    want,
    confidence,
    rate: nextBatchRate(question.rate),
    survival: question.survival,
  });
  // Some more than the fewest that do in time without end, or the last slow root would have to be waited for.
  const plenty = Math.min(MOST_CUTTINGS, Math.ceil(1.3 * (leisurely?.take ?? MOST_CUTTINGS)));
  const tried = Math.min(most, plenty);
  return {
    tooLate: true,
    rounds: roundsOf(tried, 0, stock),
    p: chance(tried, 0),
    canHave: mostPlants(question, roundsOf(tried, 0, stock)),
    rootedInDays: smallest(Math.max(1, daysLeft), TWO_YEARS, (days) =>
      enough(chance(Math.min(plenty, capacity(days, stock)), 0, days)),
    ),
  };
}

/** The most plants that the rounds give at the confidence. */
function mostPlants(question: ScheduleQuestion, rounds: readonly PlannedRound[]): number {
  const timed = rounds.map(({ inDays, take }) => ({ take, daysLeft: question.daysLeft - inDays }));
  const tooMany = smallest(
    1,
    question.want,
    (want) => chanceOfRounds(timed, { ...question, want }) < question.confidence - TIE,
  );
  return (tooMany ?? question.want + 1) - 1;
}

/** So many cuttings as early as the stock allows, the last round taking what is left. */
function roundsOf(take: number, start: number, stock: Stock | undefined): PlannedRound[] {
  if (take === 0) return [];
  if (!stock) return [{ inDays: start, take }];
  return Array.from({ length: Math.ceil(take / stock.shoots) }, (_, i) => ({
    inDays: start + i * stock.everyDays,
    take: Math.min(stock.shoots, take - i * stock.shoots),
  }));
}

/** How many cuttings can be struck while there is time left to root at all. */
function capacity(daysLeft: number, stock: Stock | undefined): number {
  if (daysLeft <= 0) return 0;
  if (!stock) return MOST_CUTTINGS;
  return Math.min(MOST_CUTTINGS, stock.shoots * Math.ceil(daysLeft / stock.everyDays));
}
