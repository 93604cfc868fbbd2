/** One digest on each local day, at the hour asked for, whatever the zone does. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, asDay, type Day } from '../../src/calendar/day.js';
import { instantAt, localDay, localTime } from '../../src/calendar/zone.js';
import { civilMoment, type CivilHours, isQuiet, nextDigestAt } from '../../src/outlook/digest-time.js';

const DAY_MS = 86_400_000;
const hours = (
  zone: string,
  digestAt = '08:00',
  quiet: [string, string] = ['21:00', '07:30'],
): CivilHours => ({
  zone,
  digestAt,
  quiet,
});

/** Every digest from `start` on for so many milliseconds, sent the moment it is due. */
function digests(start: number, span: number, at: CivilHours): { day: Day; time: string; instant: number }[] {
  const sent: { day: Day; time: string; instant: number }[] = [];
  let now = start;
  let lastDay: Day | null = null;
  for (;;) {
    const next = nextDigestAt(now, lastDay, at);
    if (next === null || next > start + span) return sent;
    now = next;
    lastDay = localDay(now, at.zone);
    sent.push({ day: lastDay, time: localTime(now, at.zone), instant: now });
  }
}

/** Local days that the zone has between two instants, found an hour at a time. */
function localDays(start: number, end: number, zone: string): Day[] {
  const days = new Set<Day>();
  for (let instant = start; instant <= end; instant += DAY_MS / 24) days.add(localDay(instant, zone));
  return [...days];
}

describe.each(Intl.supportedValuesOf('timeZone'))('a year in %s', (zone) => {
  it('has one digest on each local day, at the hour asked for or at the end of the gap that swallows it', () => {
    const start = Date.UTC(2026, 0, 1, 0, 30);
    const sent = digests(start, 365 * DAY_MS, hours(zone));
    const days = sent.map(({ day }) => day);
    const expected: Day[] = [];
    for (let day = days[0]!; day <= days.at(-1)!; day = addDays(day, 1)) expected.push(day);
    expect(days).toEqual(expected);
    expect(sent.filter(({ time }, index) => time !== '08:00' && index > 0)).toEqual([]);
  });
});

describe('days that clocks make odd', () => {
  it('a spring gap over the hour asked for puts the digest at its end', () => {
    const sent = digests(
      Date.UTC(2026, 2, 27),
      5 * DAY_MS,
      hours('Europe/London', '01:30', ['00:00', '00:00']),
    );
    expect(sent.map(({ day, time }) => `${day} ${time}`)).toContain('2026-03-29 02:00');
    expect(new Set(sent.map(({ day }) => day)).size).toBe(sent.length);
  });

  it('an autumn fold over it gives one digest, the earlier', () => {
    const sent = digests(
      Date.UTC(2026, 9, 23),
      5 * DAY_MS,
      hours('Europe/London', '01:30', ['00:00', '00:00']),
    );
    const onFold = sent.filter(({ day }) => day === '2026-10-25');
    expect(onFold).toEqual([{ day: '2026-10-25', time: '01:30', instant: Date.UTC(2026, 9, 25, 0, 30) }]);
  });

  it('a day that never was has none, and the next has one', () => {
    const sent = digests(Date.UTC(2011, 11, 27), 7 * DAY_MS, hours('Pacific/Apia'));
    const days = sent.map(({ day }) => day);
    expect(days).not.toContain('2011-12-30');
    expect(days).toContain('2011-12-29');
    expect(days).toContain('2011-12-31');
    expect(new Set(days).size).toBe(days.length);
  });

  it('a zone that starts its day at one o’clock still gets a digest at midnight, as soon as there is one', () => {
    const sent = digests(
      Date.UTC(2026, 8, 3),
      5 * DAY_MS,
      hours('America/Santiago', '00:00', ['00:00', '00:00']),
    );
    expect(sent.map(({ day, time }) => `${day} ${time}`)).toContain('2026-09-06 01:00');
  });
});

describe('a grower on the move', () => {
  const zones = Intl.supportedValuesOf('timeZone');

  it('has no local day with two digests, and none without one that could have had it', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ zone: fc.constantFrom(...zones), hours: fc.integer({ min: 1, max: 200 }) }), {
          minLength: 2,
          maxLength: 5,
        }),
        fc.integer({ min: 0, max: 364 }),
        (stays, firstDay) => {
          let now = Date.UTC(2026, 0, 1) + firstDay * DAY_MS;
          let lastDay: Day | null = null;
          const days: Day[] = [];
          for (const stay of stays) {
            const end = now + stay.hours * 3_600_000;
            const arrived = now;
            for (;;) {
              const next = nextDigestAt(now, lastDay, hours(stay.zone));
              if (next === null || next > end) break;
              now = next;
              lastDay = localDay(now, stay.zone);
              days.push(lastDay);
            }
            // Each whole local day of the stay that was not had before has its digest.
            for (const day of localDays(arrived, end, stay.zone)) {
              const at = instantAt(day, '08:00', stay.zone);
              if (at >= arrived && at <= end && localDay(at, stay.zone) === day)
                expect(days.some((had) => had >= day)).toBe(true);
            }
            now = end;
          }
          expect(days).toEqual([...new Set(days)].sort());
        },
      ),
      { numRuns: 150 },
    );
  });
});

describe('quiet hours', () => {
  it('put a digest that was asked for within them at their end', () => {
    const sent = digests(Date.UTC(2026, 5, 1), 2 * DAY_MS, hours('Europe/London', '06:00'));
    expect(new Set(sent.map(({ time }) => time))).toEqual(new Set(['07:30']));
  });

  it('keep a missed digest back until the next morning', () => {
    const evening = instantAt(asDay('2026-06-10'), '22:15', 'Europe/London');
    const next = nextDigestAt(evening, asDay('2026-06-07'), hours('Europe/London'));
    expect(next).toBe(instantAt(asDay('2026-06-11'), '08:00', 'Europe/London'));
  });

  it('let a digest missed in the morning out at once, in civil hours', () => {
    const noon = instantAt(asDay('2026-06-10'), '12:00', 'Europe/London');
    expect(nextDigestAt(noon, asDay('2026-06-07'), hours('Europe/London'))).toBe(noon);
  });

  it('hold across midnight, and not at all where they are empty', () => {
    expect(isQuiet('23:00', ['21:00', '07:30'])).toBe(true);
    expect(isQuiet('07:30', ['21:00', '07:30'])).toBe(false);
    expect(isQuiet('12:00', ['12:00', '12:00'])).toBe(false);
  });

  it('move a prompt to their end', () => {
    const night = instantAt(asDay('2026-06-10'), '23:00', 'Europe/London');
    expect(civilMoment(night, hours('Europe/London'))).toBe(
      instantAt(asDay('2026-06-11'), '07:30', 'Europe/London'),
    );
  });
});

describe('digests that are off', () => {
  it('never come', () => {
    expect(nextDigestAt(0, null, { ...hours('UTC'), digestAt: 'off' })).toBeNull();
  });
});
