/** Days told in numbers alone: "3/5", "03.05.26". */
import { type Day, dayOf, year as yearOf } from '../../calendar/day.js';
import { impossible, type Moment, type Resolved, type When, when, yearlyDay } from './meaning.js';
import { fullYear } from './numbers.js';

export const resolvedDay = (day: Day | null): Resolved => (day === null ? impossible : { date: day });

/** Two digits lean like the rest of the phrase, but no further than some decades. */
export function centuryOf(short: number, leaning: 'past' | 'future', today: Day): number {
  const nearest = fullYear(short, yearOf(today));
  if (leaning === 'past' && nearest > yearOf(today) + 1) return nearest - 100;
  return nearest;
}

/** Two numbers with a mark between, in the order of the note's dates; the other order where only that one exists. */
export function numeric(
  first: number,
  second: number,
  yearFor: (leaning: 'past' | 'future', now: Moment) => number | null,
): When {
  return when((leaning, now) => {
    const year = yearFor(leaning, now);
    const [day, month] = now.dateOrder === 'MDY' ? [second, first] : [first, second];
    const make = (d: number, m: number): Resolved =>
      year === null ? yearlyDay(m, d).mean(leaning, now) : resolvedDay(dayOf(year, m, d));
    if (month > 12 && day <= 12) return make(month, day);
    return make(day, month);
  });
}

/** The same with a stop and no year: "03.05.", "on 03.05". */
export const dotted = ({ first, second }: { first: number; second: number }): When | null =>
  first > 31 || second > 12 || first === 0 || second === 0 ? null : numeric(first, second, () => null);
