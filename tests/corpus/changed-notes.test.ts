/** Holds the reader to what it has reached on notes that are changed in one thing, none of which anybody tuned. */
import { describe, expect, it } from 'vitest';
import { bringIn, type CorpusNote } from './corpus-note.js';
import { changes, drawing } from './changed-notes.js';
import { readAndJudge, scoreOf } from './reading.js';

const SAMPLE = 300;

/** In per cent of the sample: two points short of what was measured when this was written. */
const floors: Readonly<Record<string, { readonly exact: number; readonly wrong: number }>> = {
  'joined by a full stop': { exact: 95, wrong: 3.3 },
  'joined by “and”': { exact: 83.3, wrong: 13.3 },
  'a name that nobody knows': { exact: 93.3, wrong: 4.7 },
  'small letters': { exact: 96.3, wrong: 2.3 },
};

const dev = bringIn('dev');
const exact = readAndJudge(dev)
  .filter(({ outcome }) => outcome === 'exact')
  .map(({ note }) => note);

describe('a note that is read exactly, changed in one thing', () => {
  it.each(Object.entries(changes))('is read as well: %s', (name, change) => {
    const pick = drawing(7);
    const changed = new Map<string, CorpusNote>();
    for (let tried = 0; tried < exact.length * 2 && changed.size < SAMPLE; tried++) {
      const note = pick(exact);
      const other = note && change(note, pick, exact);
      if (other) changed.set(other.id, other);
    }
    const score = scoreOf(readAndJudge([...changed.values()]));
    const floor = floors[name];
    expect(score.notes).toBe(SAMPLE);
    expect(score.exact, 'exact').toBeGreaterThanOrEqual(floor?.exact ?? 100);
    expect(score.wrong, 'wrong').toBeLessThanOrEqual(floor?.wrong ?? 0);
  });
});
