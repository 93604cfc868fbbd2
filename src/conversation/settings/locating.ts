/** A location pin sets the zone. */
import { zoneSet } from '../../words/instructions.js';
import { zoneOfPoint } from '../../calendar/zone-map.js';
import type { Sitting } from '../sitting.js';

export function locate(
  sitting: Sitting,
  { latitude, longitude }: { latitude: number; longitude: number },
): void {
  const zone = zoneOfPoint(latitude, longitude);
  sitting.settings = { ...sitting.settings, zone };
  sitting.reply.text.push(zoneSet(zone));
}
