/** Plants told from the side of whoever was given them: "Doreen was given two", "the school got sold six". */
import type { Manner } from '../../../ledger/entry.js';
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, followsWord, type Rule, wordAt } from '../rule.js';
import { CUTTINGS } from '../taken-away.js';
import { isSomebody } from './fetched.js';

/** So many of a plant, from nobody else's hands. */
const wereGiven = (pieces: readonly Piece[], from: number, to: number): boolean =>
  isSomebody(pieces, from) &&
  (pieces[to]?.is === 'count' || /^an?$/.test(wordAt(pieces, to))) &&
  closeBehind(pieces, to, 'plant') &&
  !followsWord(pieces, to, /^by$/);

const toldOf = (
  name: string,
  verbs: string,
  how: Manner,
  examples: Pick<Rule, 'phrasings' | 'mustNot'>,
): Rule => ({
  name: `<recipient> was ${name} <count> <plant>`,
  kind: 'dispatch',
  sense: 'recipient first',
  head: `was|were|been|got just|also|each|all|both? ${verbs}`,
  shape: 'object',
  how,
  when: wereGiven,
  ...examples,
});

export const wereGivenRules: readonly Rule[] = [
  toldOf('given', 'given|handed|gifted|passed', 'given', {
    phrasings: [
      'Doreen was given two of the Salt Harrier',
      'mrs abbery was given one of the Salt Harrier',
      'the school were given six Salt Harrier',
      'my sister got given two Salt Harrier',
      'the neighbours were each given a Salt Harrier',
    ],
    mustNot: [
      'I was given two Salt Harrier',
      'Doreen was given two Salt Harrier by her sister',
      'the Salt Harrier were given two feeds',
    ],
  }),
  toldOf('sold', 'sold|flogged', 'sold', {
    phrasings: ['Doreen was sold two Salt Harrier'],
    mustNot: ['I was sold two Salt Harrier'],
  }),
  {
    name: '<people> each got <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'each got|had|took|received|bought|have|has home|away?',
    shape: 'object',
    when: wereGiven,
    unless: (p, _f, t) =>
      followsWord(p, t, CUTTINGS) || followsWord(p, t, /^(?:rooted|flowering|left|own|their|his|her)$/),
    phrasings: ['the three lads each got a Salt Harrier', 'Ann and Edna each took home two Salt Harrier'],
    mustNot: [
      'we each got a Salt Harrier',
      'the three lads each took six Salt Harrier cuttings',
      'the Salt Harrier each got two feeds',
    ],
  },
];
