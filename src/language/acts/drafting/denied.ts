/**
 * Plants named beside those that an act was done to, to say that it was not done to them, where more is said of them than
 * `left-undone.ts` takes out of the row: "…, not AR09 which is too small", "… and left these in the greenhouse".
 */
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';
import { type Case, passOver, type Seen } from './case.js';

type AnySeen = Seen<Piece['is']>;

/** Between the denial and the plant. */
const POINTING = /^(?:the|my|our|any|of|those|these|to|with|round|at|on|in|from)$/;
/** What was not done, told of by a verb of no meaning ("didn't do", "never got to", "didn't touch"). */
const DOING = /^(?:do|done|did|touch|touched|get|got|gotten|reach|reached|bother|bothered|include|included)$/;
const NEVER = /^(?:nor|never|didn't|haven't|hasn't|don't|couldn't)$/;
/** Passed by: "… but left these". */
const SPARED = /^(?:left|leaving|skipped|skipping|spared|sparing|no)$/;
const TOLD_BEHIND = /^(?:not|hasn't|haven't|isn't|aren't|wasn't|weren't)$/;

/** "… and left these in the greenhouse": where those stand that were passed by. */
function standsThere(seen: AnySeen): boolean {
  let plant = seen.at - 1;
  while (POINTING.test(wordAt(seen.pieces, plant))) plant--;
  const piece = seen.pieces[plant];
  return seen.piece.is === 'place' && piece?.is === 'plant' && isDenied({ ...seen, piece, at: plant });
}

/** Whether the plant of the number or name at `at` is denied, another being told of. */
function isDenied({ piece, pieces, at, clause, draft }: AnySeen): boolean {
  const plant = piece.is === 'plant' ? at : piece.is === 'count' ? plantOf(pieces, at) : -1;
  if (plant < 0 || plant >= clause.to || draft.leftOut !== undefined) return false;
  const isAlone = draft.plant === undefined;
  let before = at - 1;
  while (POINTING.test(wordAt(pieces, before)) || (piece.is === 'plant' && pieces[before]?.is === 'count'))
    before--;
  if (DOING.test(wordAt(pieces, before))) {
    before--;
    return !isAlone && NEVER.test(wordAt(pieces, before));
  }
  if (!isAlone && SPARED.test(wordAt(pieces, before))) return true;
  if (wordAt(pieces, before) === 'not')
    // "Not these but those".
    return !isAlone || isTurnedTo(pieces.slice(plant + 1, clause.to));
  // "…, but AR09 not yet".
  return (
    !isAlone &&
    /^(?:but|though|although)$/.test(wordAt(pieces, before)) &&
    TOLD_BEHIND.test(wordAt(pieces, plant + 1))
  );
}

/** "… but the Salt Harrier". */
const isTurnedTo = (behind: readonly Piece[]): boolean => {
  const but = behind.findIndex((_, at) => wordAt(behind, at) === 'but');
  return but >= 0 && behind.slice(but).some(({ is }) => is === 'plant');
};

/** The plant that a number leads to, "five of the Salt Harrier"; none is -1. */
function plantOf(pieces: readonly Piece[], at: number): number {
  let next = at + 1;
  while (/^(?:of|the|my|our|those|these)$/.test(wordAt(pieces, next))) next++;
  return pieces[next]?.is === 'plant' ? next : -1;
}

export const deniedCases: readonly Case<AnySeen>[] = [
  {
    name: '<plant>, not <plant>',
    phrasings: [
      'Pinched the Salt Harrier this morning, not the Tallow Bell which is too small',
      'Pinched not the Tallow Bell but the Salt Harrier',
      'Pinched the Salt Harrier and left the Tallow Bell bushing out nicely',
      "Pinched the Salt Harrier, didn't do the Tallow Bell which is too small",
      'Took ten Salt Harrier cuttings, no Tallow Bell',
    ],
    when: (seen) => isDenied(seen) || standsThere(seen),
    does: passOver,
  },
];
