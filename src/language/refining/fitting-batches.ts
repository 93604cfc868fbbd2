/** Which live batches the words of a note fit. */
import type { EntryKind } from '../../ledger/entry.js';
import { standingAt } from '../../ledger/place-meant.js';
import type { Draft, LeftOut } from '../acts/drafting/draft.js';
import type { KnownBatch, NoteContext } from '../note.js';
import type { PlantWords } from '../pieces/pieces.js';
import { narrowed } from '../lots/lots-fitting.js';

/** Whether both are known, and one name. */
export const isSameName = (a: string | undefined, b: string | undefined): boolean =>
  a !== undefined && b !== undefined && a.toLowerCase() === b.toLowerCase();

/** Live batches of the plant that was said. */
export function fittingBatches(plant: PlantWords, context: NoteContext): readonly KnownBatch[] {
  const batches = context.batches ?? [];
  if (plant.batch !== undefined) return batches.filter(({ label }) => isSameName(label, plant.batch));
  return batches.filter(
    (batch) =>
      (plant.variety === undefined || isSameName(batch.variety, plant.variety)) &&
      (plant.crop === undefined ||
        isSameName(batch.crop, plant.crop) ||
        (batch.crop === undefined && plant.variety !== undefined)),
  );
}

/** Those that are none of what was left out. */
export function without(
  fits: readonly KnownBatch[],
  leftOut: readonly LeftOut[],
  context: NoteContext,
): readonly KnownBatch[] {
  const gone = leftOut.flatMap(({ plant, which }) => {
    const lots = plant ? fittingBatches(plant, context) : fits;
    const meant = which ? narrowed(lots, which) : lots;
    // Words that fit no lot leave none out.
    return plant || meant.length < lots.length ? meant : [];
  });
  return fits.filter((batch) => !gone.includes(batch));
}

/** Kinds whose place is where the plants go, not where they stood. */
const PUTS_SOMEWHERE: ReadonlySet<EntryKind> = new Set(['move', 'plantOut', 'hardenOff']);

/** Those that are singled out by what the note says of the lot, or by the place that it stands in or came from. */
export function singledOut(
  fits: readonly KnownBatch[],
  draft: Draft,
  kind: EntryKind,
): readonly KnownBatch[] {
  if (fits.length < 2) return fits;
  const meant = narrowed(fits, draft.which ?? {});
  if (meant.length < fits.length) return meant;
  const where = draft.fromPlace ?? (PUTS_SOMEWHERE.has(kind) ? undefined : draft.place);
  if (where === undefined) return fits;
  const there = standingAt(fits, ({ place }) => place, where);
  return there.length > 0 ? there : fits;
}
