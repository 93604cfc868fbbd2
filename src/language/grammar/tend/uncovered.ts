/** Uncovered: "took the fleece off". */
import { type Rule, wordAt } from '../rule.js';
import { bare, COVERINGS, isOtherCloth, leftByOthers, onlyToLook, verb } from './telling.js';

export const uncovered: readonly Rule[] = [
  {
    name: 'took off the cover',
    kind: 'tend',
    head: `take~past|pull~past|whip~past|remove~past|lift~past|peel~past|strip~past off? the|their|all|its|those|my frost|row|garden? ${COVERINGS}`,
    shape: 'object',
    care: 'uncover',
    // Under a lid lifted it is aired, or looked at.
    unless: (p, f, t) =>
      leftByOthers(p, f) ||
      onlyToLook(p, t) ||
      isOtherCloth(p, t - 1) ||
      /^(?:lids?|newspaper|cardboard)$/.test(wordAt(p, t - 1)),
    phrasings: [
      'took the frost cloth off the Salt Harrier',
      'took off the cover',
      'took the cover off the greenhouse',
    ],
  },
  {
    name: 'fleece off <place>',
    kind: 'tend',
    head: 'fleece|covers|cover|dome|domes|bag|bags|netting|bubblewrap|blanket|blankets|sheets|polythene|plastic|hessian|cloth taken|pulled|stripped|removed|whipped|lifted|back? off|from',
    shape: 'object',
    care: 'uncover',
    unless: (p, f, t) =>
      leftByOthers(p, f) ||
      wordAt(p, t) === 'by' ||
      (wordAt(p, t - 1) === 'from' && wordAt(p, t - 2) !== 'removed'),
    phrasings: ['fleece taken off the greenhouse', 'covers removed from the cold frame'],
    mustNot: [
      'lost 4 Salt Harrier, somebody left the dome off',
      'covers pulled off by the wind in the greenhouse',
    ],
  },
  verb('uncover unwrap unfleece', 'uncover', 'uncovered <place>'),
  bare('uncover', 'uncover'),
];
