/** Other words of a note as dictation misheard them: "with a heal", "know roots", "buy the end of May". */
import { NUMBERS } from './number-words.js';
import { allFor, type Misheard } from './record.js';

/** What must not stand behind a "2" that leads somewhere: it counts there. */
const COUNTED =
  /^(?:of|more|for|each|left|are|were|and|to|at|from|in|cuttings|pots|plants|rooted|have|had|died|dead|went)$/;
const THEM = /^(?:them|em|it|those|these|everything|all|rest|lot|both)$/;

export const heardWords: readonly Misheard[] = [
  {
    name: 'th <something>',
    mends: { th: 'the' },
    // "The 4 th".
    when: (v) => v.kind(-1) !== 'number' && v.kind(1) !== undefined,
    phrasings: [['sent th Salt Harrier', 'sent the Salt Harrier']],
    mustNot: ['on the 4 th'],
  },
  {
    name: 'damping of',
    mends: { of: 'off' },
    when: (v) => /^(?:damping|damped|dampened)$/.test(v.word(-1)),
    phrasings: [['lost two to damping of yesterday', 'lost two to damping off yesterday']],
    mustNot: ['watering of the Salt Harrier'],
  },
  {
    name: 'bought right is',
    mends: { bought: 'botrytis the the' },
    when: (v) => v.word(1) === 'right' && v.word(2) === 'is',
    phrasings: [['two gone with bought right is', 'two gone with botrytis the the']],
    mustNot: ['what I bought right at the gate'],
  },
  {
    name: 'last knight',
    mends: { knight: 'night' },
    when: (v) =>
      /^(?:last|all|cold|frosty|day)$/.test(v.word(-1)) ||
      /^(?:mon|tues|wednes|thurs|fri|satur|sun)day$/.test(v.word(-1)),
    phrasings: [['down to two last knight', 'down to two last night']],
    mustNot: ['six of the knight'],
  },
  {
    // "Lst" by itself is "lost".
    name: 'lost night',
    mends: { lost: 'last' },
    when: (v) => /^(?:night|week|month|weekend)$/.test(v.word(1)),
    phrasings: [['down to two lst night', 'down to two last night']],
    mustNot: ['lost two last night'],
  },
  {
    name: 'nun rooted',
    mends: { nun: 'none' },
    when: (v) =>
      v.kind(1) === undefined ||
      /^(?:rooted|routed|yet|of|have|has|so|left|dead|died|survived|showing|with|are|were)$/.test(v.word(1)),
    phrasings: [['Salt Harrier nun rooted', 'Salt Harrier none rooted']],
    mustNot: ['gave two to a nun yesterday'],
  },
  {
    name: 'mite pot on <plant>',
    mends: { mite: 'might' },
    when: (v) =>
      (v.clauseStart || /^(?:i|we|it|they)$/.test(v.word(-1))) &&
      ((v.verb(1) !== '' && v.verb(1) === v.word(1)) || /^(?:be|have|not|just|as)$/.test(v.word(1))),
    phrasings: [['mite pot on Salt Harrier', 'might pot on Salt Harrier']],
    mustNot: ['mite got at Salt Harrier', 'red spider mite on Salt Harrier'],
  },
  {
    name: 'carried <plant> threw to the <place>',
    mends: { threw: 'through' },
    when: (v) => /^(?:to|into)$/.test(v.word(1)) && (v.isName(-1) || THEM.test(v.word(-1))) && v.movedBefore,
    phrasings: [['carried Salt Harrier threw to the porch', 'carried Salt Harrier through to the porch']],
    mustNot: ['Salt Harrier threw to the wall'],
  },
  {
    name: 'took five <plant> curtains',
    mends: { curtains: 'cuttings', curtain: 'cutting' },
    when: (v) => (v.isName(-1) || v.isPlant(-1) || v.kind(-1) === 'number') && v.actBefore,
    phrasings: [['took 5 Salt Harrier curtains', 'took 5 Salt Harrier cuttings']],
    mustNot: ['took the curtains down'],
  },
  {
    name: 'moved <plant> from the <place> 2 <place>',
    mends: { 2: 'to' },
    when: (v) =>
      v.isPlace(1) &&
      v.movedBefore &&
      (THEM.test(v.word(-1)) ||
        /^(?:out|over|back|down|up|across|through)$/.test(v.word(-1)) ||
        (v.within(-6, -1, /^from$/) && !v.within(-6, 0, /^(?:to|into|onto)$/))),
    phrasings: [
      ['moved Salt Harrier from the porch 2 greenhouse', 'moved Salt Harrier from the porch to greenhouse'],
      ['moved the rest 2 greenhouse', 'moved the rest to greenhouse'],
      ['moved everything out 2 greenhouse', 'moved everything out to greenhouse'],
    ],
    mustNot: ['moved 2 from greenhouse', 'took Salt Harrier from bench 2'],
  },
  {
    name: 'sent <plant> off 2 <someone>',
    mends: { 2: 'to' },
    when: (v) =>
      /^(?:off|over|out|round)$/.test(v.word(-1)) &&
      (v.isName(-2) || THEM.test(v.word(-2))) &&
      (v.gaveBefore || v.movedBefore) &&
      v.kind(1) === 'word' &&
      !v.isPlant(1) &&
      !COUNTED.test(v.word(1)),
    phrasings: [['sent Salt Harrier off 2 Doreen', 'sent Salt Harrier off to Doreen']],
    mustNot: ['sent Salt Harrier off 2 of them late', 'sent Salt Harrier out 2 rooted'],
  },
  {
    name: 'know roots',
    mends: { know: 'no' },
    when: (v) => /^(?:roots|root|routes|sign|signs)$/.test(v.word(1)),
    phrasings: [['still know roots', 'still no roots']],
    mustNot: ['I know rooted ones'],
  },
  {
    name: 'buy the end of May',
    mends: { buy: 'by' },
    when: (v) =>
      /^(?:the|end|early|mid|late|next|june|july|may|august|september|october|november|december|january|february|march|april|easter|christmas|monday|tuesday|wednesday|thursday|friday|saturday|sunday)$/.test(
        v.word(1),
      ) &&
      // "Might well buy the Salt Harrier", and what opens a note is likely an errand.
      !v.isPlant(2) &&
      v.kind(-3) !== undefined,
    phrasings: [['want ten Salt Harrier buy the end of May', 'want ten Salt Harrier by the end of May']],
    mustNot: ['buy the compost', 'I might well buy the Salt Harrier'],
  },
  {
    name: 'time cuttings',
    mends: { time: 'thyme' },
    when: (v) => /^cuttings?$/.test(v.word(1)),
    phrasings: [['five time cuttings', 'five thyme cuttings']],
    mustNot: ['in time for cuttings'],
  },
  {
    name: '<plant> 4 the stall',
    mends: { 4: 'for' },
    when: (v) => /^(?:the|my|our|her|his|mum|dad|a)$/.test(v.word(1)) && v.isName(-1),
    phrasings: [['six Salt Harrier 4 the stall', 'six Salt Harrier for the stall']],
    mustNot: ['Salt Harrier 4 rooted'],
  },
  {
    name: 'moved <plant> 2 the <place>',
    mends: { 2: 'to' },
    when: (v) =>
      (v.isName(-1) || /^(?:them|em|it|those|these|everything|all|rest|lot|over|back)$/.test(v.word(-1))) &&
      /^(?:the|my|our|her|his|mum|dad|mums|dads|gran|nan)$/.test(v.word(1)) &&
      !/^(?:other|others|same|last|next|first|size|day|night|week|best|worst|biggest|smallest)$/.test(
        v.word(2),
      ),
    phrasings: [
      ['moved Salt Harrier 2 the shelf', 'moved Salt Harrier to the shelf'],
      ['took them 2 my nan', 'took them to my nan'],
    ],
    mustNot: ['Salt Harrier 2 rooted', 'Salt Harrier 2 the other day', 'Salt Harrier 2 in the tray'],
  },
  {
    name: 'heal cuttings',
    mends: { heal: 'heel' },
    when: (v) =>
      /^(?:cutting|cuttings|ones)$/.test(v.word(1)) || (v.word(-1) === 'a' && v.word(-2) === 'with'),
    phrasings: [
      ['six heal cuttings', 'six heel cuttings'],
      ['took them with a heal', 'took them with a heel'],
    ],
    mustNot: ['let the cut heal'],
  },
  {
    name: 'sold two the <someone>',
    mends: { two: 'to' },
    when: (v) =>
      /^(?:the|my|her|his|our)$/.test(v.word(1)) &&
      /^(?:sold|gave|given|sent|donated|gone|went)$/.test(v.word(-1)),
    phrasings: [['six sold two the neighbour', 'six sold to the neighbour']],
    mustNot: ['sold two to the neighbour'],
  },
  {
    // A habitual misspelling would take a surname with it ("for Mrs Potts").
    name: '<number> potts',
    mends: { ...allFor('pots', 'potts|potes|potz|pts'), ...allFor('trays', 'trayz|trais|traes|treys') },
    when: (v) =>
      v.kind(-1) === 'number' ||
      /^(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|dozen|several|few|the)$/.test(
        v.word(-1),
      ),
    phrasings: [
      ['4 potts of 3', '4 pots of 3'],
      ['took 24, 2 trayz', 'took 24, 2 trays'],
    ],
    mustNot: ['gave six to potts'],
  },
  {
    name: 'pearlite',
    mends: { pearlite: 'perlite' },
    phrasings: [['into pearlite', 'into perlite']],
  },
  {
    name: 'white routes',
    mends: { route: 'root', routes: 'roots' },
    when: (v) =>
      v.kind(-1) === undefined ||
      /^(?:have|has|a|no|some|white|good|new|first|the|showing|taken|any|one|two|three|four|five|six|seven|eight|nine|ten|with)$/.test(
        v.word(-1),
      ) ||
      /^(?:showing|out|coming|poking|visible)$/.test(v.word(1)) ||
      // "Fife routes": the number may itself be misheard.
      Object.hasOwn(NUMBERS, v.word(-1)),
    phrasings: [
      ['white routes on two', 'white roots on two'],
      ['saw routes poking out', 'saw roots poking out'],
    ],
    mustNot: ['on another route'],
  },
  {
    name: 'basil cuttings of <plant>',
    mends: { basil: 'basal' },
    when: (v) =>
      /^(?:cutting|cuttings)$/.test(v.word(1)) &&
      (/^(?:of|from|off)$/.test(v.word(2)) || v.isPlant(2) || v.isName(-1)),
    phrasings: [['six basil cuttings of Salt Harrier', 'six basal cuttings of Salt Harrier']],
    mustNot: ['six basil cuttings'],
  },
  {
    name: "where's <plant>",
    mends: { wears: "where's" },
    when: (v) => v.clauseStart,
    phrasings: [['wears the Salt Harrier got to', "where's the Salt Harrier got to"]],
    mustNot: ['he wears the gloves'],
  },
  {
    name: 'gave <plant> too <someone>',
    mends: allFor('to', 'two|too|2'),
    when: (v) =>
      v.isName(-1) && v.gaveBefore && v.kind(1) === 'word' && !v.isPlant(1) && !COUNTED.test(v.word(1)),
    phrasings: [
      ['gave six Salt Harrier too Doreen', 'gave six Salt Harrier to Doreen'],
      ['gave six Salt Harrier 2 Doreen', 'gave six Salt Harrier to Doreen'],
    ],
    mustNot: ['gave Salt Harrier two more'],
  },
];
