/** A slot said once, before or with the last of several plants, belongs to all of them. */
import type { Draft } from './draft.js';
import type { PlantWords } from '../../pieces/pieces.js';
import type { ToldSoFar } from './told-so-far.js';

/** What is told of all plants alike; a number of pots is told of one. */
const SHARED = [
  'size',
  'place',
  'fromPlace',
  'medium',
  'cutting',
  'hormone',
  'cause',
  'when',
  'to',
  'celsius',
] as const;

/** The drafts with what they share: what was said before all of them, or with the last; a day belongs to all wherever it was said. */
export function shareSlots({ drafts, saidWith, ahead }: ToldSoFar): readonly Draft[] {
  const kept = drafts.filter(
    (draft, n) => n === 0 || draft.plant !== undefined || draft.quantity !== undefined,
  );
  if (kept.length < 2) return kept;
  if (drafts[0]?.quantity?.both) delete drafts[0].quantity;
  for (const slot of SHARED) {
    const [said, again] = saidWith[slot] ?? [];
    if (said === undefined || again !== undefined) continue;
    // "Moved everything to the frame except two Salt Harrier".
    const ofAll = drafts[said]?.leftOut !== undefined;
    if (said !== drafts.length - 1 && slot !== 'when' && !ahead.has(slot) && !ofAll) continue;
    const value = drafts[said]?.[slot];
    for (const draft of kept) if (draft[slot] === undefined) (draft as Record<string, unknown>)[slot] = value;
  }
  shareCrop(kept);
  return kept;
}

/** "Three Salt Harrier and two Tallow Bell fuchsia cuttings": the crop told last is also that of new names before it. */
function shareCrop(drafts: readonly Draft[]): void {
  const last = drafts.at(-1);
  const { crop, variety } = last?.plant ?? {};
  // "… and two fuchsia Tallow Bell": that crop came first, and is of the one.
  const cropFirst = last?.known === true && last.ofCrop === undefined;
  if (crop === undefined || variety === undefined || cropFirst) return;
  for (const draft of drafts)
    if (draft.plant?.variety !== undefined && draft.plant.crop === undefined && draft.known === false)
      (draft as { plant?: PlantWords }).plant = { ...draft.plant, crop };
}
