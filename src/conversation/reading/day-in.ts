/** The one day or span that a short reply names. */
import type { Instant } from '../../calendar/clock.js';
import type { Day } from '../../calendar/day.js';
import type { Span } from '../../calendar/span.js';
import { localDay, localTime } from '../../calendar/zone.js';
import { datesIn, type Leaning, type Moment } from '../../language/dates.js';
import { isDoubt } from '../../language/dates/meaning.js';
import type { LedgerSettings } from '../settings/ledger-settings.js';

/** Null where the text names none, or several, or one that cannot be told. */
export function dayIn(
  text: string,
  at: Instant,
  settings: Pick<LedgerSettings, 'zone' | 'dateOrder'>,
  leaning: Leaning,
): Day | Span | null {
  const all = datesIn(text, momentOf(at, settings));
  // "The 1 lost was from 13 June": one lost, beside a day.
  const sure = all.filter(({ certain }) => certain);
  const [found, another] = sure.length > 0 ? sure : all;
  if (!found || another) return null;
  const resolved = found[leaning];
  if (isDoubt(resolved)) return null;
  return 'date' in resolved ? resolved.date : resolved;
}

/** The same, where the words name that day and say nothing else. */
export function dayAloneIn(
  text: string,
  at: Instant,
  settings: Pick<LedgerSettings, 'zone' | 'dateOrder'>,
  leaning: Leaning,
): Day | Span | null {
  const [found] = datesIn(text, momentOf(at, settings));
  const rest = found ? `${text.slice(0, found.start)} ${text.slice(found.end)}` : text;
  return /^(?:[\s,.]|['’]s?\b|\b(?:on|the|back|then|job)\b)*$/i.test(rest)
    ? dayIn(text, at, settings, leaning)
    : null;
}

function momentOf(at: Instant, { zone, dateOrder }: Pick<LedgerSettings, 'zone' | 'dateOrder'>): Moment {
  return { today: localDay(at, zone), timeNow: localTime(at, zone), zone, dateOrder };
}
