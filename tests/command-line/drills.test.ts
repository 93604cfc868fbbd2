/** Every fault drill holds, at a tenth of its full size. */
import { describe, expect, it } from 'vitest';
import { allDrills } from '../../src/command-line/drills.js';

describe('the drill', () => {
  it.each(allDrills.map((drill) => [drill.name, drill] as const))(
    '%s holds',
    { timeout: 240_000 },
    async (_, drill) => {
      expect(await drill.run(0.1)).toMatch(/\S/);
    },
  );
});
