/** What of a grower's place the outlook needs: its half of the globe and its frosts. */
import { type Hemisphere, hemisphereOf } from '../calendar/hemisphere.js';
import type { DailyMinimum } from '../horticulture/frost-record.js';
import type { FrostHalf, MonthDay } from '../horticulture/frost-season.js';
import { type FrostDates, recordedFrostDates, statedFrostDates } from '../horticulture/plant-out.js';

export interface Site {
  readonly hemisphere: Hemisphere;
  /** Last frosts of spring and first of autumn; null where nobody said and no minima were sent. */
  readonly spring: FrostDates | null;
  readonly autumn: FrostDates | null;
}

export interface SiteFacts {
  /** IANA name. */
  readonly zone: string;
  /** The usual days, as the grower gave them. */
  readonly lastFrost: MonthDay | null;
  readonly firstFrost: MonthDay | null;
  /** Of a station near by; they outrank the usual days. */
  readonly minima?: readonly DailyMinimum[];
}

export function siteOf({ zone, lastFrost, firstFrost, minima = [] }: SiteFacts): Site {
  const hemisphere = hemisphereOf(zone);
  const dates = (half: FrostHalf, usual: MonthDay | null) =>
    recordedFrostDates(minima, { half, hemisphere, tender: true }) ??
    (usual === null ? null : statedFrostDates(usual, half, hemisphere));
  return { hemisphere, spring: dates('spring', lastFrost), autumn: dates('autumn', firstFrost) };
}

/** The days that advice for tender growth keeps to: a frost beyond them in one year of ten. */
export function saferDays({ spring, autumn }: Site): { last: MonthDay | null; first: MonthDay | null } {
  return { last: spring?.oneInTen ?? null, first: autumn?.oneInTen ?? null };
}
