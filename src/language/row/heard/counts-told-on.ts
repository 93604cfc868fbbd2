/** Numbers in the second half of a telling, or before how many were left: "and to by the pond", "lost for overnight", "for in all". */
import { NUMBERS, SMALL_WORDS } from './number-words.js';
import type { Misheard } from './record.js';
import type { HeardView } from './view.js';

const WHERE = /^(?:by|in|into|on|onto|at|behind|along|beside|near|to|off|from)$/;
const PLANTING = /^(?:plant|set|stand|harden)$/;

/** Whether something was done with plants before, in the same sentence. */
const didBefore = (v: HeardView): boolean => {
  if (v.actBefore || v.movedBefore || v.gaveBefore) return true;
  for (let offset = -2; offset >= -14; offset--) if (PLANTING.test(v.verb(offset))) return true;
  return false;
};

export const heardToldOn: readonly Misheard[] = [
  {
    name: 'planted three by the wall and to by the pond',
    mends: SMALL_WORDS,
    when: (v) =>
      v.word(-1) === 'and' && WHERE.test(v.word(1)) && v.word(2) !== 'which' && didBefore(v) && !v.isName(1),
    // "And for to …" is for somebody else, "and ate in the shed" is lunch.
    onlyIf: (v) => v.heard !== 'ate' && !(v.heard === 'to' && /^(?:at|from|off)$/.test(v.word(1))),
    phrasings: [
      ['planted three by the wall and to by the pond', 'planted three by the wall and two by the pond'],
      [
        'moved six to the greenhouse and for to the porch',
        'moved six to the greenhouse and four to the porch',
      ],
      ['lost three to the cat and won to slugs', 'lost three to the cat and one to slugs'],
    ],
    mustNot: [
      'cut it back and to the heap it went',
      'warm and for in here that is rare',
      'took six and ate in the shed',
    ],
  },
  {
    name: "there's to left of the <plant>",
    mends: NUMBERS,
    when: (v) =>
      v.word(1) === 'left' && /^(?:there's|there|are|is|got|have|has|only|just|about)$/.test(v.word(-1)),
    phrasings: [
      ["there's to left of the Salt Harrier", "there's two left of the Salt Harrier"],
      ["I've got for left", "I've got four left"],
    ],
    mustNot: ['the ones for left over compost', 'turn to left at the gate'],
  },
  {
    name: 'sold the last of them for in all',
    mends: NUMBERS,
    when: (v) =>
      v.word(1) === 'in' &&
      /^(?:all|total)$/.test(v.word(2)) &&
      /^(?:undefined|mark|line)$/.test(String(v.kind(3))),
    phrasings: [
      ['sold the last of the Salt Harrier for in all', 'sold the last of the Salt Harrier four in all'],
    ],
    mustNot: ['what I keep it for in all weathers'],
  },
  {
    name: 'down to for <plant>',
    mends: { for: 'four', fore: 'four', to: 'two', too: 'two', won: 'one' },
    when: (v) =>
      v.word(-1) === 'to' &&
      v.word(-2) === 'down' &&
      (v.isPlant(1) || /^(?:left|now|of|cuttings|pots)$/.test(v.word(1))),
    phrasings: [['down to for Salt Harrier', 'down to four Salt Harrier']],
    mustNot: ['down to for a swim'],
  },
  {
    // Nobody loses for a night: the number is what was lost.
    name: 'lost for overnight',
    mends: { for: 'four', fore: 'four', won: 'one', too: 'two' },
    when: (v) => v.verb(-1) === 'lose' && /^(?:overnight|last|to|yesterday|from|this)$/.test(v.word(1)),
    phrasings: [
      ['lost for overnight', 'lost four overnight'],
      ['lost won to the cat', 'lost one to the cat'],
    ],
    mustNot: ['lost for words', 'lost too many to slugs'],
  },
  {
    name: 'got for off the <plant>',
    mends: SMALL_WORDS,
    when: (v) =>
      /^(?:off|from)$/.test(v.word(1)) &&
      /^(?:got|had|took|cut|managed|nicked|snipped)$/.test(v.word(-1)) &&
      (v.isPlant(2) || v.isPlant(3) || /^(?:it|them|each)$/.test(v.word(2))),
    phrasings: [['got for off the Salt Harrier', 'got four off the Salt Harrier']],
    mustNot: ['got to from the far end'],
  },
  {
    name: 'there were for in the <place>',
    mends: { for: 'four', to: 'two', too: 'two', won: 'one' },
    when: (v) =>
      v.word(-2) === 'there' &&
      /^(?:were|are)$/.test(v.word(-1)) &&
      /^(?:in|on|under|with|alive|dead)$/.test(v.word(1)),
    phrasings: [['there were for in the tray', 'there were four in the tray']],
    mustNot: ['what they were for in the first place'],
  },
  {
    name: 'just done ate basals',
    mends: { ate: 'eight', won: 'one', too: 'two', for: 'four' },
    when: (v) =>
      v.word(-1) === 'done' &&
      /^(?:just|i|we|i've|ive|we've|weve|have|and|also|only)?$/.test(v.word(-2)) &&
      /^(?:basal|basil|basals|nodal|nodals|internodal|tip|tips|heel|heels|softwood|semi|hardwood|leaf)$/.test(
        v.word(1) === 'cuttings' && v.heard !== 'for' ? 'tips' : v.word(1),
      ),
    phrasings: [
      ['just done ate basal cuttings', 'just done eight basal cuttings'],
      ['ive done for tips of Salt Harrier', 'ive done four tips of Salt Harrier'],
      ['we have done too cuttings', 'we have done two cuttings'],
    ],
    mustNot: ['nearly done for tips this year', 'I have done for cuttings'],
  },
  {
    name: 'put in ate cuttings',
    mends: { ate: 'eight', won: 'one', for: 'four', too: 'two' },
    when: (v) =>
      v.word(-1) === 'in' &&
      /^(?:put|stuck|popped|got|puttin|putting)$/.test(v.word(-2)) &&
      /^(?:cuttings?|slips|tips|basals?)$/.test(v.word(1)),
    phrasings: [
      ['i put in ate cuttings of Salt Harrier', 'i put in eight cuttings of Salt Harrier'],
      ['stuck in for cuttings', 'stuck in four cuttings'],
    ],
    mustNot: ['put in for the cuttings exam'],
  },
  {
    name: 'off the won by',
    mends: { won: 'one' },
    when: (v) =>
      v.word(-1) === 'the' &&
      /^(?:off|from|of)$/.test(v.word(-2)) &&
      /^(?:by|at|near|in|outside|behind|beside|next)$/.test(v.word(1)),
    phrasings: [['took four off the won by the gate', 'took four off the one by the gate']],
    mustNot: ['off the prize won at the show'],
  },
  {
    name: 'took eight <plant> and for <plant>',
    mends: { for: 'four', to: 'two', too: 'two' },
    when: (v) =>
      v.word(-1) === 'and' &&
      v.isPlant(1) &&
      v.within(-8, -2, /^(?:took|taken|done|did|struck|stuck|cut)$/) &&
      v.within(-7, -2, /^(?:ate|to|too|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\d+)$/),
    phrasings: [
      ['just done nine Salt Harrier and for Tallow Bell', 'just done nine Salt Harrier and four Tallow Bell'],
    ],
    mustNot: ['filled the trays and for Salt Harrier used perlite'],
  },
];
