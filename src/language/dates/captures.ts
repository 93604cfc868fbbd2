/** The kinds of words and phrases that rules capture, and what each captures. */
import type { Day } from '../../calendar/day.js';
import type { TimeOfDay } from '../../calendar/zone.js';
import type { When } from './meaning.js';
import type { Count } from './numbers.js';

export type Unit = 'day' | 'week' | 'fortnight' | 'month' | 'year';
export type SmallUnit = 'hour' | 'minute';
export type DayPart = 'morning' | 'noon' | 'afternoon' | 'evening' | 'night' | 'first';

/** What each `<kind>` of a pattern captures. */
export interface Captures {
  /** Monday 1 to Sunday 7. */
  weekday: number;
  /** "Sundays": counted ones. */
  weekdays: number;
  /** 1–12. */
  month: number;
  unit: Unit;
  /** Weeks and fortnights, which weekdays are counted in. */
  weekUnit: Unit;
  smallUnit: SmallUnit;
  count: Count;
  /** One or two digits, no ordinal. */
  int: number;
  ord: number;
  /** Day of a month, as digits or as an ordinal. */
  dom: number;
  /** The same, only as an ordinal ("3rd", "third"). */
  ordDom: number;
  /** The same in digits: "3rd". */
  digitOrd: number;
  /** Four digits, or in words. */
  year: number;
  /** Just two digits: a year's last, or minutes. */
  shortYear: number;
  /** Four digits that a clock may show. */
  fourDigits: number;
  season: Season;
  holiday: (year: number, zone: string) => Day | null;
  part: DayPart;
  clock: TimeOfDay;
  /** A day of the calendar with its month: "3 May", "3/4/26". */
  calendar: When;
  /** Any single day. */
  day: When;
  /** Any run of days. */
  span: When;
  /** A day or a span. */
  when: When;
  /** What a find in running text is. */
  phrase: When;
  /** What a text that is nothing but one phrase of time may be as well. */
  whole: When;
}

export type Season = 'spring' | 'summer' | 'autumn' | 'winter';
export type Kind = keyof Captures;
