/** Other words of a note as dictation misheard them: "with a heal", "know roots", "buy the end of May". */
import { NUMBERS } from './number-words.js';
import { allFor, type Misheard } from './record.js';

export const heardWords: readonly Misheard[] = [
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
    mends: { ...allFor('pots', 'potts|potes|potz'), ...allFor('trays', 'trayz|trais|traes|treys') },
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
      v.isName(-1) &&
      v.gaveBefore &&
      v.kind(1) === 'word' &&
      !v.isPlant(1) &&
      !/^(?:of|more|for|each|left|are|were|and|to|at|from|in|cuttings|pots|plants|rooted|have|had|died|dead|went)$/.test(
        v.word(1),
      ),
    phrasings: [
      ['gave six Salt Harrier too Doreen', 'gave six Salt Harrier to Doreen'],
      ['gave six Salt Harrier 2 Doreen', 'gave six Salt Harrier to Doreen'],
    ],
    mustNot: ['gave Salt Harrier two more'],
  },
];
