/** "Four in each bar the last one, that got five", "four in each, five in the last": a pot that holds another number than the others. */
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';
import { type Case, passOver } from './case.js';
import type { CountSeen } from './count-seen.js';

/** "The last one", "the final pot", "the last": the one past these words, where they stand at `at`; else 0. */
function pastLast(pieces: readonly Piece[], at: number): number {
  const piece = pieces[at];
  // Read as a number, the phrase is two words.
  if (piece?.is === 'count') return piece.quantity.weak === true && piece.to - piece.from === 2 ? at + 1 : 0;
  if (!/^(?:last|final)$/.test(wordAt(pieces, at))) return 0;
  return /^(?:pot|tray|jar|one)$/.test(wordAt(pieces, at + 1)) ? at + 2 : at + 1;
}

const HOLDS = /^(?:that|which|it|has|had|have|got|gets|took|holds|with|is|was|and)$/;

/** Whether what stands straight before `at` tells of the last pot ("the last one, that got"). */
export function isToldOfLast(pieces: readonly Piece[], at: number): boolean {
  let before = at - 1;
  while (pieces[before]?.is === 'break' || HOLDS.test(wordAt(pieces, before))) before--;
  return [before, before - 1].some((from) => pastLast(pieces, from) === before + 1);
}

/** "… in the last one". */
const standsInLast = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at + 1) === 'in' && wordAt(pieces, at + 2) === 'the' && pastLast(pieces, at + 3) > 0;

/** How many each of the others holds: told, or what the number of all comes to. */
const holdsEach = ({ draft: { each, pots, quantity } }: CountSeen): number | undefined =>
  each ?? (quantity?.value !== undefined && pots !== undefined ? quantity.value / pots : undefined);

const isStrike = ({ clause }: CountSeen): boolean => clause.hit?.rule.kind === 'strike';

/** Told as what all the pots come to. */
const isTotal = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:altogether|total|in|cuttings|all)$/.test(wordAt(pieces, at + 1)) ||
  /^(?:that's|is|makes|making|so|total)$/.test(wordAt(pieces, at - 1));

export const lastPotCases: readonly Case<CountSeen>[] = [
  {
    name: 'bar the last one',
    phrasings: ['Took three pots of Salt Harrier, four in each bar the last one'],
    when: (seen) =>
      isStrike(seen) &&
      seen.draft.pots !== undefined &&
      seen.draft.each !== undefined &&
      pastLast(seen.pieces, seen.at) > 0,
    does: passOver,
  },
  {
    name: '<count> in each bar the last one, that got <count>',
    phrasings: [
      'Took three pots of Salt Harrier, four in each bar the last one, that got five',
      'Took three pots of Salt Harrier, four in each and five in the last one',
      'Took three pots of four Salt Harrier, five in the last',
    ],
    when: (seen) =>
      isStrike(seen) &&
      seen.count.value !== undefined &&
      (seen.draft.pots ?? 0) > 1 &&
      Number.isInteger(holdsEach(seen)) &&
      !seen.leads &&
      (isToldOfLast(seen.pieces, seen.at) || standsInLast(seen.pieces, seen.at)),
    does: (seen) => {
      const { draft, count } = seen;
      draft.quantity = {
        value: (holdsEach(seen) ?? 0) * ((draft.pots ?? 1) - 1) + (count.value ?? 0),
      };
    },
  },
  {
    name: '<pots>, <count> in each, the last <count> undipped',
    phrasings: ['Took three pots of Salt Harrier, four in each, the last five had no powder'],
    when: (seen) =>
      isStrike(seen) &&
      seen.draft.pots !== undefined &&
      seen.draft.each !== undefined &&
      seen.draft.quantity === undefined &&
      seen.count.value !== undefined &&
      !seen.leads &&
      seen.count.value !== seen.draft.each * seen.draft.pots &&
      !isTotal(seen.pieces, seen.at),
    does: passOver,
  },
];
