/** Plants that went to the beasts of the house: "the runt thrown to the hens", "fed two to the goats". */
import { DUDS } from '../../pieces/duds.js';
import { follows, precedes, type Rule, wordAt } from '../rule.js';

const BEASTS =
  'hens|chickens|chooks|ducks|geese|goat|goats|pig|pigs|rabbit|rabbits|guinea|tortoise|worms|wormery|sheep|donkey|pony|horses|cow|cows';

export const fedTo: readonly Rule[] = [
  {
    name: '<count> <plant> thrown to the hens',
    kind: 'loss',
    head: `feed~past|throw~past|chuck~past|toss~past|give~past|sling~past|lob~past .. to the|our|my|next? ${BEASTS}`,
    shape: 'object',
    cause: 'other',
    when: (p, f, t) =>
      (follows(p, f, 'plant', 'count') || precedes(p, f, 8, 'plant', 'count')) &&
      wordAt(p, f + 1) !== 'up' &&
      !p
        .slice(f + 1, t)
        .some((piece) => piece.is === 'break' || (piece.is === 'word' && piece.verb?.form === 'past')),
    phrasings: [
      'threw two Salt Harrier to the hens',
      'six Salt Harrier potted up and the one runt fed to the goats',
    ],
    mustNot: ['fed the Salt Harrier, then went to the hens', 'threw the scraps to the hens'],
  },
  {
    name: '<count> <plant> went to the hens',
    kind: 'loss',
    head: `go~past|gone to the|our|my ${BEASTS}`,
    shape: 'subject',
    cause: 'other',
    when: (p, f) =>
      !/^(?:then|and|i|we|he|she|so)$/.test(wordAt(p, f - 1)) &&
      (precedes(p, f, 6, 'plant', 'count') || DUDS.test(wordAt(p, f - 1))),
    phrasings: ['six Salt Harrier potted on and the two runts went to the chickens'],
    mustNot: ['went to the chickens'],
  },
];
