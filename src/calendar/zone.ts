/** Local days and hours in a zone of the IANA data; the only file that knows luxon. */
import { DateTime, IANAZone } from 'luxon';
import type { Instant } from './clock.js';
import { addDays, asDay, type Day } from './day.js';

/** A time of day as `HH:MM`; times compare as strings. */
export type TimeOfDay = string;

const TIME_PATTERN = /^(?:[01]\d|2[0-3]):[0-5]\d$/;

/** What was asked last: notes in a row mostly come of one zone, and each asking builds a formatter anew. */
let asked: { readonly name: string; readonly isZone: boolean } | undefined;

export function isZone(name: string): boolean {
  if (asked?.name !== name) asked = { name, isZone: IANAZone.isValidZone(name) };
  return asked.isZone;
}

export function isTimeOfDay(text: string): boolean {
  return TIME_PATTERN.test(text);
}

/** The zone that the machine is set to, UTC where it tells none. */
export function machineZone(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC';
}

export function localDay(instant: Instant, zone: string): Day {
  const shown = shownAt(instant, zone);
  return dayShown({
    year: shown.getUTCFullYear(),
    month: shown.getUTCMonth() + 1,
    day: shown.getUTCDate(),
  });
}

export function localTime(instant: Instant, zone: string): TimeOfDay {
  const shown = shownAt(instant, zone);
  return timeShown({ hour: shown.getUTCHours(), minute: shown.getUTCMinutes() });
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
  return remembered(moments, `${day} ${time} ${zone}`, () => momentShowing(day, time, zone));
}

function momentShowing(day: Day, time: TimeOfDay, zone: string): Instant {
  const [hour = 0, minute = 0] = time.split(':').map(Number);
  const wanted = DateTime.fromISO(`${day}T${time}:00`, { zone });
  const earliest = wanted.getPossibleOffsets().reduce((a, b) => (b < a ? b : a), wanted);
  if (dayShown(earliest) === day && timeShown(earliest) === time) return earliest.toMillis();
  return endOfGap(day, hour * 60 + minute, zone);
}

/** Offset of the zone's clocks from UTC, in minutes east. */
function offsetMinutes(instant: Instant, zone: string): number {
  const utcDay = Math.floor(instant / DAY_MS);
  return (
    remembered(steady, `${utcDay} ${zone}`, () => steadyOffset(utcDay, zone)) ?? offsetFound(instant, zone)
  );
}

const DAY_MS = 86_400_000;

/** The offset that a zone keeps from one midnight of UTC to the next; null where its clocks are set in between. */
function steadyOffset(utcDay: number, zone: string): number | null {
  const first = offsetFound(utcDay * DAY_MS, zone);
  return first === offsetFound((utcDay + 1) * DAY_MS, zone) ? first : null;
}

/** The moment as its zone's clocks show it, read off a date of UTC. */
function shownAt(instant: Instant, zone: string): Date {
  return new Date(instant + offsetMinutes(instant, zone) * 60_000);
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

/** What was asked for last: a turn asks for the same few moments many times over, and a zone's offset is dear to find. */
const moments = new Map<string, Instant>();
const steady = new Map<string, number | null>();
const REMEMBERED = 500;

function remembered<T>(known: Map<string, T>, key: string, work: () => T): T {
  const before = known.get(key);
  if (before !== undefined) return before;
  const found = work();
  if (known.size >= REMEMBERED) known.clear();
  known.set(key, found);
  return found;
}

function offsetFound(instant: Instant, zone: string): number {
  return inZone(instant, zone).offset;
}

function inZone(instant: Instant, zone: string): DateTime {
  const local = DateTime.fromMillis(instant, { zone });
  if (!local.isValid) throw new RangeError(`no such zone: ${zone}`);
  return local;
}

function dayShown({ year, month, day }: Pick<DateTime, 'year' | 'month' | 'day'>): Day {
  return asDay(
    `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`,
  );
}

function timeShown({ hour, minute }: Pick<DateTime, 'hour' | 'minute'>): TimeOfDay {
  return localClock(hour * 60 + minute);
}
