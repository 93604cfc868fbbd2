/** A run of days, both ends included. */
import { addDays, asDay, type Day, daysInMonth, month, weekday, year } from './day.js';

export interface Span {
  readonly from: Day;
  readonly to: Day;
}

/** The Monday-to-Sunday week that holds `day`. */
export function weekOf(day: Day): Span {
  const monday = addDays(day, 1 - weekday(day));
  return { from: monday, to: addDays(monday, 6) };
}

/** The calendar month that holds `day`. */
export function monthOf(day: Day): Span {
  const first = asDay(`${day.slice(0, 8)}01`);
  return { from: first, to: addDays(first, daysInMonth(year(day), month(day)) - 1) };
}

/** The Saturday and Sunday of the week that holds `day`. */
export function weekendOf(day: Day): Span {
  const { to } = weekOf(day);
  return { from: addDays(to, -1), to };
}

export function contains(span: Span, day: Day): boolean {
  return span.from <= day && day <= span.to;
}

export function isSpan(when: Day | Span): when is Span {
  return typeof when !== 'string';
}

/** First day of a day or span. */
export function firstDay(when: Day | Span): Day {
  return isSpan(when) ? when.from : when;
}

/** Last day of a day or span. */
export function lastDay(when: Day | Span): Day {
  return isSpan(when) ? when.to : when;
}
