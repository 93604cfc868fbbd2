/** Captions of pictures and papers: in words what they show. */
import type { Day } from '../calendar/day.js';
import type { Batch } from '../ledger/batch.js';
import type { CuttingType } from '../ledger/entry.js';
import { chanceWords, percent, shortDay } from './picture-words.js';
import { cuttingWords } from './plants.js';
import { dateWords, listWords, many, type Speech } from './speech.js';

export const reviewSections = { crop: 'by crop', method: 'by kind of cutting', place: 'by place' } as const;

export function cuttingsWords(cutting: CuttingType): string {
  return `${cuttingWords(cutting)}s`;
}

export interface SeasonShown {
  readonly batches: number;
  readonly plants: number;
  readonly plantOutOn: Day | null;
  readonly targets: readonly { name: string; wanted: number; by: Day | null; chance: number | null }[];
}

export function seasonCaption({ batches, plants, plantOutOn, targets }: SeasonShown): string {
  const frost =
    plantOutOn === null
      ? ''
      : ` Tender plants out from ${shortDay(plantOutOn)}: a later frost comes one year in ten.`;
  const wanted = targets.map(({ name, wanted, by, chance }) => {
    const until = by === null ? '' : ` by ${shortDay(by)}`;
    return `${wanted} ${name}${until}${chance === null ? '' : `: ${chanceWords(chance)}`}`;
  });
  const aims = wanted.length === 0 ? '' : ` Wanted: ${wanted.join('; ')}.`;
  return `${many(plants, 'plant')} alive in ${many(batches, 'batch', 'batches')}.${frost}${aims}`;
}

export function rootingCaption({
  label,
  name,
  count,
  checks,
  range,
}: {
  readonly label: string;
  readonly name: string;
  readonly count: number;
  readonly checks: readonly { readonly day: Day; readonly rooted: number }[];
  readonly range: { readonly p10: Day; readonly p90: Day } | null;
}): string {
  const last = checks.at(-1);
  const seen =
    last === undefined ? 'Not looked at yet' : `${last.rooted} of ${count} rooted by ${shortDay(last.day)}`;
  const ahead =
    range === null
      ? ''
      : ` Half of those likely to root are there between ${shortDay(range.p10)} and ${shortDay(range.p90)}, 4 times in 5.`;
  return `${label} ${name}. ${seen}.${ahead}`;
}

export function reviewCaption(
  year: number,
  crops: readonly { name: string; rooted: number; struck: number }[],
): string {
  if (crops.length === 0) return `No batch of ${year} has been checked for roots.`;
  const rates = crops
    .slice(0, 8)
    .map(({ name, rooted, struck }) => `${name} ${rooted} of ${struck} (${percent(rooted / struck)})`);
  return `What rooted in ${year}: ${listWords(rates)}. The longer a bar, the less the records can say.`;
}

/** "dahlia · struck 2 Mar 2026 · 12". */
export function labelDetail(batch: Batch, living: number, speech: Speech): string {
  const far = { ...speech, today: '1000-01-01' as Day };
  const began = batch.struck !== null ? `struck ${dateWords(batch.struck, far)}` : batch.received !== null ? `came in ${dateWords(batch.received, far)}` : ''; // prettier-ignore
  const crop = batch.variety === null ? '' : (batch.crop ?? '');
  // A narrow label breaks the line between the parts, not within a date.
  return [crop, began.replaceAll(' ', '\u00A0'), String(living)].filter((part) => part !== '').join(' · ');
}

export function labelCaption(count: number, sheet: string, blank: boolean): string {
  return `${many(count, blank ? 'blank label' : 'label')} for ${sheet} paper. Print at 100 %, without fitting to the page.`;
}

export function missingLettersWords(
  missing: readonly { label: string; letters: readonly string[] }[],
): string {
  const which = missing.slice(0, 5).map(({ label, letters }) => `${label}: ${letters.join(' ')}`);
  return `I have no font for some letters, so nothing was printed: ${which.join('; ')}. Whoever runs me can name a folder of fonts: npm run -s draw -- labels OUT.pdf --fonts FOLDER.`;
}

export function calendarCaption(count: number): string {
  return count === 0
    ? 'Nothing is due or coming: the calendar is empty.'
    : `${many(count, 'thing')} due or coming, as all-day entries.`;
}

export const labelsNothing =
  'No live batch to print a label for. Note some cuttings first, or ask for blank labels.';
export const nothingToDraw = 'There is nothing to draw yet: tell me of some cuttings first.';
export const noSuchBatch = 'I know no batch of that name.';
