/** What pests did, told with no more than its verb: "slug in the propagator! ate two of the Salt Harrier". */
import type { Piece } from '../../pieces/pieces.js';
import { type Rule, wordAt } from '../rule.js';
import { PESTS } from './pests.js';

/** A pest is the last of whom something was told before. */
const isPestTold = (pieces: readonly Piece[], from: number): boolean => {
  const told = pieces
    .slice(0, from)
    .findLast(
      (piece, at) =>
        piece.is === 'word' &&
        (PESTS.includes(piece.text) || /^(?:i|we|he|she|went)$/.test(wordAt(pieces, at))),
    );
  return told?.is === 'word' && PESTS.includes(told.text);
};

/** "Two Salt Harrier", "two of the Salt Harrier". */
function isOfVariety(pieces: readonly Piece[], from: number): boolean {
  let at = from + 1;
  while (/^(?:of|the|my)$/.test(wordAt(pieces, at))) at++;
  const plant = pieces[at];
  return pieces[from]?.is === 'count' && plant?.is === 'plant' && plant.plant.variety !== undefined;
}

export const ate: readonly Rule[] = [
  {
    // Nobody eats their own fuchsias; fruit is left alone.
    name: '<pest> in <place>! ate <count> <plant>',
    kind: 'loss',
    head: 'eat~past|munch~past|scoff~past|devour~past',
    shape: 'object',
    cause: 'pest',
    when: (p, f, t) =>
      (f === 0 || /^(?:break|place)$/.test(p[f - 1]?.is ?? '')) &&
      isOfVariety(p, t) &&
      (f === 0 || isPestTold(p, f)),
    phrasings: [
      'slug in the propagator ate two of the Salt Harrier',
      'slug in the propagator! ate two of the Salt Harrier',
      'snails. munched four Salt Harrier',
    ],
    mustNot: ['came in. ate two rolls by the Salt Harrier', 'went in, ate two of the fuchsia berries'],
  },
];
