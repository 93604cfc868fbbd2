/** The last pots of a season, in which plants flower: "moved into finals". */
import { endsAt, precedes, type Rule, wordAt } from '../rule.js';
import { aboutCuttings } from './into-size.js';
import { INTO_POTS, KNOCKED_INTO_POTS } from './verbs.js';

export const finals: readonly Rule[] = [
  {
    name: 'moved <plant> into finals',
    kind: 'potOn',
    head: `${INTO_POTS}|${KNOCKED_INTO_POTS} .. into|to their|its|the? finals|final? pots?`,
    shape: 'object',
    when: (p, f, t) =>
      p.slice(f, t).some((piece) => piece.is === 'word' && /^finals?$/.test(piece.text)) &&
      (wordAt(p, t - 1) !== 'final' || endsAt(p, t)),
    unless: aboutCuttings,
    phrasings: ['moved into finals: 8 Salt Harrier', 'moved the Salt Harrier into their final pots'],
  },
  {
    name: '<plant> into finals',
    kind: 'potOn',
    head: 'into|in their|its? finals|final pots?',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 3, 'plant') &&
      p.slice(f, t).some((piece) => piece.is === 'word' && /^finals?$/.test(piece.text)) &&
      // "In their final home": planted.
      (wordAt(p, t - 1) !== 'final' || endsAt(p, t)),
    phrasings: ['Salt Harrier into finals', 'Salt Harrier into their final pots'],
    mustNot: ['Salt Harrier into the county finals', 'eight Salt Harrier in their final positions'],
  },
];
