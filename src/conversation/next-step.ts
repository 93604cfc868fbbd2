/** What comes next for the batches that a note was about, in a line. */
import { isLive } from '../ledger/batch.js';
import type { Posting } from '../ledger/posting.js';
import type { StandingEntry } from '../ledger/ledger.js';
import { nextWords } from '../words/next-step.js';
import { speechOf } from './deeds.js';
import { duesOf } from './looking-ahead.js';
import type { Sitting } from './sitting.js';

/** After these, the grower is told what comes next; after the others nothing new does. */
const telling = new Set<Posting['kind']>(['strike', 'receive', 'check', 'potOn', 'pinch', 'hardenOff']);

/** More batches in one note, and the list of what is due says it better. */
const MOST = 2;

export function whatNext(sitting: Sitting, standing: readonly StandingEntry[]): string[] {
  const labels = new Set(standing.flatMap(({ entry, touched }) => (telling.has(entry.kind) ? touched : [])));
  if (labels.size > MOST) return [];
  return [...labels].flatMap((label) => {
    const batch = sitting.ledger.batches.get(label);
    if (!batch || !isLive(batch)) return [];
    const [next] = duesOf(sitting, batch).filter(({ from }) => from > sitting.today);
    return next ? [nextWords(next, { ...speechOf(sitting), named: labels.size > 1 })] : [];
  });
}
