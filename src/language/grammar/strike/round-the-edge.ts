/** Where in a pot cuttings are put. */
import type { Piece } from '../../pieces/pieces.js';
import { CONTAINERS, EDGES } from '../../pieces/sizes.js';
import { endsAt, wordAt } from '../rule.js';

/** Round the edge of a pot: no path's, no pond's. */
export const isRound = (pieces: readonly Piece[], at: number): boolean => {
  if (!/^(?:a?round|along|by|at)$/.test(wordAt(pieces, at))) return false;
  // "Round a 15cm clay pot".
  if (
    /^a?round$/.test(wordAt(pieces, at)) &&
    (pieces[at + 1]?.is === 'pots' ||
      (/^(?:a|the|one)$/.test(wordAt(pieces, at + 1)) && pieces[at + 2]?.is === 'size'))
  )
    return true;
  const edge = wordAt(pieces, at + 1) === 'the' ? at + 2 : at + 1;
  if (!EDGES.test(wordAt(pieces, edge))) return false;
  let of = edge + 1;
  if (wordAt(pieces, of) !== 'of') return endsAt(pieces, of);
  while (/^(?:of|a|an|the|my|one|same|big|small|clay|deep|square|each)$/.test(wordAt(pieces, of))) of++;
  return (
    pieces[of]?.is === 'pots' ||
    pieces[of]?.is === 'size' ||
    (pieces[of]?.is === 'count' && pieces[of + 1]?.is === 'size') ||
    CONTAINERS.has(wordAt(pieces, of))
  );
};
