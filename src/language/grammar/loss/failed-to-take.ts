/** Cuttings of which nothing came, as a letter says it: "three did not take", "four came to nothing", "went the way of all flesh". */
import { endsAt, precedes, type Rule, wordAt } from '../rule.js';
import { cameToNothing } from './to-nothing.js';

export const failedToTake: readonly Rule[] = [
  {
    name: '<count> <plant> did not take',
    kind: 'loss',
    head: "didn't|not|never take|took",
    shape: 'subject',
    // "Three did not take long": how long; "the Salt Harrier have not taken yet" may come to it.
    when: (p, f, t) => precedes(p, f, 6, 'count') && precedes(p, f, 6, 'plant') && endsAt(p, t),
    unless: (p, f) =>
      [1, 2].some((n) => /^(?:i|we|he|she|you|they|do|does|would|could)$/.test(wordAt(p, f - n))),
    phrasings: ['three of the Salt Harrier did not take', 'four Salt Harrier never took'],
    mustNot: [
      'three of the Salt Harrier did not take long to root',
      'three of the Salt Harrier have not taken yet',
      'I did not take three Salt Harrier',
      'three Salt Harrier that I never took',
      'four of the Salt Harrier we did not take',
    ],
  },
  {
    name: '<count> <plant> came to nothing',
    kind: 'loss',
    head: 'came|come to',
    shape: 'subject',
    when: (p, f, t) => precedes(p, f, 6, 'plant') && precedes(p, f, 6, 'count') && cameToNothing(p, t),
    phrasings: ['four of the Salt Harrier came to nothing', 'four Salt Harrier have come to nothing'],
    mustNot: ['four of the Salt Harrier came to Ines', 'my plans for four Salt Harrier came to nothing'],
    unless: (p, f) =>
      p.slice(0, f).some((_, n) => /^(?:plans?|hopes?|offers?|talks?|ideas?|orders?)$/.test(wordAt(p, n))),
  },
  {
    name: '<count> <plant> went the way of all flesh',
    kind: 'loss',
    head: 'go~past|went|gone the way',
    shape: 'subject',
    when: (p, f, t) => precedes(p, f, 6, 'count') && wordAt(p, t) === 'of',
    phrasings: [
      'three Salt Harrier went the way of all flesh',
      'two Salt Harrier have gone the way of the others',
    ],
    mustNot: ['three Salt Harrier went all the way to Ines'],
  },
];
