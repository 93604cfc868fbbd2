/** What frost, heat and drought took: "two froze", "the heat got four". */
import type { Rule } from '../rule.js';
import { counted, needsPlantOrCount } from './counted.js';

export const weather: readonly Rule[] = [
  {
    name: '<count> froze',
    kind: 'loss',
    head: 'freeze~past|frosted',
    shape: 'subject',
    cause: 'frost',
    when: counted,
  },
  {
    name: '<count> dried up',
    kind: 'loss',
    head: 'dry~past|dried up|out',
    shape: 'subject',
    cause: 'drought',
    when: counted,
  },
  {
    name: 'the frost got <count> <plant>',
    kind: 'loss',
    head: 'frost|cold|freeze catch~|nip~|have~|get~|kill~|take~|do~|finish~',
    shape: 'object',
    cause: 'frost',
    when: needsPlantOrCount,
  },
  {
    name: 'the heat got <count> <plant>',
    kind: 'loss',
    head: 'heat|sun|drought|heatwave in? the? <place>? have~|get~|take~|kill~|fry~|cook~|claim~|finish~|do~ off|for?',
    shape: 'object',
    cause: 'drought',
    when: needsPlantOrCount,
  },
];
