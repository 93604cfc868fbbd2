/** The one day or span that a short reply names. */
import type { Instant } from '../calendar/clock.js';
import type { Day } from '../calendar/day.js';
import type { Span } from '../calendar/span.js';
import { localDay, localTime } from '../calendar/zone.js';
import { datesIn, type Leaning } from '../language/dates.js';
import { isDoubt } from '../language/dates/meaning.js';
import type { LedgerSettings } from './ledger-settings.js';

/** Null where the text names none, or several, or one that cannot be told. */
export function dayIn(
  text: string,
  at: Instant,
  { zone, dateOrder }: Pick<LedgerSettings, 'zone' | 'dateOrder'>,
  leaning: Leaning,
): Day | Span | null {
  const now = { today: localDay(at, zone), timeNow: localTime(at, zone), zone, dateOrder };
  const [found, another] = datesIn(text, now);
  if (!found || another) return null;
  const resolved = found[leaning];
  if (isDoubt(resolved)) return null;
  return 'date' in resolved ? resolved.date : resolved;
}
