/** What was done and what became of it, as dictation misheard it: "mystic the seedlings", "party on", "to dampened off". */
import { placeNouns } from '../lexicon.js';
import { allFor, type Misheard } from './record.js';
import type { HeardView } from './view.js';

const isOnOrUp = (v: HeardView, offset: number): boolean => /^(?:on|up)$/.test(v.word(offset));

const THROWN = /^(?:chucked|binned|dumped|composted|tossed|discarded)$/;

/** "At the base, chucked", "and binned", and nothing behind it. */
function isThrownBehind(v: HeardView): boolean {
  let at = 1;
  while (at < 6 && /^(?:at|the|base|bottom|neck|and|so|,)$/.test(v.word(at))) at++;
  return THROWN.test(v.word(at)) && isEnd(v, at + 1);
}

const isEnd = (v: HeardView, offset: number): boolean =>
  /^(?:undefined|mark|line)$/.test(String(v.kind(offset)));

/** "The odd one out", "two of them away", and nothing behind it. */
function isSoManyAway(v: HeardView): boolean {
  let at = 1;
  while (
    at < 6 &&
    /^(?:the|an?|odd|of|them|those|all|other|last|one|two|three|four|five|six)$/.test(v.word(at))
  )
    at++;
  return at > 1 && /^(?:out|away)$/.test(v.word(at)) && isEnd(v, at + 1);
}

export const heardVerbs: readonly Misheard[] = [
  {
    name: 'routed',
    mends: { routed: 'rooted' },
    // "Routed out the old tray".
    when: (v) => v.word(1) !== 'out' || !v.clauseStart,
    phrasings: [['five have routed', 'five have rooted']],
  },
  {
    // What rooted nobody throws away.
    name: 'rooted at the base, chucked',
    mends: { rooted: 'rotted', roted: 'rotted' },
    when: (v) =>
      (/^(?:off|away)$/.test(v.word(1)) && (isEnd(v, 2) || v.word(2) === 'at')) || isThrownBehind(v),
    phrasings: [
      ['three rooted at the base, chucked', 'three rotted at the base, chucked'],
      ['nine rootted off at the base', 'nine rotted off at the base'],
    ],
    mustNot: [
      'three rooted at the base, chucked two',
      'three rooted and the rest chucked',
      'six Salt Harrier rooted off to the cold frame',
      'five rooted off the March lot',
    ],
  },
  {
    // So many out or away, and no way through anything.
    name: 'through the odd one out',
    mends: { through: 'threw' },
    when: (v) => (v.clauseStart || /^(?:and|then|so|i|we|just|but)$/.test(v.word(-1))) && isSoManyAway(v),
    phrasings: [
      ['thru the odd one out', 'threw the odd one out'],
      ['and through two away', 'and threw two away'],
    ],
    mustNot: ['through the winter one died', 'went through the odd one out there'],
  },
  {
    // What is told so is still to come.
    name: 'ill take six',
    mends: { ill: "i'll" },
    when: (v) =>
      v.verb(1) !== '' &&
      v.verb(1) === v.word(1) &&
      !/^(?:is|are|was|were|be|been|am|i'm|they're|look|looks|looked|looking|fell|fallen|feel|feeling|felt|seriously|very|too|so|an?|the|got|taken|took|went|still)$/.test(
        v.word(-1),
      ),
    phrasings: [
      ['next year ill take twenty', "next year i'll take twenty"],
      ['ill pot them on', "i'll pot them on"],
    ],
    mustNot: ['they are ill look', 'ill with greenfly', 'was ill take it from me'],
  },
  {
    name: 'dampened off',
    mends: { dampened: 'damped' },
    when: (v) => v.word(1) === 'off',
    phrasings: [['three dampened off', 'three damped off']],
    mustNot: ['dampened the compost'],
  },
  {
    // As Scots say and write it.
    name: 'pit the <plant> oot',
    mends: { pit: 'put' },
    when: (v) =>
      (v.clauseStart || /^(?:i|we|and|then|ah|just)$/.test(v.word(-1))) &&
      (/^(?:the|them|these|those|it|in|oot|out|my|some|a)$/.test(v.word(1)) ||
        v.isName(1) ||
        v.kind(1) === 'number'),
    phrasings: [['pit the Salt Harrier in the greenhouse', 'put the Salt Harrier in the greenhouse']],
    mustNot: ['the pit is full', 'the compost pit by the Salt Harrier'],
  },
  {
    name: 'dyed',
    mends: { dyed: 'died' },
    phrasings: [['three dyed', 'three died']],
  },
  {
    name: 'punched out <plant>',
    mends: { punched: 'pinched' },
    when: (v) =>
      /^(?:out|back|the)$/.test(v.word(1)) &&
      (v.isPlant(1) ||
        v.isPlant(2) ||
        v.isPlant(3) ||
        v.word(1) === 'out' ||
        /^(?:tips|tops)$/.test(v.word(2))),
    phrasings: [
      ['punched out the Salt Harrier', 'pinched out the Salt Harrier'],
      ['punched the tips', 'pinched the tips'],
    ],
    mustNot: ['punched the labels'],
  },
  {
    name: 'mystic the <plant>',
    mends: allFor('misted', 'mystic|mistake|missed|mister|misty'),
    when: (v) =>
      (/^(?:the|everything|all|them|it)$/.test(v.word(1)) ||
        // "Mystic greenhouse", but who missed a bench may have passed it by.
        (v.heard !== 'missed' && placeNouns.has(v.word(1)))) &&
      !/^(?:a|i|we|the)$/.test(v.word(-1)) &&
      v.clauseStart,
    phrasings: [
      ['mystic the Salt Harrier', 'misted the Salt Harrier'],
      ['misty greenhouse', 'misted greenhouse'],
    ],
    mustNot: ['I missed the frost', 'missed greenhouse'],
  },
  {
    name: 'put it on <plant>',
    mends: { put: 'potted the' },
    when: (v) => v.word(1) === 'it' && isOnOrUp(v, 2) && (v.isPlant(3) || v.isPlant(4)),
    phrasings: [['put it on Salt Harrier', 'potted the on Salt Harrier']],
    mustNot: ['put it on the bench'],
  },
  {
    // Heard as somebody's name: without its capital the spelling has been repaired before.
    name: 'Harding off',
    mends: { harding: 'hardening' },
    when: (v) => /^(?:off|of)$/.test(v.word(1)),
    phrasings: [['today Harding off the Salt Harrier', 'today hardening off the Salt Harrier']],
  },
  {
    name: 'hard in off',
    mends: { hard: 'hardening the' },
    when: (v) => /^(?:in|and|an)$/.test(v.word(1)) && v.word(2) === 'off',
    phrasings: [['hard in off Salt Harrier', 'hardening the off Salt Harrier']],
    mustNot: ['frost came hard in May'],
  },
  {
    name: 'party on',
    mends: { party: 'potted' },
    when: (v) => isOnOrUp(v, 1) && v.clauseStart,
    phrasings: [['party on Salt Harrier', 'potted on Salt Harrier']],
    mustNot: ['the party on Sunday'],
  },
  {
    name: 'pot it up <number>',
    mends: { pot: 'potted the' },
    when: (v) =>
      v.word(1) === 'it' &&
      isOnOrUp(v, 2) &&
      (v.isPlant(3) ||
        v.isPlant(4) ||
        v.kind(3) === 'number' ||
        /^(?:one|two|three|four|five|six|seven|eight|nine|ten|for|to|too|the|all)$/.test(v.word(3))),
    phrasings: [['pot it up six Salt Harrier', 'potted the up six Salt Harrier']],
    mustNot: ['pot it up tomorrow'],
  },
];
