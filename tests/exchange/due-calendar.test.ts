import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { asDay } from '../../src/calendar/day.js';
import { dueCalendar, type CalendarItem } from '../../src/exchange/due-calendar.js';

const now = Date.UTC(2026, 2, 10, 6, 30, 0);
const items: CalendarItem[] = [
  {
    key: 'check:EF1:1',
    day: asDay('2026-03-29'),
    summary: 'Look for roots: EF1 Ember Fox; 12, two pots\\tray',
  },
  { key: 'plantOut:EF1:1', day: asDay('2026-05-24'), summary: 'Plant out: EF1 Ember Fox', description: `${'Żółty świerk — a long reason, '.repeat(12)}\nlast line` }, // prettier-ignore
];
const text = dueCalendar(items, 'slipnote', now);

function events() {
  return new ICAL.Component(ICAL.parse(text) as unknown[])
    .getAllSubcomponents('vevent')
    .map((each) => new ICAL.Event(each));
}

describe('the calendar of what is due', () => {
  it('is read by another reader with the same days, words and keys (ical.js)', () => {
    expect(
      events().map((event) => [event.uid, event.startDate.toString(), event.summary, event.description]),
    ).toEqual(
      items.map(({ key, day, summary, description }) => [
        `${key}@slipnote`,
        day,
        summary,
        description ?? null,
      ]),
    );
  });

  it('has all-day events of one day, whatever the zone', () => {
    for (const event of events()) {
      expect(event.startDate.isDate).toBe(true);
      expect(event.duration.toSeconds()).toBe(86_400);
    }
  });

  it('ends lines with CRLF and folds them at 75 octets (RFC 5545, 3.1)', () => {
    const lines = text.split('\r\n');
    expect(text.replaceAll('\r\n', '')).not.toContain('\n');
    for (const line of lines) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
  });

  it('carries VERSION, PRODID, a UID and a UTC stamp on every event (RFC 5545, 3.6 and 3.8.7.2)', () => {
    expect(text).toMatch(/^BEGIN:VCALENDAR\r\nVERSION:2\.0\r\nPRODID:/);
    expect(text.match(/^UID:/gm)).toHaveLength(items.length);
    expect(text.match(/^DTSTAMP:20260310T063000Z\r$/gm)).toHaveLength(items.length);
  });

  it('says all of the calendar before its first event, and ends with a line break (RFC 5545, 3.4 and 3.6)', () => {
    const lines = text.split('\r\n');
    const [first, last] = [lines.indexOf('BEGIN:VEVENT'), lines.lastIndexOf('END:VEVENT')];
    expect(lines.slice(last + 1)).toEqual(['END:VCALENDAR', '']);
    expect(lines.slice(0, first).every((line) => !line.startsWith('END:'))).toBe(true);
  });

  it('keeps the same keys when it is made again', () => {
    expect(dueCalendar(items, 'slipnote', now)).toBe(text);
  });
});
