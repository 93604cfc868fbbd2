/** "7 of the older Salt Harrier and 4 of the younger": a second lot of the plant that an act has just told of. */
import { wordAt } from '../../grammar/rule.js';
import type { Seen } from './case.js';
import type { OpenDraft } from './draft.js';
import type { Piece } from '../../pieces/pieces.js';
import type { ToldSoFar } from './told-so-far.js';
import { type WhichBatch, whichAt } from '../../lots/which-batch.js';

/** Whether words tell of another lot than those before did, by the same: by its day, its place, its age. */
export function isAnotherLot(before: WhichBatch | undefined, which: WhichBatch): boolean {
  return (
    before !== undefined &&
    (['struckOn', 'stands', 'month', 'age', 'holds', 'size', 'pots'] as const).some(
      (by) => before[by] !== undefined && which[by] !== undefined && !isSame(before[by], which[by]),
    )
  );
}

const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

/** Whether a number is of another lot, which is told straight behind it. */
export function countsAnotherLot({ pieces, at, clause, draft }: Seen<Piece['is']>): boolean {
  let next = at + 1;
  while (/^(?:of|the|my|our|from|those|ones|lot|batch)$/.test(wordAt(pieces, next))) next++;
  if (next >= clause.to) return false;
  let stands = at + 1;
  while (/^(?:in|on|at|under|the|my)$/.test(wordAt(pieces, stands))) stands++;
  const there = pieces[stands];
  // "Lost 2 of those in the greenhouse and 1 in the porch".
  if (there?.is === 'place' && draft.place !== undefined && STAYS.test(clause.hit?.rule.kind ?? ''))
    return there.place !== draft.place;
  if (draft.which === undefined) return false;
  const which = whichAt(pieces, next, clause);
  return which !== undefined && !isSame({ ...draft.which, ...which }, draft.which);
}

/** What is done to plants where they stand. */
const STAYS = /^(?:check|loss|pinch|potOn)$/;

/** "1 of the first lot and 2 of the second lot of Salt Harrier": the plant is told with the last. */
export function sharePlantOfLots(drafts: readonly OpenDraft[]): void {
  const last = drafts.at(-1);
  if (last?.which === undefined || last.plant === undefined) return;
  const { plant, known, ofCrop } = last;
  for (const draft of drafts)
    if (draft.plant === undefined && draft.which !== undefined)
      Object.assign(draft, { plant, known, ...(ofCrop === undefined ? {} : { ofCrop }) });
}

/** The draft of a lot of the same plant, told next. */
export function nextLot({ drafts }: ToldSoFar, { plant, known, ofCrop }: OpenDraft): OpenDraft {
  const next: OpenDraft = {
    ...(plant === undefined ? {} : { plant }),
    ...(known === undefined ? {} : { known }),
    ...(ofCrop === undefined ? {} : { ofCrop }),
  };
  drafts.push(next);
  return next;
}
