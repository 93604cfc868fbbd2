/** Tubers and plants that are put by for the winter: "stored the tubers in the garage", "put them to bed in the shed". */
import type { Piece } from '../../pieces/pieces.js';
import { garden } from '../plant-out/quarters.js';
import { anyStock, isPutBy } from '../stock/kinds-of-plant.js';
import { type Rule, wordAt } from '../rule.js';

const intoPlace = (pieces: readonly Piece[], from: number): boolean =>
  pieces
    .slice(from)
    .some((piece) => piece.is === 'place' && /^(?:to|into|onto|in|on|under|at)$/.test(piece.prep ?? ''));

export const putBy: readonly Rule[] = [
  {
    name: 'stored <plant> in <place>',
    kind: 'move',
    head: 'hung|stored|stashed|overwintered|packed|bedded|stowed up|away|down?',
    shape: 'object',
    when: (p, f, t) =>
      p.some(({ is }) => is === 'plant') &&
      (/^(?:stored|overwintered)$/.test(wordAt(p, f)) ||
        (anyStock(p) && (wordAt(p, f) === 'hung' || isPutBy(p)))) &&
      intoPlace(p, t),
    unless: (p, f, t) => /^(?:is|are|be|being|i've|we've)$/.test(wordAt(p, f - 1)) || garden(p, f, t),
    phrasings: [
      'stored the Salt Harrier tubers in the garage',
      'packed 6 Salt Harrier tubers in sand in the garage',
      'Salt Harrier tubers up out of the ground and hung in the garage',
      'Salt Harrier tubers dug up, cleaned off and stored in the garage',
      'bedded the Salt Harrier tubers down in dry sand in the garage',
    ],
    mustNot: [
      'the Salt Harrier tubers are stored in the garage',
      'packed 6 Salt Harrier in a box in the porch',
    ],
  },
  {
    name: 'put <plant> to bed in <place>',
    kind: 'move',
    head: 'put~past|tuck~past .. to bed',
    shape: 'object',
    when: (p, _f, t) => p.slice(0, t).some(({ is }) => is === 'plant') && intoPlace(p, t),
    phrasings: ['put the Salt Harrier to bed in the garage'],
    mustNot: ['put the kids to bed in the porch'],
  },
];
