/** How many of those struck rooted, by crop, kind of cutting and place, from batches whose roots were looked at. */
import { type Batch, rootsKnown } from '../../ledger/batch.js';
import { cuttingWords } from '../../words/plants.js';
import type { RateRow } from '../../words/question-answers.js';

export function rates(batches: readonly Batch[]): RateRow[] {
  const known = batches.filter((batch) => batch.struck !== null && rootsKnown(batch) && batch.count > 0);
  return [
    ...grouped(known, (batch) => batch.crop ?? batch.variety),
    ...grouped(known, (batch) => (batch.cutting === null ? null : `${cuttingWords(batch.cutting)}s`)),
    ...grouped(known, struckAt),
  ];
}

/** Where it was put to root, wherever it stands now. */
function struckAt({ acts }: Batch): string | null {
  const begun = acts.find(({ entry }) => entry.kind === 'strike')?.entry;
  return begun?.kind === 'strike' ? (begun.place ?? null) : null;
}

function grouped(batches: readonly Batch[], by: (batch: Batch) => string | null): RateRow[] {
  const rows = new Map<string, RateRow>();
  for (const batch of batches) {
    const of = by(batch);
    if (of === null) continue;
    const row = rows.get(of) ?? { of, struck: 0, rooted: 0, batches: 0 };
    rows.set(of, {
      of,
      struck: row.struck + batch.count,
      rooted: row.rooted + batch.rooted,
      batches: row.batches + 1,
    });
  }
  return [...rows.values()];
}
