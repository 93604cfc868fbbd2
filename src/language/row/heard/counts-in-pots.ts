/** Numbers of pots, of what they hold, and of those put somewhere. */
import { SMALL_WORDS } from './number-words.js';
import { allFor, type Misheard } from './record.js';

const TO = /^(?:to|too|two|2)$/;
const NUMBER =
  /^(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty|thirty|forty|fifty|couple)$/;
const POT = /^(?:pots?|trays?|jar|cell|tub|punnet|module|cup)$/;

export const heardInPots: readonly Misheard[] = [
  {
    name: '<number> to a pot',
    mends: SMALL_WORDS,
    when: (v) => TO.test(v.word(1)) && /^(?:a|each)$/.test(v.word(2)) && POT.test(v.word(3)),
    onlyIf: (v) => v.heard === 'too' || v.heard === 'for',
    phrasings: [['stuck them too to a pot', 'stuck them two to a pot']],
  },
  {
    name: 'three too a pot',
    mends: allFor('to', 'too|two|2|tu|t'),
    when: (v) =>
      (v.kind(-1) === 'number' || NUMBER.test(v.word(-1))) &&
      /^(?:a|each|every|the|ea)$/.test(v.word(1)) &&
      (POT.test(v.word(2)) || (v.kind(2) === 'number' && POT.test(v.word(4)))),
    phrasings: [
      ['took 6 Salt Harrier, 3 too a pot', 'took 6 Salt Harrier, 3 to a pot'],
      ['took six Salt Harrier three two a pot', 'took six Salt Harrier three to a pot'],
      ['took 12 Salt Harrier, 4 2 each tray', 'took 12 Salt Harrier, 4 to each tray'],
    ],
    mustNot: ['took 6 Salt Harrier, two a pot', 'took 6 Salt Harrier too in a pot'],
  },
  {
    name: 'a pot with <number> in it',
    mends: SMALL_WORDS,
    when: (v) =>
      v.word(-1) === 'with' && v.word(1) === 'in' && /^(?:it|each|them|that|every)$/.test(v.word(2)),
    phrasings: [['one pot of Salt Harrier with too in it', 'one pot of Salt Harrier with two in it']],
    mustNot: ['put them with to the others'],
  },
  {
    name: 'put those for in <place>',
    mends: { for: 'four' },
    when: (v) =>
      /^(?:those|these)$/.test(v.word(-1)) &&
      /^(?:in|into|out|outside|on|onto|up|back)$/.test(v.word(1)) &&
      v.verb(-2) !== '',
    phrasings: [['put those for in the shed', 'put those four in the shed']],
    mustNot: ['potted those for Nell'],
  },
  {
    name: 'all in <number> pots',
    mends: SMALL_WORDS,
    when: (v) =>
      /^(?:pot|pots|tray|trays)$/.test(v.word(1)) &&
      /^(?:in|into|all|pots)$/.test(v.word(-1)) &&
      !(v.heard === 'to' && v.word(-1) === 'in'),
    phrasings: [['all into for pots', 'all into four pots']],
    mustNot: ['brought in to pots'],
  },
];
