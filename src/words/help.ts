/** What can be said, with examples from the grower's own plants. */
import { alive, type Batch } from '../ledger/batch.js';
import { plantWords } from './plants.js';
import type { Speech } from './speech.js';

/** `batch` is a live batch of the grower's, null where there is none yet. */
export function helpWords(batch: Batch | null, place: string | null, speech: Speech): string {
  const plant = batch
    ? plantWords({
        ...(batch.variety === null ? {} : { variety: batch.variety }),
        ...(batch.crop === null ? {} : { crop: batch.crop }),
      })
    : 'Copper Lantern';
  const label = batch?.label ?? 'CL1';
  const many = batch ? Math.max(1, Math.min(2, alive(batch))) : 2;
  return [
    'Say it as you would to a friend at the bench, for example:',
    `“took 5 tip cuttings of ${plant}, ${speech.units === 'us' ? '4 in pot' : '9cm pot'}${place ? `, ${place}` : ''}”`,
    `“${label}: 3 rooted” · “lost ${many} of the ${plant} to rot”`,
    `“potted on ${many} ${plant}” · “moved ${label} to the cold frame”`,
    `“what’s due this week?” · “how many ${plant}?” · “how is ${label}?”`,
    `“I want 20 ${plant} by the end of May” · “how well does it root?”`,
    '“undo” · “make that four” · “it was Sunday”',
  ].join('\n');
}
