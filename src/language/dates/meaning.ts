/** What a phrase of time means: a function of the way it leans and of the moment at which it is said. */
import { addDays, addMonths, type Day, dayOf, weekday, year } from '../../calendar/day.js';
import type { Span } from '../../calendar/span.js';
import type { TimeOfDay } from '../../calendar/zone.js';
import type { DateOrder } from '../note.js';

/** Things done lean to the past, plans to the future. */
export type Leaning = 'past' | 'future';

/** The moment of the note, in the grower's zone. */
export interface Moment {
  readonly today: Day;
  readonly timeNow: TimeOfDay;
  readonly zone: string;
  readonly dateOrder: DateOrder;
}

/** Why a phrase gives no day: it names none that exists, several, or one that only last year could hold, over six months back. */
export type DateProblem = 'impossible' | 'ambiguous' | 'tooFarBack';

export interface Doubt {
  readonly problem: DateProblem;
  /** Days or spans to offer, nearest first, where there are any. */
  readonly options?: readonly (Day | Span)[];
}

export type Resolved = { readonly date: Day } | Span | Doubt;

export type Meaning = (leaning: Leaning, now: Moment) => Resolved;

/** A phrase's meaning, the hour it names, and whether it can be nothing but a phrase of time. */
export interface When {
  readonly mean: Meaning;
  readonly time?: TimeOfDay;
  /** Where the hour is told from now on: minutes, negative back. */
  readonly minutesAway?: number;
  readonly certain: boolean;
  /** Whether the leaning chooses among several: "Tuesday", "3 May". */
  readonly open?: boolean;
  /** Whether it may count a thing: "the third" of May, or the third pot. */
  readonly ordinal?: boolean;
  /** The way it leans where nothing else tells: "this Tuesday" looks ahead. */
  readonly leans?: Leaning;
}

export const impossible: Doubt = { problem: 'impossible' };
export const ambiguous: Doubt = { problem: 'ambiguous' };

/** Days that a grower's ledger can hold; what lies beyond is a slip ("2026 years ago"). */
const MOST_DAYS_AWAY = 150 * 366;
const isFarOff = (days: number): boolean => Math.abs(days) > MOST_DAYS_AWAY;

export function isDoubt(resolved: Resolved): resolved is Doubt {
  return 'problem' in resolved;
}

/** First and last day of what was resolved. */
export function boundsOf(resolved: { readonly date: Day } | Span): Span {
  return 'date' in resolved ? { from: resolved.date, to: resolved.date } : resolved;
}

export function when(mean: Meaning, certain = true): When {
  return { mean, certain };
}

/** A phrase of which the leaning chooses the year, month or week. */
export function open(mean: Meaning): When {
  return { mean, certain: true, open: true };
}

/** The same phrase, but one that could as well be something else. */
export function unsure(phrase: When): When {
  return { ...phrase, certain: false };
}

/** A phrase that says the same whichever way it leans. */
export function fixed(of: (now: Moment) => Resolved): When {
  return when((_, now) => of(now));
}

export function daysFromToday(days: number): When {
  return fixed(({ today }) => (isFarOff(days) ? impossible : { date: addDays(today, days) }));
}

/** The phrase's first and last day put through `change`; a doubt stays one. */
export function changed(phrase: When, change: (span: Span, now: Moment, leaning: Leaning) => Resolved): When {
  return {
    ...phrase,
    mean: (leaning, now) => {
      const resolved = phrase.mean(leaning, now);
      return isDoubt(resolved) ? resolved : change(boundsOf(resolved), now, leaning);
    },
  };
}

/** A day or span moved on by so many days and months. */
export function shifted(phrase: When, days: number, months = 0): When {
  return {
    ...phrase,
    mean: (leaning, now) => {
      const resolved = phrase.mean(leaning, now);
      if (isDoubt(resolved)) return resolved;
      if (isFarOff(days + months * 31)) return impossible;
      const move = (day: Day) => addDays(addMonths(day, months), days);
      return 'date' in resolved
        ? { date: move(resolved.date) }
        : { from: move(resolved.from), to: move(resolved.to) };
    },
  };
}

/** Years in which a yearly day may lie, nearest first; nine, since 29 February can be eight years off (1896 to 1904). */
function yearsAway(leaning: Leaning, today: Day): number[] {
  const step = leaning === 'past' ? -1 : 1;
  return Array.from({ length: 9 }, (_, years) => year(today) + step * years);
}

/**
 * The nearest such day of a year: today or before for things done, after today for plans. A done day that only last
 * year could hold, more than six months back, is a doubt.
 */
export function nearestDay(ofYear: (year: number) => Day | null): When {
  return open((leaning, { today }) => {
    const found = nearestOf(ofYear, leaning, today);
    if (found === undefined) return impossible;
    if (leaning === 'past' && year(found) < year(today) && found < addMonths(today, -6)) {
      const coming = nearestOf(ofYear, 'future', today);
      return { problem: 'tooFarBack', options: coming === undefined ? [found] : [found, coming] };
    }
    return { date: found };
  });
}

function nearestOf(ofYear: (year: number) => Day | null, leaning: Leaning, today: Day): Day | undefined {
  for (const each of yearsAway(leaning, today)) {
    const day = ofYear(each);
    if (day !== null && (leaning === 'past' ? day <= today : day > today)) return day;
  }
  return undefined;
}

/** The nearest such span of a year: for things done the latest that has begun, for plans the first not yet over. */
export function nearestSpan(ofYear: (year: number) => Span | null): When {
  return open((leaning, { today }) => {
    const step = leaning === 'past' ? -1 : 1;
    // A season may begin in one year and end in the next, so look one year further the other way first.
    for (let years = -1; years < 9; years++) {
      const span = ofYear(year(today) + step * years);
      if (span !== null && (leaning === 'past' ? span.from <= today : span.to >= today)) return span;
    }
    return impossible;
  });
}

/** The day of that month (1–12), each year; impossible where no year has it. */
export function yearlyDay(month: number, dayOfMonth: number): When {
  return nearestDay((each) => dayOf(each, month, dayOfMonth));
}

/** Days from `day` on to the next such weekday (1–7), 1 to 7. */
export function daysUntilWeekday(day: Day, wanted: number): number {
  return ((wanted - weekday(day) + 6) % 7) + 1;
}

/** Days back from `day` to the last such weekday before it, 1 to 7. */
export function daysSinceWeekday(day: Day, wanted: number): number {
  return ((weekday(day) - wanted + 6) % 7) + 1;
}

/** Minutes since today's midnight that the clock shows so many minutes from now; may be negative or past a day. */
export function clockAfter(now: Moment, minutes: number): number {
  const [hour = 0, minute = 0] = now.timeNow.split(':').map(Number);
  return hour * 60 + minute + minutes;
}
