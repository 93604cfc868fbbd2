/** Plants that went to new homes: "found a home for three", "all gone to the fete", "left on Joyce's step". */
import { isSomeones } from '../other-people.js';
import type { Piece } from '../../pieces.js';
import { closeBehind, endsAt, precedes, type Rule, wordAt } from '../rule.js';

/** "On Joyce's step", "off at Joyce's". */
function isSomebodys(pieces: readonly Piece[], at: number): boolean {
  const piece = pieces[at];
  if (piece?.is === 'place')
    return /^\w+'s (?:front |back )?(?:step|doorstep|porch|gate|drive)$/.test(piece.place);
  const isEnd = endsAt(pieces, at + 1);
  return isSomeones(wordAt(pieces, at)) && isEnd && /^(?:at|on|round)$/.test(wordAt(pieces, at - 1));
}

export const newHomes: readonly Rule[] = [
  {
    name: 'found a home for <count> <plant>',
    kind: 'dispatch',
    head: 'find~past a|another? new|good? home|homes for',
    shape: 'object',
    how: 'given',
    when: (p, _f, t) => closeBehind(p, t, 'plant'),
    unless: (p) => p.some(({ is }) => is === 'place'),
    phrasings: ['found a new home for three Salt Harrier', 'found homes for six Salt Harrier'],
    mustNot: [
      'found a home for the Salt Harrier on the windowsill',
      'must find a home for three Salt Harrier',
    ],
  },
  {
    name: '<count> <plant> gone, all to <recipient>',
    kind: 'dispatch',
    head: 'go~past|gone <break>? <count> to|with',
    shape: 'subject',
    when: (p, f, t) => precedes(p, f, 4, 'count', 'plant') && p[t]?.is !== 'place',
    unless: (p, _f, t) => /^(?:slugs?|rot|frost|mould|mush|seed|mice|botrytis|damping)$/.test(wordAt(p, t)),
    phrasings: ['six Salt Harrier gone, all to the church plant sale'],
    mustNot: ['six Salt Harrier gone, all to slugs', 'six Salt Harrier gone, all rotten'],
  },
  {
    name: "left <count> <plant> on <someone>'s step",
    kind: 'dispatch',
    head: 'leave~past|drop~past|put~ .. on|off|at|round at|on?',
    shape: 'object',
    how: 'given',
    when: (p, f, t) =>
      p.slice(f, t).some(({ is }) => is === 'count') &&
      p.slice(f, t).some(({ is }) => is === 'plant') &&
      isSomebodys(p, t),
    phrasings: ["left two Salt Harrier on Joyce's step", "dropped four Salt Harrier off at Joyce's"],
    mustNot: ["left two Salt Harrier on Joyce's list", "left my gloves at Joyce's, two Salt Harrier rooted"],
  },
];
