/** What a potted batch asks for on its way out: pinching, hardening off, planting out. */
import { addDays, type Day, latest, year } from '../calendar/day.js';
import { alive, type Batch, began } from '../ledger/batch.js';
import { aboutBatch } from './about-batch.js';
import type { Due } from './due.js';
import { type Growing, plantingOf, springAfter, staysIndoors } from './season.js';
import type { Site } from './site.js';

interface View {
  readonly today: Day;
  readonly site: Site;
}

const PINCH_WITHIN_DAYS = 7;
/** Later, the plant has branched or grown past it. Common practice, no source. */
const PINCH_WORTH_DAYS = 21;
const HARDEN_WITHIN_DAYS = 5;
const PLANT_OUT_WITHIN_DAYS = 10;

export function growingDues(batch: Batch, growing: Growing | null, view: View): readonly Due[] {
  const potted = pottedSince(batch);
  if (growing === null || potted === null || stillIn(batch) <= 0) return [];
  return [...pinch(batch, potted, growing, view.site), ...goingOut(batch, potted, growing, view)];
}

/** How many grow on towards planting out; cuttings that never rooted are not among them. */
function stillIn(batch: Batch): number {
  const grown = batch.pottedOn > 0 ? batch.pottedOn : batch.rooted > 0 ? batch.rooted : alive(batch);
  return Math.min(grown, alive(batch)) - batch.plantedOut;
}

/** The day on which it was first potted on, or came in as plants in pots; null before that. */
export function pottedSince(batch: Batch): Day | null {
  const first = batch.acts.find(({ kind }) => kind === 'potOn');
  if (first) return first.on;
  const inPots = batch.received !== null && batch.potSize !== null && !batch.potSize.endsWith('cell');
  return inPots || batch.hardeningSince !== null ? began(batch) : null;
}

function pinch(batch: Batch, potted: Day, growing: Growing, site: Site): readonly Due[] {
  const how = growing.crop.pinch;
  if (how === null || batch.pinched > 0 || batch.hardeningSince !== null || batch.plantedOut > 0) return [];
  const grown = addDays(potted, how.daysAfterPottingOn);
  // What stands over winter is pinched when it starts again.
  const from = growing.overwinters ? springAfter(grown, site) : grown;
  return [
    {
      ...aboutBatch(batch, 'pinch', 0),
      count: stillIn(batch),
      from,
      bestBy: addDays(from, PINCH_WITHIN_DAYS),
      tooLateAfter: addDays(from, PINCH_WORTH_DAYS),
      asks: true,
      why: { because: 'grown', pottedOn: potted, pinch: how },
    },
  ];
}

function goingOut(batch: Batch, potted: Day, growing: Growing, view: View): readonly Due[] {
  const { crop } = growing;
  if (staysIndoors(crop)) return [];
  const frost = crop.frostTender ? view.site.spring : null;
  if (batch.hardeningSince === null && batch.plantedOut === 0 && crop.hardenOffDays > 0) {
    const ready = addDays(potted, crop.growOnDays + crop.hardenOffDays);
    const { on, tooLateAfter } = plantingOf(ready, batch, growing, view);
    const from = addDays(on, -crop.hardenOffDays);
    return [
      {
        ...aboutBatch(batch, 'hardenOff', year(on)),
        count: stillIn(batch),
        from,
        bestBy: addDays(from, HARDEN_WITHIN_DAYS),
        tooLateAfter,
        asks: true,
        why: { because: 'plantingNears', plantOutOn: on, frost },
      },
    ];
  }
  const hardened = addDays(batch.hardeningSince ?? addDays(potted, crop.growOnDays), crop.hardenOffDays);
  const { on, tooLateAfter } = plantingOf(latest(hardened, potted), batch, growing, view);
  return [
    {
      ...aboutBatch(batch, 'plantOut', `${year(on)}-${batch.plantedOut}`),
      count: stillIn(batch),
      from: on,
      bestBy: addDays(on, PLANT_OUT_WITHIN_DAYS),
      tooLateAfter,
      asks: true,
      why: { because: 'hardened', since: batch.hardeningSince, frost },
    },
  ];
}
