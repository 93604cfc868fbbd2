/** What comes next for the batches that a note was about, in a line. */
import { isLive } from '../../ledger/batch.js';
import type { Posting } from '../../ledger/posting.js';
import type { StandingEntry } from '../../ledger/ledger.js';
import { frostWarnings } from '../../outlook/due-frost.js';
import { siteOf } from '../../outlook/site.js';
import { nextWords } from '../../words/next-step.js';
import { warningWords } from '../../words/prompts.js';
import { speechOf } from '../batches/deeds.js';
import { duesOf } from './looking-ahead.js';
import type { Sitting } from '../sitting.js';

/** After these, the grower is told what comes next; after the others nothing new does. */
const telling = new Set<Posting['kind']>(['strike', 'receive', 'check', 'potOn', 'pinch', 'hardenOff']);

/** More batches in one note, and the list of what is due says it better. */
const MOST = 2;

export function whatNext(sitting: Sitting, standing: readonly StandingEntry[]): string[] {
  if (standing.some(({ entry }) => entry.kind === 'reading')) return warnings(sitting);
  const labels = new Set(standing.flatMap(({ entry, touched }) => (telling.has(entry.kind) ? touched : [])));
  if (labels.size > MOST) return [];
  return [...labels].flatMap((label) => {
    const batch = sitting.ledger.batches.get(label);
    if (!batch || !isLive(batch)) return [];
    const [next] = duesOf(sitting, batch).filter(({ from }) => from > sitting.today);
    return next ? [nextWords(next, { ...speechOf(sitting), named: labels.size > 1 })] : [];
  });
}

/** A frost does not wait for the next digest: it is warned of in the reply to the reading, once. */
function warnings(sitting: Sitting): string[] {
  const { ledger, settings, today, talk } = sitting;
  const news = frostWarnings(ledger, siteOf(settings), today).filter(
    ({ key }) => !talk.mentioned.includes(key),
  );
  sitting.change({ mentioned: [...talk.mentioned, ...news.map(({ key }) => key)] });
  return news.map((due) => `${warningWords(due)}.`);
}
