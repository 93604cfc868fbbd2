/** Another batch of a plant, told by its day where an entry is put right. */
import { wordAt } from '../grammar/rule.js';
import type { Note } from '../note.js';
import type { Piece } from '../pieces/pieces.js';
import { narrowed } from './lots-fitting.js';

/** "That was the Budgie Smoke from 12 September": another batch, told by its day. */
export function lotMeant(
  pieces: readonly Piece[],
  { context }: Note,
): Readonly<Record<string, unknown>> | undefined {
  const [before, last] = [pieces.at(-2), pieces.at(-1)];
  // "The 12 September Budgie Smoke", where such a lot was struck that day.
  const isBefore = before?.is === 'when' && before.struck === true;
  const day = isBefore ? before : last;
  const named = isBefore ? last : before;
  if (day?.is !== 'when' || !(isBefore || /^(?:from|of) /i.test(day.when.words))) return undefined;
  const said = [-3, -4].some((n) => /^(?:was|were|be|been)$/.test(wordAt(pieces, pieces.length + n)));
  if (named?.is !== 'plant' || !said) return undefined;
  const fits = (context?.batches ?? []).filter(({ variety, crop }) =>
    named.plant.variety === undefined ? crop === named.plant.crop : variety === named.plant.variety,
  );
  const [batch, another] = narrowed(fits, { struckOn: day.when });
  if (!batch) return undefined;
  return another ? { ...named.plant } : { variety: batch.variety, batch: batch.label };
}
