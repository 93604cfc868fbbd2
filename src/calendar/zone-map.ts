/** The zone of a point on the map; the only file that knows the look-up table. */
import lookUp from '@photostructure/tz-lookup';

/** IANA name for degrees north and east; throws `RangeError` off the globe. */
export function zoneOfPoint(latitude: number, longitude: number): string {
  return lookUp(latitude, longitude);
}
