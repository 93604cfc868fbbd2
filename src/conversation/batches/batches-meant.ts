/** Which batches an instruction means by their plant. */
import type { Batch } from '../../ledger/batch.js';
import type { Plant } from '../../ledger/entry.js';
import { batchLabelled, matching } from '../../ledger/ledger.js';
import { chooseBatch } from '../answers/choosing.js';
import { dayIn } from '../reading/day-in.js';
import type { Sitting } from '../sitting.js';

export function batchesOf({ ledger }: Sitting, plant: Plant): Batch[] {
  if (plant.batch !== undefined) return [batchLabelled(ledger, plant.batch)].flatMap((each) => each ?? []);
  return matching(ledger, plant);
}

/** The one of the plant's batches that the words single out by day, place or order; all of them where none does. */
export function batchMeant(sitting: Sitting, plant: Plant): Batch[] {
  const batches = batchesOf(sitting, plant);
  if (batches.length < 2) return batches;
  const labels = batches.map(({ label }) => label);
  const day = dayIn(sitting.text, sitting.origin.at, sitting.settings, 'past');
  const one = chooseBatch(sitting.text, labels, sitting.ledger, day);
  return one ? [one] : batches;
}
