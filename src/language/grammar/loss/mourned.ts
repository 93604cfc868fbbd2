/** Plants that died, in the words of obituaries: "gone to the great compost heap in the sky". */
import { precedes, type Rule, wordAt } from '../rule.js';

export const mourned: readonly Rule[] = [
  {
    name: '<count> snuffed it',
    kind: 'loss',
    head: 'snuff~|pegged|cark~ it|out',
    shape: 'subject',
    phrasings: ['five snuffed it', 'five carked it'],
  },
  {
    name: '<count> gone to the great compost heap in the sky',
    kind: 'loss',
    head: 'go~past|gone to|off the|that|some great|big .. in the sky',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 6, 'count'),
    phrasings: [
      'two Salt Harrier have gone to the great greenhouse in the sky',
      'three of the Salt Harrier have gone to that big greenhouse in the sky',
    ],
    mustNot: ['two Salt Harrier have gone to the shed under a great big sky'],
  },
  {
    name: '<count> went to meet their maker',
    kind: 'loss',
    head: 'go~past|gone|departed|shuffled to|off? meet|this|glory their|its|mortal|life? maker|coil|life?',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 6, 'count'),
    unless: (p, _f, t) => !/^(?:maker|coil|life|glory)$/.test(wordAt(p, t - 1)),
    phrasings: [
      'two Salt Harrier went to meet their maker',
      'three Salt Harrier shuffled off this mortal coil',
    ],
    mustNot: ['two Salt Harrier have gone to meet Doreen'],
  },
];
