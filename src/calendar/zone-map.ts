/** The zone of a point on the map; the only file that knows the look-up table. */
import { createRequire } from 'node:module';
import type lookUpZone from '@photostructure/tz-lookup';

const require = createRequire(import.meta.url);
/** Loaded when a place is first told, which is once in a ledger's life: the table takes some megabytes. */
let lookUp: typeof lookUpZone | undefined;

/** IANA name for degrees north and east; throws `RangeError` off the globe. */
export function zoneOfPoint(latitude: number, longitude: number): string {
  lookUp ??= require('@photostructure/tz-lookup') as typeof lookUpZone;
  return lookUp(latitude, longitude);
}
