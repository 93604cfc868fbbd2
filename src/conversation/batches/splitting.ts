/** Splits a batch into parts as told: which of them keeps its label, how many are in each, and where they stand. */
import type { Instruction, SplitPart } from '../../language/instructions/instruction.js';
import { alive, type Batch, placeOf } from '../../ledger/batch.js';
import { liveBatches } from '../../ledger/ledger.js';
import { named } from '../../ledger/reach.js';
import { nextLabel } from '../../ledger/label.js';
import type { Posting } from '../../ledger/posting.js';
import { splitAll, splitHow, splitNothing, splitSum } from '../../words/instructions.js';
import { batchMeant } from './batches-meant.js';
import { SPOKEN_OF_MS } from './pointing.js';
import type { Sitting } from '../sitting.js';

interface Sized {
  readonly count: number;
  readonly place?: string | undefined;
  readonly rest: boolean;
}

/** What is to be posted; or what is said where the parts make no sense. */
export function split(
  sitting: Sitting,
  { plant, parts, of }: Extract<Instruction, { kind: 'split' }>,
): Posting | string {
  const [batch, another] = named(plant) ? batchMeant(sitting, plant) : spokenOf(sitting);
  if (!batch || another) return splitNothing;
  const there = alive(batch);
  const sized = sizedOf(parts, there);
  if (!sized || sized.length === 0) return splitHow;
  const sum = sized.reduce((total, { count }) => total + count, 0);
  if (sum > there || (sum < there && of === sized.length)) return splitSum(batch.label, there, sum);
  const kept = sum === there ? keptOf(sized, batch) : undefined;
  const parted = sized.filter((part) => part !== kept);
  if (parted.length === 0) return splitAll(batch.label, there);
  const labels: string[] = [];
  while (labels.length < parted.length)
    labels.push(
      nextLabel(
        { ...sitting.ledger, labels: new Set([...sitting.ledger.labels, ...labels]) },
        batch.variety,
        batch.crop,
      ),
    );
  const here = placeOf(batch);
  const elsewhere = (place: string | undefined) =>
    place !== undefined && place.toLowerCase() !== here?.toLowerCase() ? { place } : {};
  return {
    kind: 'split',
    batch: batch.label,
    parts: parted.map(({ count, place }, at) => ({ label: labels[at] ?? '', count, ...elsewhere(place) })),
    ...elsewhere(kept?.place),
    date: sitting.today,
  };
}

/** Of no plant: the only lot there is, or the one that was just told of. */
function spokenOf({ ledger, origin, world }: Sitting): readonly Batch[] {
  const live = liveBatches(ledger);
  if (live.length < 2) return live;
  const last = ledger.standing.at(-1);
  const isJust = last?.journal.source?.chat === world.chat && origin.at - last.journal.at <= SPOKEN_OF_MS;
  return isJust ? live.filter(({ label }) => last.touched.includes(label)) : [];
}

/** Each part as a number; null where a share is no whole number, or nothing is left for the rest. */
function sizedOf(parts: readonly SplitPart[], there: number): readonly Sized[] | null {
  const counts = parts.map(({ count, share }) => count ?? (share ? (there * share[0]) / share[1] : 0));
  const left = there - counts.reduce((sum, count) => sum + count, 0);
  const sized = parts.map(({ rest = false, place }, at) => ({
    count: rest ? left : (counts[at] ?? 0),
    place,
    rest,
  }));
  const isWhole = ({ count }: Sized) => Number.isInteger(count) && count > 0;
  return sized.every(isWhole) ? sized : null;
}

/** The rest, or those that stay where the batch stands; else the first. */
function keptOf(parts: readonly Sized[], batch: Batch): Sized | undefined {
  const here = placeOf(batch)?.toLowerCase();
  const staying = parts.filter(({ place }) => place === undefined || place.toLowerCase() === here);
  return parts.find(({ rest }) => rest) ?? staying[0] ?? parts[0];
}
