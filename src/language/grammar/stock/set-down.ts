/** Young plants told by where they were put: "24 plugs of Salt Harrier, set them under the lights". */
import type { Piece } from '../../pieces/pieces.js';
import type { Rule } from '../rule.js';

const isNewPlant = (piece: Piece): boolean =>
  piece.is === 'plant' && !piece.known && piece.plant.variety !== undefined;

const isYoung = (piece: Piece): boolean =>
  piece.is === 'word' && /^(?:plugs?|liners?|seedlings|starts?)$/.test(piece.text);

const isDeed = (piece: Piece): boolean =>
  piece.is === 'word' && piece.verb !== undefined && piece.text !== 'rooted';

export const setDown: readonly Rule[] = [
  {
    // Of what nobody has there is nothing to carry: it has come.
    name: '<count> plugs of <new plant>, put them in <place>',
    kind: 'receive',
    head: 'put~past|set~past|stand~past|pop~past|stick~past|place~past|tuck~past them|it|em|those',
    shape: 'object',
    when: (p, f, t) =>
      p[0]?.is === 'count' &&
      p.slice(0, f).some(isNewPlant) &&
      p.slice(1, f).some(isYoung) &&
      !p.slice(0, f).some(isDeed) &&
      p.slice(t).some(({ is }) => is === 'place'),
    phrasings: ['24 rooted plugs of Marsh Tiger, set them under the grow lights'],
    mustNot: ['potted 24 plugs of Marsh Tiger, set them under the grow lights'],
  },
];
