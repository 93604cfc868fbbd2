/** Rooted cuttings into their own or larger pots. */
import { whole } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import { asTheyWent } from './pot-on/as-they-went.js';
import { biggerPots } from './pot-on/bigger-pots.js';
import { aboutCuttings, intoSize } from './pot-on/into-size.js';
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

/** The word at `at` or before it that does not tell whose pots, or how big. */
function wordBehindOwn(pieces: readonly Piece[], at: number): string {
  let from = at;
  while (/^(?:the|their|my|our|own|new|bigger)$/.test(wordAt(pieces, from))) from--;
  return wordAt(pieces, from);
}

/** "Moved all the potted ones". */
const tellsWhichOnes = (pieces: readonly Piece[], from: number, to: number): boolean =>
  wordAt(pieces, to) === 'ones' && /^(?:the|those|my)$/.test(wordAt(pieces, from - 1));

/** "Stuck five Salt Harrier, each …": what follows tells how the cuttings stand. */
const struckBefore = (pieces: readonly Piece[], from: number): boolean =>
  pieces
    .slice(0, from)
    .some(
      (piece, at) =>
        piece.is === 'word' &&
        /^(?:took|taken|struck|stuck|inserted)$/.test(piece.text) &&
        pieces[at + 1]?.is === 'count',
    );

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
  {
    name: 'gave <plant> their own pots',
    kind: 'potOn',
    head: 'give~past|give~ing|treat~past .. pots|pot|<size>|home|homes|quarters|digs',
    shape: 'object',
    when: (p, f, t) =>
      // "Pots of their own"; a new home may be somebody's.
      (wordAt(p, t) === 'of' && /^(?:their|its)$/.test(wordAt(p, t + 1)) && wordAt(p, t + 2) === 'own') ||
      p
        .slice(f, t)
        .some(
          (piece) =>
            (piece.is === 'word' &&
              (/^(?:bigger|larger|roomier)$/.test(piece.text) ||
                (/^(?:own|new|each|individual|next)$/.test(piece.text) &&
                  !/^(?:homes?|quarters|digs)$/.test(wordAt(p, t - 1))))) ||
            piece.is === 'size',
        ),
    // "Gave Pat three Ember Fox in 9cm pots", "three of the 9cm Ember Fox": away, as they stood.
    unless: (p, _f, t) =>
      /^(?:in|of|from|off)$/.test(wordBehindOwn(p, t - 2)) || p[t]?.is === 'plant' || wordAt(p, t) === 'ones',
    phrasings: [
      'gave the Salt Harrier 9cm pots',
      'gave the Salt Harrier their own pots',
      'gave four rooted Salt Harrier pots of their own',
      'treated three Salt Harrier to bigger pots',
      'gave six Salt Harrier a bigger home',
    ],
    mustNot: [
      'gave six Salt Harrier a new home',

      'gave Pat three Salt Harrier in 9cm pots',
      'gave Pat three of the 9cm Salt Harrier',
      'gave away 3 Salt Harrier in their own pots',
    ],
  },
  {
    name: 'gave <plant> a pot each',
    kind: 'potOn',
    head: 'give~past .. <pots> each',
    shape: 'object',
    phrasings: ['gave seven of the rooted Salt Harrier a pot each'],
  },
  {
    name: '<plant> have a bigger pot',
    kind: 'potOn',
    head: 'have~|get~past a|some|nice? bigger|larger|new pot|pots',
    shape: 'subject',
    when: (p, f) =>
      p.slice(0, f).some(({ is }) => is === 'plant') && !/^(?:i|we|you|they)$/.test(wordAt(p, f - 1)),
    unless: (p, _f, t) => followsWord(p, t, /^(?:waiting|ready|coming|ordered|somewhere)$/),
    phrasings: [
      'Salt Harrier got new pots, four of them',
      'the Salt Harrier were bursting out so every one has a bigger pot now',
    ],
    mustNot: ['the Salt Harrier need a bigger pot', 'the Salt Harrier have new pots waiting'],
  },
  {
    name: '<count> <plant> got a <size> each',
    kind: 'potOn',
    head: 'get~past a|an? <pots>? <size> each',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 8, 'plant', 'count'),
    unless: (p, f) => struckBefore(p, f),
    phrasings: ['the Salt Harrier were tangled, 4 of them have got a 9cm pot each now'],
    mustNot: ['the Salt Harrier need to get a 9cm pot each'],
  },
  {
    name: '<plant> in its own pot',
    kind: 'potOn',
    head: 'their|its|a|an|in own <size>|pots|pot',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 8, 'plant', 'count') || precedes(p, f, 3, 'word'),
    unless: (p, f) =>
      struckBefore(p, f) ||
      // "Gave Pat three Ember Fox in their own pots": as they stood.
      (/^(?:in|into)$/.test(wordAt(p, f - 1)) &&
        p
          .slice(0, f)
          .some((piece) => piece.is === 'word' && /^(?:gave|sold|swapped|handed)$/.test(piece.text))) ||
      p.some((piece) => piece.is === 'word' && /^(?:cuttings|cutting)$/.test(piece.text)),
    phrasings: [
      'Salt Harrier in its own pot',
      'I have put the Salt Harrier each one in a own pot of 10 cm',
      'the Salt Harrier are now separated, everyone in own pot',
    ],
    mustNot: [
      'the Salt Harrier need their own pots',
      'stuck 5 Salt Harrier, each in its own pot',
      'took six Salt Harrier cuttings, each in its own pot',
    ],
  },
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
