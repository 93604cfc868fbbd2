/** Rooted cuttings into their own or larger pots. */
import { whole } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import { asTheyWent } from './pot-on/as-they-went.js';
import { biggerPots } from './pot-on/bigger-pots.js';
import { aboutCuttings, intoSize } from './pot-on/into-size.js';
import { ownPots } from './pot-on/own-pots.js';
import { outOfWater } from './pot-on/out-of-water.js';
import { isOutstanding } from './pot-on/outstanding.js';
import { toSize } from './pot-on/to-size.js';
import { finals } from './pot-on/finals.js';
import { FINAL, INTO_POTS, KNOCKED_INTO_POTS, THEIR_OWN } from './pot-on/verbs.js';
import { follows, followsWord, precedes, type Rule, wordAt } from './rule.js';

/** Before "pot", words that make it the thing: "the same pot", "each pot". */
const NAMES_A_POT = whole`
  a|the|my|this|that|each|every|per|one|single|same|whole|own|other|another|next|last|in|of
  first|second|third|fourth|fifth|big|bigger|larger|small|smaller|little|new|old|mixed|shared|joint|clay|plastic|square|round|tall|left|right|red|blue|green|black|white
`;

const potted = (pieces: readonly Piece[], from: number): boolean => {
  const word = wordAt(pieces, from);
  const before = wordAt(pieces, from - 1);
  if (word === 'pots') return from === 0 || /^(?:i|we|he|she|and)$/.test(before);
  return word !== 'pot' || !NAMES_A_POT.test(before);
};

/** "Moved all the potted ones". */
const tellsWhichOnes = (pieces: readonly Piece[], from: number, to: number): boolean =>
  wordAt(pieces, to) === 'ones' && /^(?:the|those|my)$/.test(wordAt(pieces, from - 1));

export const potOnRules: readonly Rule[] = [
  ...biggerPots,
  {
    name: 'knocked on <count> <plant>',
    kind: 'potOn',
    head: 'knock~past on|up',
    shape: 'object',
    when: (p, _f, t) => follows(p, t, 'plant', 'count') && follows(p, t, 'size', 'pots'),
    phrasings: ['knocked on 12 Plum Gaiters into 1 litre pots'],
  },
  {
    name: 'put <plant> on into <size>',
    kind: 'potOn',
    head: 'put~|move~past|go~past .. on|up into|in|to <size>',
    shape: 'object',
    unless: aboutCuttings,
  },
  {
    name: 'pricked <count> off into <size>',
    kind: 'potOn',
    head: 'prick~past .. off|out? into|in|to <size>',
    shape: 'object',
    phrasings: ['pricked the rooted ones off into 8cm, Salt Harrier'],
  },
  ...intoSize,
  {
    name: 'potted <count> <plant> on',
    kind: 'potOn',
    head: 'pot~ .. on|up|individually|separately|singly',
    shape: 'object',
    when: (p, f) => potted(p, f) && p[f]?.is === 'word' && wordAt(p, f) !== 'pots',
    unless: (p, f, t) =>
      p
        .slice(f + 1, t - 1)
        .some((piece) => piece.is === 'word' && /^(?:and|then|but|on|up|into|in)$/.test(piece.text)) ||
      (p[t]?.is === 'when' && wordAt(p, t - 1) === 'on') ||
      asTheyWent(p, f, t) ||
      isOutstanding(p, f, t),
    mustNot: [
      'gave 3 Salt Harrier to Doreen, potted up',
      'gave Doreen three potted up Salt Harrier',
      'potting on of Salt Harrier to be done',
    ],
    phrasings: ['potted five Salt Harrier on', 'potting on of Salt Harrier into 1L, complete'],
  },
  {
    name: 'potting: <plant>',
    kind: 'potOn',
    head: 'pot~ing',
    shape: 'object',
    when: (p, f, t) =>
      follows(p, t, 'plant') ||
      (f === 0 &&
        (p[t]?.is === 'break' ||
          (/^(?:line|bench|team|shed)$/.test(wordAt(p, t)) && p[t + 1]?.is === 'break')) &&
        p.slice(t).some(({ is }) => is === 'plant')),
    phrasings: ['potting line: Salt Harrier 39, 10.5cm'],
    unless: (p, f, t) =>
      /^(?:of|the|for|like|with|by|about|from|and)$/.test(wordAt(p, f - 1)) || isOutstanding(p, f, t),
    mustNot: ['potting on of Salt Harrier to be done', 'potting of Salt Harrier overdue'],
  },
  {
    name: 'repotted <plant>',
    kind: 'potOn',
    head: 're? pot~past|repot~|replanted|re-planted',
    shape: 'object',
    unless: (p, f, t) => tellsWhichOnes(p, f, t) || asTheyWent(p, f, t),
    mustNot: [
      'sold three potted Salt Harrier',
      'planted out the five potted Salt Harrier in the window boxes',
    ],
    phrasings: ['repotted Salt Harrier', 'potted five Salt Harrier'],
  },
  {
    name: 'moved <plant> into <size> pots',
    kind: 'potOn',
    head: `${INTO_POTS}|${KNOCKED_INTO_POTS} .. into|to|in|up|on their|its|the|new? ${FINAL}? <size>`,
    shape: 'object',
    unless: aboutCuttings,
    phrasings: ['moved Salt Harrier into 9cm pots', 'moved up Salt Harrier to 9cm'],
  },
  {
    name: 'passed <plant> to <size> pots',
    kind: 'potOn',
    head: 'pass~past|change~past .. to|into <size>',
    shape: 'object',
    // "Passed six to Doreen into 9cm pots".
    unless: (p, f, t) => aboutCuttings(p, f, t) || followsWord(p.slice(0, t - 2), f, /^(?:to|on|back)$/),
    phrasings: ['passed six Salt Harrier to pots of 11 cm', 'changed the Salt Harrier to 9cm pots'],
    mustNot: ['passed six Salt Harrier to Doreen in 9cm pots'],
  },
  ...finals,
  {
    name: 'moved <plant> into their own pots',
    kind: 'potOn',
    head: `${INTO_POTS} .. into|to|in|up ${THEIR_OWN} .. pots|pot|size|ones|<size>`,
    shape: 'object',
    unless: aboutCuttings,
    phrasings: [
      'moved Salt Harrier into their own pots',
      'moved the rooted Salt Harrier into individual 3 inch pots',
    ],
  },
  {
    name: 'bumped up <count> <plant>',
    kind: 'potOn',
    head: 'bump~|step~past|tube~|tub~ up',
    shape: 'object',
    when: (p, f, t) => follows(p, t, 'plant', 'count') || precedes(p, f, 5, 'plant'),
  },
  { name: 'bumped <plant> up', kind: 'potOn', head: 'bump~past|step~past|tube~past .. up', shape: 'object' },
  { name: 'pricked out <count> <plant>', kind: 'potOn', head: 'prick~ out|on|off', shape: 'object' },
  {
    name: 'transplanted <plant>',
    kind: 'potOn',
    head: 'transplant~past',
    shape: 'object',
    unless: (p, _f, t) => follows(p, t, 'place') && !follows(p, t, 'size'),
  },
  ...ownPots,
  {
    name: 'put each <plant> in a pot of <size>',
    kind: 'potOn',
    head: 'put~past|move~past|set~past|pop~past|transfer~past .. into|in <pots> of <size>',
    shape: 'object',
    when: (p, f, t) => p.slice(f, t).some((_, at) => wordAt(p, f + at) === 'each'),
    unless: aboutCuttings,
    phrasings: ['put each Salt Harrier in a pot of 9 cm', 'put the Salt Harrier each in a pot of 9 cm'],
    mustNot: ['put each of the Salt Harrier cuttings in a pot of 9 cm'],
  },
  ...outOfWater,
  ...toSize,
];
