/** Rooted cuttings told as out of the water they rooted in, or as all potted. */
import { precedes, type Rule, wordAt } from '../rule.js';

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
    name: '<plant> potting complete',
    kind: 'potOn',
    head: 'potting on|up? all? complete|completed|done|finished',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 3, 'plant'),
    phrasings: ['Salt Harrier potting complete, 38 finished'],
    mustNot: ['potting compost done, Salt Harrier next'],
  },
];
