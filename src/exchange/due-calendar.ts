/** What is due as a calendar to subscribe to or take along (RFC 5545); the only file that knows ical-generator. */
import ical, { ICalCalendarMethod } from 'ical-generator';
import { addDays, type Day } from '../calendar/day.js';
import type { Instant } from '../calendar/clock.js';

export interface CalendarItem {
  /** Stable for the same work, so that a calendar that imports twice moves the entry instead of doubling it. */
  readonly key: string;
  readonly day: Day;
  readonly summary: string;
  readonly description?: string;
}

/** An iCalendar document of all-day events, which are the same day in every zone. `now` stamps them. */
export function dueCalendar(items: readonly CalendarItem[], name: string, now: Instant): string {
  const calendar = ical({ name, method: ICalCalendarMethod.PUBLISH, prodId: { company: 'slipnote', product: 'slipnote', language: 'EN' } }); // prettier-ignore
  for (const { key, day, summary, description } of items) {
    calendar.createEvent({
      id: `${key}@slipnote`,
      stamp: new Date(now),
      start: midnight(day),
      end: midnight(addDays(day, 1)),
      allDay: true,
      summary,
      ...(description === undefined ? {} : { description }),
    });
  }
  return `${calendar.toString()}\r\n`;
}

/** The moment at which UTC's calendar shows the day: the form in which ical-generator takes a date without zone. */
function midnight(day: Day): Date {
  return new Date(`${day}T00:00:00Z`);
}
