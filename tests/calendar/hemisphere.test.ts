/** Which zones have their spring in September. */
import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { hemisphereOf } from '../../src/calendar/hemisphere.js';

const zoneTable = '/usr/share/zoneinfo/zone1970.tab';

describe('the hemisphere of a zone', () => {
  it.each([
    ['Europe/London', 'north'],
    ['America/Chicago', 'north'],
    ['Pacific/Honolulu', 'north'],
    ['Asia/Singapore', 'north'],
    ['UTC', 'north'],
    ['Australia/Hobart', 'south'],
    ['Pacific/Auckland', 'south'],
    ['Pacific/Apia', 'south'],
    ['America/Santiago', 'south'],
    ['America/Argentina/Ushuaia', 'south'],
    ['Africa/Johannesburg', 'south'],
  ])('%s lies %s', (zone, half) => {
    expect(hemisphereOf(zone)).toBe(half);
  });

  // The IANA data's own latitudes, where the machine has them.
  it.skipIf(!existsSync(zoneTable))('agrees with the latitudes of the IANA data', () => {
    const wrong = readFileSync(zoneTable, 'utf8')
      .split('\n')
      .filter((line) => line !== '' && !line.startsWith('#'))
      .map((line) => line.split('\t'))
      .filter(([, place, zone]) => hemisphereOf(zone ?? '') !== (place?.startsWith('-') ? 'south' : 'north'))
      .map(([, , zone]) => zone);
    expect(wrong).toEqual([]);
  });
});
