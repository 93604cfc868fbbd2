/** What a ledger's growers have set: where it stands, when they want to be spoken to, and in which words. */
import type { TimeOfDay } from '../../calendar/zone.js';
import type { RecordedFrost } from '../../outlook/site.js';
import type { DateOrder } from '../../language/note.js';

export interface LedgerSettings {
  /** IANA name. */
  readonly zone: string;
  /** As the grower named it; null where nobody said. */
  readonly place: string | null;
  /** `MM-DD`: the usual last frost of spring and first of autumn. */
  readonly lastFrost: string | null;
  readonly firstFrost: string | null;
  /** From a weather station's minima; it outranks the usual days. */
  readonly recordedFrost: RecordedFrost | null;
  readonly digestAt: TimeOfDay | 'off';
  /** From and to: nothing is said unasked between. */
  readonly quiet: readonly [TimeOfDay, TimeOfDay];
  readonly dateOrder: DateOrder;
  readonly units: 'metric' | 'us';
  readonly wording: 'GB' | 'US';
}

/** Settings where nothing was set; units, words and the order of dates follow the zone. */
export function defaultSettings(zone: string): LedgerSettings {
  const american = isAmerican(zone);
  return {
    zone,
    place: null,
    lastFrost: null,
    firstFrost: null,
    recordedFrost: null,
    digestAt: '08:00',
    quiet: ['21:00', '07:30'],
    dateOrder: american ? 'MDY' : 'DMY',
    units: american ? 'us' : 'metric',
    wording: american ? 'US' : 'GB',
  };
}

const unitedStates =
  /^(?:US\/|America\/(?:New_York|Chicago|Denver|Los_Angeles|Phoenix|Anchorage|Boise|Detroit|Juneau|Adak|Nome|Sitka|Metlakatla|Yakutat|Menominee|Indiana\/|Kentucky\/|North_Dakota\/)|Pacific\/Honolulu)/;

/** Whether the zone is one of the United States. */
export function isAmerican(zone: string): boolean {
  return unitedStates.test(zone);
}
