/** Rooted cuttings told as out of the water they rooted in, or as all potted. */
import type { Piece } from '../../pieces/pieces.js';
import { precedes, type Rule, wordAt } from '../rule.js';

const inSoil = (pieces: readonly Piece[], at: number): boolean => {
  const piece = pieces[at];
  return piece?.is === 'medium' && /\b(?:soil|compost|dirt|earth|mix)$/.test(piece.medium);
};

/** Known plants, how many, and no deed. */
const isKnownAlone = (pieces: readonly Piece[]): boolean =>
  pieces.some((piece) => piece.is === 'plant' && piece.known) &&
  pieces.every(
    (piece) =>
      (piece.is === 'plant' && piece.known) ||
      (piece.is === 'count' && piece.quantity.more === undefined) ||
      (piece.is === 'word' && /^(?:the|my|of|are|is|all|and|both|ok|so|got|have|i|i've)$/.test(piece.text)),
  );

const isSetOff = (pieces: readonly Piece[], at: number): boolean =>
  pieces[at] === undefined || pieces[at]?.is === 'break';

export const outOfWater: readonly Rule[] = [
  {
    name: 'moved <plant> from water to soil',
    kind: 'potOn',
    head: 'move~past|go~past|put~past|shift~past|transplant~past|transfer~past|pop~past|take~past|get~past .. from|out of? the|their? water|<medium> into|to|and in|into? soil|compost|<medium>',
    shape: 'object',
    when: (p, f, t) =>
      (p.slice(f, t).some(({ is }) => is === 'plant' || is === 'count') || precedes(p, f, 4, 'plant')) &&
      wordAt(p, t - 1) !== 'water',
    phrasings: ['moved Salt Harrier from water to soil', 'three Salt Harrier went from water into compost'],
    mustNot: ['moved the compost from water butt to soil'],
  },
  {
    // Of a plant that is known: it stood in something else before, or it would be no news.
    name: '<count> <plant> in soil now',
    kind: 'potOn',
    head: 'in|into <medium> now',
    shape: 'subject',
    when: (p, f, t) => inSoil(p, f + 1) && isKnownAlone(p.slice(0, f)) && isSetOff(p, t),
    phrasings: ['4 Salt Harrier in soil now', 'the Salt Harrier are in compost now, one pot'],
    mustNot: [
      '4 Salt Harrier in water now',
      '4 Marsh Tiger dahlia in soil now',
      'took 4 Salt Harrier, in soil now',
    ],
  },
  {
    name: '<plant> now in soil',
    kind: 'potOn',
    head: 'now in|into <medium>',
    shape: 'subject',
    when: (p, f, t) => inSoil(p, t - 1) && isKnownAlone(p.slice(0, f)) && isSetOff(p, t),
    phrasings: ['4 Salt Harrier now in soil'],
    mustNot: ['4 Salt Harrier now in water'],
  },
  {
    name: '<plant> potting complete',
    kind: 'potOn',
    head: 'potting on|up? all? complete|completed|done|finished',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 3, 'plant'),
    phrasings: ['Salt Harrier potting complete, 38 finished'],
    mustNot: ['potting compost done, Salt Harrier next'],
  },
];
