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

/** What a station's minima gave; null where they were too few. */
export interface RecordedFrost {
  readonly spring: FrostDates | null;
  readonly autumn: FrostDates | null;
}

export interface SiteFacts {
  /** IANA name. */
  readonly zone: string;
  /** The usual days, as the grower gave them. */
  readonly lastFrost: MonthDay | null;
  readonly firstFrost: MonthDay | null;
  /** From a station near by; it outranks the usual days. */
  readonly recordedFrost?: RecordedFrost | null;
}

export function siteOf({ zone, lastFrost, firstFrost, recordedFrost }: SiteFacts): Site {
  const hemisphere = hemisphereOf(zone);
  const dates = (half: FrostHalf, usual: MonthDay | null) =>
    recordedFrost?.[half] ?? (usual === null ? null : statedFrostDates(usual, half, hemisphere));
  return { hemisphere, spring: dates('spring', lastFrost), autumn: dates('autumn', firstFrost) };
}

/** The frosts that concern tender growth at a station, both halves of the year. */
export function recordedFrost(minima: readonly DailyMinimum[], zone: string): RecordedFrost {
  const hemisphere = hemisphereOf(zone);
  const dates = (half: FrostHalf) => recordedFrostDates(minima, { half, hemisphere, tender: true });
  return { spring: dates('spring'), autumn: dates('autumn') };
}

/** The days that advice for tender growth keeps to: a frost beyond them in one year of ten. */
export function saferDays({ spring, autumn }: Site): { last: MonthDay | null; first: MonthDay | null } {
  return { last: spring?.oneInTen ?? null, first: autumn?.oneInTen ?? null };
}
