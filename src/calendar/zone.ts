/** Local days and hours in a zone of the IANA data; the only file that knows luxon. */
import { DateTime, IANAZone } from 'luxon';
import type { Instant } from './clock.js';
import { addDays, asDay, type Day } from './day.js';

/** A time of day as `HH:MM`; times compare as strings. */
export type TimeOfDay = string;

const TIME_PATTERN = /^(?:[01]\d|2[0-3]):[0-5]\d$/;

export function isZone(name: string): boolean {
  return IANAZone.isValidZone(name);
}

export function isTimeOfDay(text: string): boolean {
  return TIME_PATTERN.test(text);
}

/** The zone that the machine is set to, UTC where it tells none. */
export function machineZone(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC';
}

export function localDay(instant: Instant, zone: string): Day {
  return dayShown(inZone(instant, zone));
}

export function localTime(instant: Instant, zone: string): TimeOfDay {
  return timeShown(inZone(instant, zone));
}

/** Reads an ISO 8601 moment that carries its offset; null where it is none. */
export function parseInstant(text: string): Instant | null {
  if (!/(?:Z|[+-]\d{2}:?\d{2})$/i.test(text)) return null;
  const read = DateTime.fromISO(text, { setZone: true });
  return read.isValid ? read.toMillis() : null;
}

/** ISO 8601 with the zone's offset, to the second. */
export function formatInstant(instant: Instant, zone: string): string {
  return inZone(instant, zone).toISO({ suppressMilliseconds: true }) ?? '';
}

/**
 * The moment at which a zone's clocks show `time` on `day`. Where they show it twice, the earlier; where a gap swallows
 * it, the first moment after the gap; where the zone skips the whole day, the same hour on the next day that exists.
 */
export function instantAt(day: Day, time: TimeOfDay, zone: string): Instant {
  const [hour = 0, minute = 0] = time.split(':').map(Number);
  const wanted = DateTime.fromISO(`${day}T${time}:00`, { zone });
  const earliest = wanted.getPossibleOffsets().reduce((a, b) => (b < a ? b : a), wanted);
  if (dayShown(earliest) === day && timeShown(earliest) === time) return earliest.toMillis();
  return endOfGap(day, hour * 60 + minute, zone);
}

/** Offset of the zone's clocks from UTC, in minutes east. */
export function offsetMinutes(instant: Instant, zone: string): number {
  return inZone(instant, zone).offset;
}

function endOfGap(day: Day, minutes: number, zone: string): Instant {
  const asIfUtc = Date.UTC(
    Number(day.slice(0, 4)),
    Number(day.slice(5, 7)) - 1,
    Number(day.slice(8, 10)),
    0,
    minutes,
  );
  const before = offsetMinutes(asIfUtc - 26 * 3_600_000, zone);
  const after = offsetMinutes(asIfUtc + 26 * 3_600_000, zone);
  if (after - before >= 24 * 60) return instantAt(addDays(day, 1), localClock(minutes), zone);
  // The gap's end is where the old offset stops holding: walk back from the wanted time read with the old offset.
  let low = asIfUtc - Math.max(before, after) * 60_000 - 3_600_000 * 4;
  let high = asIfUtc - before * 60_000;
  const target = offsetMinutes(high, zone);
  while (high - low > 60_000) {
    const middle = Math.floor((low + high) / 2 / 60_000) * 60_000;
    if (offsetMinutes(middle, zone) === target) high = middle;
    else low = middle;
  }
  return high;
}

function localClock(minutes: number): TimeOfDay {
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}

/** The moments asked for last: a turn asks for the same few many times over, and a zone's offset is dear to find. */
const lately = new Map<string, DateTime>();
const REMEMBERED = 64;

function inZone(instant: Instant, zone: string): DateTime {
  const key = `${instant} ${zone}`;
  const before = lately.get(key);
  if (before) return before;
  const local = DateTime.fromMillis(instant, { zone });
  if (!local.isValid) throw new RangeError(`no such zone: ${zone}`);
  if (lately.size >= REMEMBERED) lately.clear();
  lately.set(key, local);
  return local;
}

function dayShown({ year, month, day }: DateTime): Day {
  return asDay(
    `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`,
  );
}

function timeShown({ hour, minute }: DateTime): TimeOfDay {
  return localClock(hour * 60 + minute);
}
