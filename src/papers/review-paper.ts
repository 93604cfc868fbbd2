/** A year looked back on, as a picture: strike rates by crop, kind of cutting and place. */
import { year as yearOf } from '../calendar/day.js';
import type { Viewpoint } from '../conversation/prompts/looking-ahead.js';
import { rateNodes, rateWeights } from '../horticulture/rooting-grid.js';
import { learnRate, meanRate, type RateBelief } from '../horticulture/strike-rate.js';
import { type Batch, placeOf, rootsKnown } from '../ledger/batch.js';
import type { Ledger } from '../ledger/ledger.js';
import { reviewPicture, type ReviewRow } from '../pictures/review-picture.js';
import { cuttingsWords, reviewCaption, reviewSections } from '../words/paper-words.js';
import type { Paper } from './paper.js';

/** Before any record every rate is as likely: the interval is the records' own. */
const NOTHING_KNOWN: RateBelief = { a: 1, b: 1 };
const NODES = 400;

export async function reviewPaper({ ledger }: Pick<Viewpoint, 'ledger'>, year: number): Promise<Paper> {
  const batches = settledIn(ledger, year);
  const sections = [
    { name: reviewSections.crop, rows: rowsBy(batches, (batch) => batch.crop ?? batch.variety) },
    {
      name: reviewSections.method,
      rows: rowsBy(batches, (batch) => batch.cutting && cuttingsWords(batch.cutting)),
    },
    { name: reviewSections.place, rows: rowsBy(batches, placeStruckIn) },
  ].filter(({ rows }) => rows.length > 0);
  return {
    name: `review-${year}.png`,
    kind: 'picture',
    bytes: await reviewPicture({ year, sections }),
    caption: reviewCaption(year, sections[0]?.rows ?? []),
  };
}

function settledIn(ledger: Ledger, year: number): Batch[] {
  return [...ledger.batches.values()].filter(
    (batch) => batch.struck !== null && yearOf(batch.struck) === year && batch.count > 0 && rootsKnown(batch),
  );
}

/** Where its cuttings were put, not where its plants went. */
function placeStruckIn(batch: Batch): string | null {
  const [first] = batch.acts;
  const struckIn = first?.entry.kind === 'strike' ? first.entry.place : undefined;
  return struckIn ?? placeOf(batch);
}

function rowsBy(batches: readonly Batch[], by: (batch: Batch) => string | null): ReviewRow[] {
  const groups = new Map<string, Batch[]>();
  for (const batch of batches) {
    const name = by(batch);
    if (name !== null) groups.set(name, [...(groups.get(name) ?? []), batch]);
  }
  return [...groups].map(([name, its]) => rowOf(name, its)).sort((a, b) => b.rate - a.rate);
}

function rowOf(name: string, batches: readonly Batch[]): ReviewRow {
  const belief = learnRate(
    NOTHING_KNOWN,
    batches.map(({ count, rooted }) => ({ tried: count, succeeded: rooted })),
  );
  const [low, high] = central80(belief);
  return {
    name,
    struck: batches.reduce((sum, { count }) => sum + count, 0),
    rooted: batches.reduce((sum, { rooted }) => sum + rooted, 0),
    batches: batches.length,
    rate: meanRate(belief),
    low,
    high,
  };
}

/** The rate below which one in ten of the belief lies, and that above which one in ten does. */
function central80({ a, b }: RateBelief): [number, number] {
  const nodes = rateNodes(NODES);
  const weights = rateWeights(nodes, a, b);
  const quantile = (p: number) => {
    let sum = 0;
    return nodes.find((_, index) => (sum += weights[index] ?? 0) >= p) ?? 1;
  };
  return [quantile(0.1), quantile(0.9)];
}
