/** Days that people name and no law need set: Easter and what hangs on it, saints' days, Bonfire Night. */
import { addDays, asDay, type Day, weekday } from './day.js';

/**
 * Easter Sunday of the Gregorian calendar (Meeus, Astronomical Algorithms, chapter 8: the "anonymous" rule).
 */
export function easterSunday(year: number): Day {
  const a = year % 19;
  const b = Math.floor(year / 100);
  const c = year % 100;
  const d = Math.floor(b / 4);
  const f = Math.floor((b + 8) / 25);
  const g = Math.floor((b - f + 1) / 3);
  const h = (19 * a + b - d - g + 15) % 30;
  const l = (32 + 2 * (b % 4) + 2 * Math.floor(c / 4) - h - (c % 4)) % 7;
  const m = Math.floor((a + 11 * h + 22 * l) / 451);
  const sum = h + l - 7 * m + 114;
  return asDay(`${year}-${two(Math.floor(sum / 31))}-${two((sum % 31) + 1)}`);
}

/** Orthodox Easter in the Gregorian calendar (Meeus, chapter 8: the Julian rule, 13 days added; holds 1900 to 2099). */
export function orthodoxEaster(year: number): Day {
  const d = (19 * (year % 19) + 15) % 30;
  const e = (2 * (year % 4) + 4 * (year % 7) - d + 34) % 7;
  const sum = d + e + 114;
  return addDays(asDay(`${year}-${two(Math.floor(sum / 31))}-${two((sum % 31) + 1)}`), 13);
}

/** The nth weekday (Monday 1) of a month; from its end where `nth` is -1. */
export function nthWeekdayOfMonth(year: number, month: number, nth: number, wanted: number): Day {
  const first = asDay(`${year}-${two(month)}-01`);
  if (nth > 0) return addDays(first, ((wanted - weekday(first) + 7) % 7) + 7 * (nth - 1));
  const next = month === 12 ? asDay(`${year + 1}-01-01`) : asDay(`${year}-${two(month + 1)}-01`);
  const last = addDays(next, -1);
  return addDays(last, -((weekday(last) - wanted + 7) % 7));
}

/** The Sunday four weeks before Christmas Day's week. */
export function adventSunday(year: number): Day {
  const christmas = asDay(`${year}-12-25`);
  return addDays(christmas, -(weekday(christmas) % 7 || 7) - 21);
}

/** Mothers are remembered on the fourth Sunday of Lent, in May, or on a day of their own (common practice of each country). */
export function mothersDay(year: number, country: string | undefined): Day {
  switch (country) {
    case 'GB':
    case 'IE':
    case 'IM':
    case 'JE':
    case 'GG':
    case 'NG':
      return addDays(easterSunday(year), -21);
    case 'ES':
    case 'PT':
    case 'HU':
    case 'LT':
    case 'RO':
      return nthWeekdayOfMonth(year, 5, 1, 7);
    case 'FR':
    case 'SE':
      return nthWeekdayOfMonth(year, 5, -1, 7);
    case 'PL':
      return asDay(`${year}-05-26`);
    default:
      return nthWeekdayOfMonth(year, 5, 2, 7);
  }
}

/** Common practice: the third Sunday in June, the first in September in Australia and New Zealand, Ascension Day in Germany. */
export function fathersDay(year: number, country: string | undefined): Day {
  if (country === 'AU' || country === 'NZ') return nthWeekdayOfMonth(year, 9, 1, 7);
  if (country === 'DE') return addDays(easterSunday(year), 39);
  if (country === 'ES' || country === 'IT' || country === 'PT') return asDay(`${year}-03-19`);
  return nthWeekdayOfMonth(year, 6, 3, 7);
}

function two(number: number): string {
  return String(number).padStart(2, '0');
}
