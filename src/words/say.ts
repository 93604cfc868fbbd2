/** How days, temperatures and counts are put into words. */
import { type Day, dayOfMonth, month } from '../calendar/day.js';
import type { MonthDay } from '../horticulture/frost-season.js';

/** A grower's choice of words. */
export interface Say {
  readonly wording: 'GB' | 'US';
  readonly units: 'metric' | 'us';
}

export function sayOf(wording: Say['wording'] = 'GB', units: Say['units'] = 'metric'): Say {
  return { wording, units };
}

const months = ['Jan', 'Feb', 'March', 'April', 'May', 'June', 'July', 'Aug', 'Sept', 'Oct', 'Nov', 'Dec'];
const ordinals = ['', 'first', 'second', 'third', 'fourth', 'fifth', 'sixth'];

/** "3 May"; "May 3" in American. */
export function dayWords(day: Day, { wording }: Say): string {
  const name = months[month(day) - 1] ?? '';
  return wording === 'GB' ? `${dayOfMonth(day)} ${name}` : `${name} ${dayOfMonth(day)}`;
}

export function monthDayWords(monthDay: MonthDay, say: Say): string {
  return dayWords(`2001-${monthDay}` as Day, say);
}

/** "−2 °C", "28 °F". */
export function celsiusWords(celsius: number, { units }: Say): string {
  const degrees = units === 'us' ? (celsius * 9) / 5 + 32 : celsius;
  const rounded = Math.round(degrees * 10) / 10;
  return `${rounded < 0 ? '−' : ''}${Math.abs(rounded)} °${units === 'us' ? 'F' : 'C'}`;
}

export function plural(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}

export function ordinal(number: number): string {
  return ordinals[number] ?? `${number}th`;
}

/** "EF1, CL1 and MW1". */
export function listWords(names: readonly string[]): string {
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}
