/** Why something is due, in a few words that stand on their own. */
import type { Day } from '../calendar/day.js';
import type { PotOnSign } from '../horticulture/crops.js';
import type { FrostDates } from '../horticulture/plant-out.js';
import type { Due, Why } from '../outlook/due.js';
import type { RootingOutlook } from '../outlook/rooting-outlook.js';
import { celsiusWords, dayWords, monthDayWords, ordinal, plural, sayOf, type Say } from './say.js';
import { percent } from './rooting-reason.js';

const signWords: Readonly<Record<PotOnSign, string>> = {
  rootsAtHoles: 'when roots show at the holes',
  rootsAbout2cm: 'when the roots are 2–3 cm long',
  plantlets: 'when the plantlets can be handled',
};

/** The ground on which `due` stands, without a full stop. */
export function dueReason(due: Due, say: Say = sayOf()): string {
  const { why } = due;
  switch (why.because) {
    case 'rootsExpected':
      return rootsExpected(why.rooting, say);
    case 'nothingMore':
      return `none had rooted by day ${why.day}; the chance that one still does is ${percent(why.rooting.oneMoreChance)}`;
    case 'rooted':
      return `${why.rooted} of ${why.of} seen rooted${why.sign === null ? '' : `; ${signWords[why.sign]}`}`;
    case 'grown':
      return `potted on ${dayWords(why.pottedOn, say)}; above the ${ordinal(why.pinch.aboveLeafPairs)} pair of leaves`;
    case 'plantingNears':
      return `to plant out about ${dayWords(why.plantOutOn, say)}${why.frost === null ? '' : `: ${frostWords(why.frost, say)}`}`;
    case 'hardened':
      return hardened(why, say);
    case 'tooFew':
      return `${why.want} wanted by ${dayWords(why.by, say)}; what lives now gives that with a chance of ${percent(why.chance)}`;
    case 'firstFrostNears':
      return `one autumn in ten has frost before ${dayWords(why.oneInTen, say)}`;
    case 'minimum':
      return `${celsiusWords(why.celsius, say)} reported ${dayWords(why.on, say)}`;
    case 'rooting':
      return `${plural(why.batches, 'batch', 'batches')} rooting`;
    case 'asked':
      return 'as you asked';
  }
}

/** "7 of 9 earlier batches here took 11–16 days", or that it is a starting guess. */
export function groundsWords({
  usualDays,
  usualFrom,
  earlier,
  batches,
  here,
}: RootingOutlook['grounds']): string {
  const usual = `${usualDays[0]}–${usualDays[1]} days`;
  const which = here ? 'earlier batches here' : 'earlier batches';
  if (earlier !== null && batches > 1) {
    const days = earlier.from === earlier.to ? `${earlier.from}` : `${earlier.from}–${earlier.to}`;
    return `${earlier.within} of ${batches} ${which} took ${days} days`;
  }
  if (earlier !== null) return `the one earlier batch took about ${earlier.from} days, ${usual} is usual`;
  switch (usualFrom) {
    case 'table':
      return `a starting guess from the crop table, ${usual}`;
    case 'grower':
      return `a starting guess from the ${usual} you gave`;
    case 'anyCutting':
      return `a wide guess, ${usual}, as the plant is not in my table`;
  }
}

/** Spring: "frost after 5 May in one year of two, after 21 May in one of ten". */
export function frostWords({ half, evenChance, oneInTen }: FrostDates, say: Say = sayOf()): string {
  const when = half === 'spring' ? 'after' : 'before';
  if (oneInTen === null) return `frost in fewer than one year of ten`;
  const tenth = `${when} ${monthDayWords(oneInTen, say)} in one of ten`;
  if (evenChance === null) return `frost ${tenth.replace('one of ten', 'one year of ten')}`;
  return `frost ${when} ${monthDayWords(evenChance, say)} in one year of two, ${tenth}`;
}

function rootsExpected({ ready, everChance, grounds, ...rest }: RootingOutlook, say: Say): string {
  const doubt = everChance < 0.75 ? `, if at all (${percent(everChance)})` : '';
  const range =
    ready === null ? '' : `${rest.need} or more rooted ${spanWords(ready.p10, ready.p90, say)}${doubt}: `;
  return `${range}${groundsWords(grounds)}`;
}

function spanWords(from: Day, to: Day, say: Say): string {
  return from === to
    ? `about ${dayWords(from, say)}`
    : `between ${dayWords(from, say)} and ${dayWords(to, say)}`;
}

function hardened({ since, frost }: Extract<Why, { because: 'hardened' }>, say: Say): string {
  const outside = since === null ? 'grown on' : `hardening since ${dayWords(since, say)}`;
  return frost === null ? outside : `${outside}; ${frostWords(frost, say)}`;
}
