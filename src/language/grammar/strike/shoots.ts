/** Shoots and tips told with no verb, by what they were put into. */
import { bareCuttings } from './bare-cuttings.js';
import { type Rule, wordAt } from '../rule.js';

export const shoots: readonly Rule[] = [
  {
    // Shoots by themselves may be seen on a plant: only with what they were put into.
    name: '<count> <plant>, soft shoots, <pots>',
    kind: 'strike',
    head: 'shoots|sideshoots|tips|tops|stems',
    shape: 'subject',
    faint: true,
    when: (p, f) =>
      bareCuttings(p, f) &&
      !/^(?:on|off|of|from)$/.test(wordAt(p, f + 1)) &&
      p.slice(f).some(({ is }) => is === 'pots' || is === 'size' || is === 'medium' || is === 'place') &&
      !p.some(
        (piece) =>
          piece.is === 'word' && /^(?:wilted|wilting|limp|black|brown|eaten|new|showing)$/.test(piece.text),
      ),
    phrasings: [
      'Salt Harrier x 6, non-flowering shoots, 3in pot, perlite, propagator',
      'Salt Harrier, half a dozen soft tips, popped in the propagator with the bottom heat on',
    ],
    mustNot: [
      'Salt Harrier, six new shoots showing in the propagator',
      'six shoots on the Salt Harrier in the propagator',
    ],
  },
];
