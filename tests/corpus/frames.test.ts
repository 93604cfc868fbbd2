/** Holds the reader to what it has reached on acts in everyday wording, whatever plants and numbers they are told of. */
import { describe, expect, it } from 'vitest';
import { drawing } from './changed-notes.js';
import { bringInFrames, filled } from './frames.js';
import { readAndJudge, scoreOf } from './reading.js';

/** Once with figures and once with words. */
const TURNS = [0, 1];

/** In per cent of the notes: two points short of what was measured when this was written. */
const floors = {
  dev: { exact: 91.7, wrong: 4.6 },
  unseen: { exact: 78, wrong: 13.3 },
} as const;

describe('frames of notes', () => {
  it.each(['dev', 'unseen'] as const)('are read as well as they were: %s', (half) => {
    const pick = drawing(11);
    const notes = bringInFrames(half).flatMap((frame) => TURNS.map((turn) => filled(frame, turn, pick)));
    const score = scoreOf(readAndJudge(notes));
    expect(score.exact, 'exact').toBeGreaterThanOrEqual(floors[half].exact);
    expect(score.wrong, 'wrong').toBeLessThanOrEqual(floors[half].wrong);
  });

  it('fill every place', () => {
    const pick = drawing(3);
    for (const frame of bringInFrames('dev')) expect(filled(frame, 0, pick).text).not.toMatch(/[{}]/);
  });
});
