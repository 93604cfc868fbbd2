/** Which way of taking cuttings fits a month, and how many days it then takes to root. */
import { type Day, month } from '../calendar/day.js';
import type { Hemisphere } from '../calendar/hemisphere.js';
import type { BetaPrior, Crop, CuttingWay, Range } from './crops.js';

export interface Circumstances {
  /** As the note gave it; a type that the table lacks for this crop is no hindrance. */
  readonly cutting?: string | undefined;
  /** The day the cuttings were or will be struck. */
  readonly struckOn?: Day | undefined;
  readonly hemisphere?: Hemisphere | undefined;
}

/** The month (1–12) as the crop table counts it, in the northern half. */
export function northernMonth(day: Day, hemisphere: Hemisphere = 'north'): number {
  return hemisphere === 'north' ? month(day) : ((month(day) + 5) % 12) + 1;
}

export function inSeason(way: CuttingWay, day: Day, hemisphere: Hemisphere = 'north'): boolean {
  return way.months.includes(northernMonth(day, hemisphere));
}

/** The way that fits best: the same wood in its season, the same wood, any in season, else the crop's usual one. */
export function wayOf(crop: Crop, { cutting, struckOn, hemisphere }: Circumstances = {}): CuttingWay {
  const seasonal = (way: CuttingWay) => struckOn === undefined || inSeason(way, struckOn, hemisphere);
  const way =
    crop.cuttings.find((each) => each.type === cutting && seasonal(each)) ??
    crop.cuttings.find((each) => each.type === cutting) ??
    (struckOn === undefined ? undefined : crop.cuttings.find(seasonal)) ??
    crop.cuttings[0];
  if (way === undefined) throw new RangeError(`the crop table gives no cuttings of ${crop.name}`);
  return way;
}

/**
 * Days from striking to first roots. `heated` is a heated, covered propagator (assumed unless told); a crop that
 * bottom heat harms has one range only.
 */
export function rootingDays(crop: Crop, given: Circumstances & { readonly heated?: boolean } = {}): Range {
  const way = wayOf(crop, given);
  return given.heated === false ? way.unheatedDays : (way.heatedDays ?? way.unheatedDays);
}

export function strikePrior(crop: Crop, given: Circumstances = {}): BetaPrior {
  return wayOf(crop, given).strikePrior;
}
