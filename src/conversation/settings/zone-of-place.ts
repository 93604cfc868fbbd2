/** The zone of a place that is named in words, where the zone data knows its name. */
import { isZone } from '../../calendar/zone.js';

const countries: Readonly<Record<string, string>> = {
  uk: 'Europe/London', 'united kingdom': 'Europe/London', britain: 'Europe/London', england: 'Europe/London',
  scotland: 'Europe/London', wales: 'Europe/London', yorkshire: 'Europe/London', ireland: 'Europe/Dublin',
  france: 'Europe/Paris', germany: 'Europe/Berlin', netherlands: 'Europe/Amsterdam', 'new zealand': 'Pacific/Auckland',
  tasmania: 'Australia/Hobart', victoria: 'Australia/Melbourne', 'south africa': 'Africa/Johannesburg',
}; // prettier-ignore

/** IANA name, or null. */
export function zoneOfPlace(place: string): string | null {
  const words = place.trim().toLowerCase();
  const known = countries[words];
  if (known !== undefined) return known;
  if (words.includes('/') && isZone(place.trim())) return place.trim();
  const name = words.replace(/[ -]+/g, '_');
  return (
    Intl.supportedValuesOf('timeZone').find((zone) => zone.toLowerCase().split('/').at(-1) === name) ?? null
  );
}
