/** What dictation made of cuttings, and of what sort they are: "six basil cuttings of", "with a heal". */
import { allFor, type Misheard } from './record.js';

export const heardCuttings: readonly Misheard[] = [
  {
    name: 'took five <plant> curtains',
    mends: { curtains: 'cuttings', curtain: 'cutting' },
    when: (v) => (v.isName(-1) || v.isPlant(-1) || v.kind(-1) === 'number') && v.actBefore,
    phrasings: [['took 5 Salt Harrier curtains', 'took 5 Salt Harrier cuttings']],
    mustNot: ['took the curtains down'],
  },
  {
    name: 'time cuttings',
    mends: { time: 'thyme' },
    when: (v) => /^cuttings?$/.test(v.word(1)),
    phrasings: [['five time cuttings', 'five thyme cuttings']],
    mustNot: ['in time for cuttings'],
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
    name: 'basil cuttings of <plant>',
    mends: { basil: 'basal' },
    when: (v) =>
      /^(?:cutting|cuttings|ones)$/.test(v.word(1)) &&
      (/^(?:of|from|off)$/.test(v.word(2)) ||
        v.isPlant(2) ||
        ((v.kind(-1) !== 'number' || v.word(1) === 'ones') &&
          [1, 2, 3, 4, 5].some((before) => v.isName(-before)))),
    phrasings: [
      ['six basil cuttings of Salt Harrier', 'six basal cuttings of Salt Harrier'],
      ['Salt Harrier took 4 basil ones', 'Salt Harrier took 4 basal ones'],
      ['took 5 Salt Harrier on friday basil cuttings', 'took 5 Salt Harrier on friday basal cuttings'],
    ],
    mustNot: ['six basil cuttings', 'took 5 Salt Harrier and 6 basil cuttings'],
  },
  {
    name: 'noodle cuttings',
    mends: allFor('nodal', 'noodle|noodles|nodule|noddle|nodel|modal'),
    when: (v) => /^(?:cutting|cuttings|ones)$/.test(v.word(1)),
    phrasings: [['six noodle cuttings of Salt Harrier', 'six nodal cuttings of Salt Harrier']],
    mustNot: ['had noodle soup'],
  },
];
