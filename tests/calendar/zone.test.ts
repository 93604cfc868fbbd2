import { describe, expect, it } from 'vitest';
import { asDay } from '../../src/calendar/day.js';
import { formatInstant, instantAt, localDay, parseInstant } from '../../src/calendar/zone.js';

const at = (day: string, time: string, zone: string) =>
  formatInstant(instantAt(asDay(day), time, zone), zone);

describe('instantAt', () => {
  it('answers the hour that the clocks show', () => {
    expect(at('2026-07-01', '08:00', 'Europe/London')).toBe('2026-07-01T08:00:00+01:00');
  });

  it('takes the earlier of two in the autumn fold', () => {
    expect(at('2026-10-25', '01:30', 'Europe/London')).toBe('2026-10-25T01:30:00+01:00');
  });

  it('takes the end of a spring gap', () => {
    expect(at('2026-03-29', '01:30', 'Europe/London')).toBe('2026-03-29T02:00:00+01:00');
    expect(at('2026-03-08', '02:15', 'America/New_York')).toBe('2026-03-08T03:00:00-04:00');
  });

  it('takes the first moment of a day that begins at one', () => {
    expect(at('2026-09-06', '00:00', 'America/Santiago')).toBe('2026-09-06T01:00:00-03:00');
  });

  it('takes the next day where a zone skips one (Apia, 30 December 2011)', () => {
    expect(at('2011-12-30', '08:00', 'Pacific/Apia')).toBe('2011-12-31T08:00:00+14:00');
  });
});

describe('localDay', () => {
  it('is the day in the zone, whatever offset the moment was written with', () => {
    const moment = parseInstant('2026-04-08T23:30:00-05:00');
    expect(moment).not.toBeNull();
    expect(localDay(moment ?? 0, 'Europe/London')).toBe('2026-04-09');
  });
});
