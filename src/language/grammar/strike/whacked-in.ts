/** Cuttings told by "in" alone: "whacked in 16", "put six in last Sunday". */
import { CUTTINGS } from '../taken-away.js';
import { closeBehind, follows, followsWord, type Rule, wordAt } from '../rule.js';
import { isRound } from './round-the-edge.js';

export const whackedIn: readonly Rule[] = [
  {
    name: 'whacked in <count> <plant>',
    kind: 'strike',
    head: 'whack~past|bang~past|bung~past|pop~past|stick~past|shove~past|sling~past|chuck~past|put~ in',
    shape: 'object',
    when: (p, _f, t) =>
      (p[t]?.is === 'count' ||
        (p[t]?.is === 'pots' && wordAt(p, t + 1) === 'of') ||
        (/^(?:heap|pile|bunch|load|rake|stack)$/.test(wordAt(p, t + 1)) && followsWord(p, t, CUTTINGS))) &&
      closeBehind(p, t, 'plant') &&
      !follows(p, t, 'size') &&
      !followsWord(p, t, /^(?:bed|border|ground|garden)$/),
    phrasings: ['whacked in 16 Salt Harrier this arvo', 'put in five pots of Salt Harrier, three to a pot'],
    mustNot: ['put in two pots of compost'],
  },
  {
    name: 'whacked <count> <plant> cuttings into <size>',
    kind: 'strike',
    head: 'whack~past|bang~past|sling~past|lob~past|shove~past|jammed|crammed|squeezed|stuffed <count> of? the? <plant>? <cutting>|cuttings|slips in|into',
    shape: 'object',
    when: (p, _f, t) => follows(p, t, 'size', 'pots', 'medium'),
    phrasings: [
      'whacked four Salt Harrier cuttings into 7cm tubes',
      'crammed 5 Salt Harrier cuttings into one pot',
    ],
    mustNot: ['whacked four Salt Harrier cuttings with the hose'],
  },
  {
    name: 'whacked <count> <plant> in',
    kind: 'strike',
    head: 'whack~past|bang~past|bung~past|pop~past|shove~past|stick~past|get~past|put~ <count> of? the? <plant> <plant>? cuttings? in',
    shape: 'object',
    when: (p, f, t) =>
      (!p[t] || p[t]?.is === 'break' || p[t]?.is === 'when' || isRound(p, t)) &&
      // "Got six in": brought in, it may be, where nothing tells what they root in.
      (wordAt(p, f) !== 'got' ||
        p.slice(t).some((piece) => piece.is === 'medium' || piece.is === 'size' || piece.is === 'cutting')),
    phrasings: [
      'got twenty Salt Harrier in this arvo, native mix, 50mm tubes',
      'whacked ten Salt Harrier in this arvo, no powder',
      'put six Salt Harrier in last Sunday',
      'stuck 18 Salt Harrier cuttings in round the edge of two 140mm pots',
      'put nine Salt Harrier in round the rim of a pot',
    ],
    mustNot: [
      'put six Salt Harrier in the shed',
      'put six Salt Harrier in round the pond',
      'put six Salt Harrier in along the edge of the path',
      'put six Salt Harrier in by the side of the pond',
    ],
  },
];
