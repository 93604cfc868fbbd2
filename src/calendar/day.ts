/** A day of the calendar, without clock or zone. */

/** A day as `YYYY-MM-DD`; days compare as strings. */
export type Day = string & { readonly __day: true };

const MS_PER_DAY = 86_400_000;
const DAY_PATTERN = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Days since 1970-01-01. */
export function dayNumber(day: Day): number {
  return (
    Date.UTC(Number(day.slice(0, 4)), Number(day.slice(5, 7)) - 1, Number(day.slice(8, 10))) / MS_PER_DAY
  );
}

/** The day that lies `number` days after 1970-01-01. */
export function dayFromNumber(number: number): Day {
  return new Date(number * MS_PER_DAY).toISOString().slice(0, 10) as Day;
}

/** The day of that year, month (1–12) and day of month, or null where the calendar has none (31 April). */
export function dayOf(year: number, month: number, dayOfMonth: number): Day | null {
  if (!Number.isInteger(year) || year < 1000 || year > 9999) return null;
  if (!Number.isInteger(month) || month < 1 || month > 12) return null;
  if (!Number.isInteger(dayOfMonth) || dayOfMonth < 1 || dayOfMonth > daysInMonth(year, month)) return null;
  return `${year}-${pad(month)}-${pad(dayOfMonth)}` as Day;
}

/** Reads `YYYY-MM-DD`; null where it is another form or no such day exists. */
export function parseDay(text: string): Day | null {
  const match = DAY_PATTERN.exec(text);
  return match ? dayOf(Number(match[1]), Number(match[2]), Number(match[3])) : null;
}

/** Like `parseDay`, for days written in the code or already checked; throws on anything else. */
export function asDay(text: string): Day {
  const day = parseDay(text);
  if (day === null) throw new RangeError(`not a day: ${text}`);
  return day;
}

export function addDays(day: Day, days: number): Day {
  return dayFromNumber(dayNumber(day) + days);
}

/** Whole months later; a day that the target month lacks becomes that month's last (31 January + 1 is 28 or 29 February). */
export function addMonths(day: Day, months: number): Day {
  const index = year(day) * 12 + month(day) - 1 + months;
  const targetYear = Math.floor(index / 12);
  const targetMonth = index - targetYear * 12 + 1;
  const last = daysInMonth(targetYear, targetMonth);
  return `${targetYear}-${pad(targetMonth)}-${pad(Math.min(dayOfMonth(day), last))}` as Day;
}

/** Days from `from` to `to`; negative where `to` is earlier. */
export function daysBetween(from: Day, to: Day): number {
  return dayNumber(to) - dayNumber(from);
}

/** Day of the week, Monday 1 to Sunday 7. */
export function weekday(day: Day): number {
  return ((((dayNumber(day) + 3) % 7) + 7) % 7) + 1;
}

export function year(day: Day): number {
  return Number(day.slice(0, 4));
}

export function month(day: Day): number {
  return Number(day.slice(5, 7));
}

export function dayOfMonth(day: Day): number {
  return Number(day.slice(8, 10));
}

/** Days in a month (1–12) of the Gregorian calendar. */
export function daysInMonth(year: number, month: number): number {
  return new Date(Date.UTC(year, month, 0)).getUTCDate();
}

export function earliest(a: Day, b: Day): Day {
  return a < b ? a : b;
}

export function latest(a: Day, b: Day): Day {
  return a > b ? a : b;
}

function pad(number: number): string {
  return String(number).padStart(2, '0');
}
