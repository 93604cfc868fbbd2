/** What an act leaves out: "everything except the Marble Wren", "the greenhouse bar what is on the sill". */
import { wordAt } from '../../grammar/rule.js';
import type { Piece, PlantWords } from '../../pieces/pieces.js';
import { whichAt } from '../../lots/which-batch.js';
import { deniedCases } from './denied.js';
import { numberOf } from './count-seen.js';
import type { LeftOut, OpenDraft } from './draft.js';
import type { Case, Seen } from './case.js';
import { excepts, exceptsOfAll } from './except-words.js';
import { joins } from './one-plant.js';
import { setPlant } from './plant-cases.js';

type AnySeen = Seen<Piece['is']>;

export const leftOutCases: readonly Case<AnySeen>[] = [
  {
    name: 'all except <plant>',
    phrasings: [
      'Watered everything except the Salt Harrier',
      'Fed all of them apart from Salt Harrier',
      'Watered the greenhouse bar the Tallow Bell',
      'Watered all the fuchsias except the Tallow Bell',
      'Misted all the cuttings but not the Salt Harrier',
    ],
    when: (seen) => seen.piece.is === 'plant' && isLeftOut(seen),
    does: (seen) => {
      if (seen.piece.is === 'plant') leaveOut(seen, { plant: seen.piece.plant });
    },
  },
  {
    name: 'all except <variety> <crop>',
    phrasings: ['Watered everything except the Ember Fox dahlia'],
    when: ({ piece, draft, pieces, at }) => {
      const last = draft.leftOut?.at(-1)?.plant;
      return piece.is === 'plant' && last !== undefined && joins(last, piece.plant, pieces, at);
    },
    does: ({ piece, draft }) => {
      const { leftOut = [] } = draft;
      const plant: PlantWords = { ...leftOut.at(-1)?.plant, ...(piece.is === 'plant' ? piece.plant : {}) };
      draft.leftOut = [...leftOut.slice(0, -1), { plant }];
    },
  },
  {
    // All of the others, and of these all but so many.
    name: 'all except <count> <plant>',
    phrasings: [
      'Everything planted out except two Salt Harrier',
      'Planted out everything bar two Salt Harrier',
    ],
    when: ({ piece, draft, pieces, at }) =>
      piece.is === 'plant' &&
      draft.plant === undefined &&
      draft.quantity?.allBut !== undefined &&
      pieces[at - 1]?.is === 'count' &&
      pieces.slice(0, at).some((other) => other.is === 'count' && other.quantity.whole === 'all'),
    does: ({ piece, draft, told }) => {
      if (piece.is !== 'plant' || !draft.quantity) return;
      const some: OpenDraft = { quantity: draft.quantity };
      setPlant({ draft: some, piece });
      draft.leftOut = [{ plant: piece.plant }];
      draft.quantity = { whole: 'all' };
      told.drafts.push(some);
    },
  },
  {
    name: 'all except <count> <plant> and <count> <plant>',
    phrasings: ['Everything planted out except two Salt Harrier and one Tallow Bell'],
    when: ({ piece, draft, pieces, at, told }) =>
      piece.is === 'plant' &&
      draft.plant === undefined &&
      draft.quantity?.value !== undefined &&
      pieces[at - 1]?.is === 'count' &&
      told.drafts.some(({ leftOut }) => leftOut !== undefined),
    does: ({ piece, draft, told }) => {
      if (piece.is !== 'plant') return;
      setPlant({ draft, piece });
      draft.quantity = { allBut: numberOf(draft.quantity ?? {}) };
      for (const all of told.drafts) if (all.leftOut) all.leftOut = [...all.leftOut, { plant: piece.plant }];
    },
  },
  {
    name: 'all except <plant> and <plant>',
    phrasings: ['Watered everything bar the Salt Harrier and the Tallow Bell'],
    when: (seen) => seen.piece.is === 'plant' && seen.draft.leftOut !== undefined && isListed(seen),
    does: (seen) => {
      if (seen.piece.is === 'plant') leaveOut(seen, { plant: seen.piece.plant });
    },
  },
  {
    name: 'all except what is in <place>',
    phrasings: ['Watered everything except the propagator', 'Fed everything but the ones in the propagator'],
    when: (seen) => seen.piece.is === 'place' && isLeftOut(seen),
    does: (seen) => {
      if (seen.piece.is === 'place') leaveOut(seen, { which: { stands: seen.piece.place } });
    },
  },
  {
    name: 'all except the <month> lot',
    phrasings: ['Watered everything except the March lot'],
    when: (seen) => isLeftOut(seen) && whichAt(seen.pieces, seen.at, seen.clause) !== undefined,
    does: (seen) => {
      const which = whichAt(seen.pieces, seen.at, seen.clause);
      if (which) leaveOut(seen, { which });
    },
  },
  ...deniedCases,
];

function leaveOut({ draft }: AnySeen, out: LeftOut): void {
  draft.leftOut = [...(draft.leftOut ?? []), out];
}

const BETWEEN =
  /^(?:the|my|our|for|those|these|what|what's|whatever|that|that's|which|is|are|was|were|in|on|at|under|by|ones|stuff|things|anything|plants|cuttings|standing|sitting)$/;

/** Behind "except the", "bar what's in the", "apart from", where the act has told of all there is, of a plant or of a place. */
function isLeftOut({ pieces, at, draft, piece }: AnySeen): boolean {
  let before = at - 1;
  while (before > at - 7 && BETWEEN.test(wordAt(pieces, before))) before--;
  const isAll =
    draft.quantity?.whole === 'all' || /^(?:everyone|everybody)$/.test(wordAt(pieces, before - 1));
  const isPart = draft.plant !== undefined || (draft.place ?? draft.fromPlace) !== undefined;
  if (excepts(pieces, before)) return isAll || isPart;
  return (
    isAll && (exceptsOfAll(pieces, before) || (wordAt(pieces, before) === 'not' && piece.is === 'plant'))
  );
}

/** Beside a plant that was left out, in a list with it. */
function isListed({ pieces, at }: AnySeen): boolean {
  let before = at - 1;
  while (/^(?:and|or|nor|the|my|our)$/.test(wordAt(pieces, before)) || isComma(pieces[before])) before--;
  return pieces[before]?.is === 'plant' && before < at - 1;
}

const isComma = (piece: Piece | undefined): boolean => piece?.is === 'break' && piece.mark === ',';
