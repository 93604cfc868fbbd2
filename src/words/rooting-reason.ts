/** Why a forecast says what it says, in a sentence or two. */
import type { EarlierSpan } from '../horticulture/earlier-span.js';
import type { RootingForecast } from '../horticulture/rooting-forecast.js';
import type { DaysRange } from '../horticulture/rooting-prior.js';

/** What a forecast rests on beside the batch's own checks. */
export interface RootingBasis {
  readonly usualDays: DaysRange;
  /** Whether the range is the crop table's or the grower's own. */
  readonly usualFrom: 'table' | 'grower';
  readonly earlier: EarlierSpan | null;
  /** How many earlier batches there are at all, ready ever or not. */
  readonly batches: number;
  /** The earlier batches stood in the same place. */
  readonly here?: boolean;
  readonly temperatures?: boolean;
}

export interface BatchSeen {
  readonly struck: number;
  /** Day after striking of the last look; null before the first. */
  readonly lookedOn: number | null;
}

/** The sentence for a batch: what was seen, when it should be ready, and what that rests on. */
export function rootingReason(forecast: RootingForecast, seen: BatchSeen, basis: RootingBasis): string {
  switch (forecast.state) {
    case 'ready':
      return `${seenWords(forecast, seen)}: ${forecast.rooted >= seen.struck ? 'all of them' : 'enough'} to pot on.`;
    case 'giveUp':
      return gaveUp(forecast, seen);
    case 'rooting':
      return `${expectation(forecast, seen)} ${basisWords(basis)}`;
  }
}

function gaveUp(forecast: RootingForecast, seen: BatchSeen): string {
  const chance = percent(forecast.oneMoreChance);
  if (forecast.rooted === 0)
    return `${seenWords(forecast, seen)}; the chance that even one still does is ${chance}: time to clear the pot.`;
  return `${seenWords(forecast, seen)}: pot ${forecast.rooted === 1 ? 'that one' : 'those'} on. The chance that another still roots is ${chance}.`;
}

function expectation(
  { ready, need, everChance, oneMoreChance, ...rest }: RootingForecast,
  seen: BatchSeen,
): string {
  const start = seen.lookedOn === null ? '' : `${seenWords(rest, seen)}. `;
  if (ready === null || everChance < 0.3)
    return `${start}Half of them is no longer likely, but one more is (${percent(oneMoreChance)}).`;
  const { from, to } = wholeDays(ready);
  const doubt = everChance < 0.75 ? `, if it gets so far at all (${percent(everChance)})` : '';
  const half =
    need === Math.ceil(seen.struck / 2) ? `half (${need} of ${seen.struck})` : `${need} of ${seen.struck}`;
  return `${start}Expect ${half} rooted ${from === to ? `about day ${from}` : `between day ${from} and day ${to}`}${doubt}.`;
}

function basisWords({ usualDays, usualFrom, earlier, batches, here, temperatures }: RootingBasis): string {
  const warmth = temperatures === true ? ', warmth allowed for' : '';
  const usual = daysWords(usualDays[0], usualDays[1]);
  if (batches === 0)
    return usualFrom === 'table'
      ? `A starting guess from the crop table (${usual}) until there are records${warmth}.`
      : `A starting guess from the ${usual} you gave, until there are records${warmth}.`;
  const which = here === true ? 'earlier batches here' : 'earlier batches';
  if (earlier === null)
    return `None of ${batches} ${which} got so far, so this leans on the usual ${usual}${warmth}.`;
  if (batches === 1)
    return `The one earlier batch took about ${daysWords(earlier.from, earlier.to)}${warmth}.`;
  return `${earlier.within} of ${batches} ${which} took ${daysWords(earlier.from, earlier.to)}${warmth}.`;
}

function seenWords({ rooted }: Pick<RootingForecast, 'rooted'>, { struck, lookedOn }: BatchSeen): string {
  const many = rooted === 0 ? 'None' : `${rooted}`;
  return `${many} of ${struck} ${rooted === 1 || rooted === 0 ? 'has' : 'have'} rooted by day ${lookedOn ?? 0}`;
}

function wholeDays({ p10, p90 }: { readonly p10: number; readonly p90: number }): {
  from: number;
  to: number;
} {
  return { from: Math.floor(p10), to: Math.ceil(p90) };
}

function daysWords(from: number, to: number): string {
  return from === to ? `${from} days` : `${from}–${to} days`;
}

/** "92%", never a certainty that the model does not claim. */
export function percent(chance: number): string {
  if (chance > 0.99) return 'over 99%';
  return chance < 0.01 ? 'under 1%' : `${Math.round(chance * 100)}%`;
}
