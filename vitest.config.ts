import { defineConfig } from 'vitest/config';

// The whole suite runs in one zone; what depends on days and hours runs in two awkward ones too:
// Apia skipped a day and has no summer time, Santiago springs forward at midnight.
const dated = [
  'tests/calendar/**/*.test.ts',
  'tests/language/{contract,dates,dates-properties,day-behind,read-properties,which-batch}.test.ts',
  'tests/conversation/**/*.test.ts',
  'tests/exchange/**/*.test.ts',
];

const inZone = (name: string, zone: string, include: string[]) => ({
  extends: true as const,
  test: { name, include, env: { TZ: zone } },
});

export default defineConfig({
  test: {
    globalSetup: ['tests/build-once.ts'],
    setupFiles: ['tests/seeded.ts'],
    testTimeout: 20_000,
    projects: [
      inZone('london', 'Europe/London', ['tests/**/*.test.ts']),
      inZone('apia', 'Pacific/Apia', dated),
      inZone('santiago', 'America/Santiago', dated),
    ],
  },
});
