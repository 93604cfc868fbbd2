/** Numbers that stand where a note counts: behind an act, before cuttings, a plant or what became of them. */
import { heardInPots } from './counts-in-pots.js';
import { NUMBERS, SMALL_WORDS, STRANGE_WORDS, TREE_AND_FREE } from './number-words.js';
import type { Misheard } from './record.js';
import type { HeardView } from './view.js';

const ACT = new Set(
  'toss ditch dump finish throw chuck tug check take strike stick insert cut snip pot pinch lose move shift sell give bin plant dispatch root swap'.split(
    ' ',
  ),
);
const COUNT_FOLLOWS = new Set(
  "were was there theres there's have had has and checked another all the only just of are with about got".split(
    ' ',
  ),
);
const KIND = new Set(
  'cutting cuttings basal basil nodal internodal tip tips heel heal softwood semi hardwood stem root leaf'.split(
    ' ',
  ),
);
const BECAME = new Set(
  'rooted routed dead rotted rotten died damped dampened failed wilted carked croaked collapsed perished snapped flopped'.split(
    ' ',
  ),
);
const HAS_BECOME = new Set('have has had gone survived'.split(' '));

const DAY = /^(?:(?:mon|tues|wednes|thurs|fri|satur|sun)day|today|yesterday|morning|afternoon|evening)$/;

/** "Vine weevil", "rose rust": what is called by the plant that it eats. */
const NAMED_BY_PLANT =
  /^(?:weevils?|beetles?|moths?|fly|flies|sawfly|aphids?|mites?|midges?|blight|rust|mildew|wilt)$/;

/** Before "did" where it opens what was done. */
const DID = /^(?:so|and|then|also|ok|okay|today|yesterday)?$/;

const EVERYDAY_WORDS = { ...SMALL_WORDS, ...TREE_AND_FREE };

const afterAct = (v: HeardView): boolean =>
  ACT.has(v.verb(-1)) && !/^(?:pots|plants)$/.test(v.word(-1)) && !v.isName(-1);
const afterParticle = (v: HeardView): boolean =>
  /^(?:on|up|out|off)$/.test(v.word(-1)) && ACT.has(v.verb(-2));
const afterCountWord = (v: HeardView): boolean => COUNT_FOLLOWS.has(v.word(-1));

/** "For" and "to" are themselves at the head of a clause and behind most words ("for the stall", "had to"). */
const isForOrTo = ({ heard }: HeardView): boolean => heard === 'for' || heard === 'to';

const COUNTED = /^(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten|dozen|both|all)$/;

/** "Gave to Bea", but not "gave to half crown to Bea", where the second "to" tells who has them; "2 given to Bea, 1 to Ines" has its number. */
const isForSomeone = (v: HeardView): boolean =>
  v.heard === 'to' &&
  /^(?:sell|give|move|shift)$/.test(v.verb(-1)) &&
  (COUNTED.test(v.word(-2)) || !v.within(2, Infinity, /^to$/));

/** What became of them speaks before a plant does, and a plant's list before a plant alone. */
export const heardCounts: readonly Misheard[] = [
  {
    name: '<number> degrees',
    mends: NUMBERS,
    when: (v) =>
      v.word(1) === 'degrees' ||
      (/^(?:days|weeks)$/.test(v.word(1)) && /^(?:in|for|about)$/.test(v.word(-1))),
    // "Open for days".
    onlyIf: (v) => v.heard !== 'for' || v.word(1) === 'degrees',
    phrasings: [
      ['got down to for degrees', 'got down to four degrees'],
      ['down to too degrees', 'down to two degrees'],
      ['rooted in to weeks', 'rooted in two weeks'],
    ],
    mustNot: ['it was about for days'],
  },
  {
    name: 'for so far',
    mends: { for: 'four', to: 'two', too: 'two', ...TREE_AND_FREE },
    when: (v) => v.word(1) === 'so' && v.word(2) === 'far' && v.clauseStart,
    phrasings: [['for so far', 'four so far']],
    mustNot: ['too cold so far'],
  },
  {
    name: 'potted on ate into',
    mends: { ate: 'eight' },
    when: (v) => afterParticle(v) || (afterAct(v) && v.word(-1) !== 'plants'),
    phrasings: [
      ['Salt Harrier potted on ate into one litre', 'Salt Harrier potted on eight into one litre'],
      ['lost ate overnight', 'lost eight overnight'],
    ],
    mustNot: ['plants ate well', 'slugs ate two'],
  },
  {
    name: 'pots of <number>',
    mends: NUMBERS,
    when: (v) => v.word(-1) === 'of' && /^(?:pots|trays|pot|tray|jars|modules)$/.test(v.word(-2)),
    phrasings: [['three pots of for', 'three pots of four']],
  },
  {
    name: 'sicks <plant>',
    mends: STRANGE_WORDS,
    when: (v) =>
      v.isPlant(1) || v.word(1) === 'of' || [KIND, BECAME, HAS_BECOME].some((words) => words.has(v.word(1))),
    phrasings: [
      ['took sicks Salt Harrier', 'took six Salt Harrier'],
      ['fife have roots', 'five have roots'],
    ],
    mustNot: ['off to fife today'],
  },
  {
    name: '<number> rooted',
    mends: EVERYDAY_WORDS,
    when: (v) => BECAME.has(v.word(1)) && !v.isName(1),
    onlyIf: (v) => v.clauseStart || afterCountWord(v) || v.isName(-1) || afterAct(v),
    phrasings: [
      ['had won rooted', 'had one rooted'],
      ['potted on five and too carked it', 'potted on five and two carked it'],
      ['Salt Harrier to dead', 'Salt Harrier two dead'],
    ],
    mustNot: ['waiting for rooted ones'],
  },
  {
    name: '<plant> ate have',
    mends: { ate: 'eight', won: 'one', too: 'two' },
    when: (v) => HAS_BECOME.has(v.word(1)) && !v.isName(1) && v.isName(-1),
    phrasings: [
      ['Salt Harrier ate have roots', 'Salt Harrier eight have roots'],
      ['Salt Harrier too survived', 'Salt Harrier two survived'],
    ],
  },
  {
    name: '<plant> for have rooted',
    mends: { for: 'four', to: 'two', ate: 'eight', ...TREE_AND_FREE },
    when: (v) =>
      /^(?:have|has)$/.test(v.word(1)) &&
      !v.isName(1) &&
      (v.isName(-1) || (v.heard !== 'to' && DAY.test(v.word(-1)))) &&
      /^(?:rooted|routed|roots|died|rotted)$/.test(v.word(2)),
    phrasings: [
      ['Salt Harrier free have rooted', 'Salt Harrier three have rooted'],
      [
        'checked Salt Harrier on thursday ate have rooted',
        'checked Salt Harrier on thursday eight have rooted',
      ],
    ],
    mustNot: ['Salt Harrier to have a drink', 'I meant them by thursday to have rooted'],
  },
  {
    name: '<number> have gone',
    mends: EVERYDAY_WORDS,
    when: (v) => HAS_BECOME.has(v.word(1)) && !v.isName(1),
    onlyIf: (v) => v.clauseStart && (!isForOrTo(v) || /^(?:have|has|gone)$/.test(v.word(1))),
    phrasings: [
      ['to have gone', 'two have gone'],
      ['five rooted, won survived', 'five rooted, one survived'],
    ],
    mustNot: ['it was good to have them'],
  },
  {
    name: 'have for <plant> rooted',
    mends: { for: 'four' },
    when: (v) =>
      /^(?:have|had|got)$/.test(v.word(-1)) &&
      v.isPlant(1) &&
      v.within(2, 6, /^(?:rooted|routed|dead|died)$/),
    phrasings: [['have for Salt Harrier rooted', 'have four Salt Harrier rooted']],
    mustNot: ['the pots I have for Salt Harrier'],
  },
  {
    // "Six Tin Whistler too Thursday Muffin and for Old Skerry": a list of numbers and names.
    name: 'took six <plant> too <plant> and for <plant>',
    mends: EVERYDAY_WORDS,
    when: (v) => v.isPlant(1) && (v.isName(-1) || (v.word(-1) === 'and' && v.isName(-2))) && v.actBefore,
    // "Moved Salt Harrier to …".
    onlyIf: (v) => !(v.heard === 'to' && v.isName(-1)),
    phrasings: [
      ['took six Salt Harrier too Tallow Bell', 'took six Salt Harrier two Tallow Bell'],
      ['took six Salt Harrier and for Tallow Bell', 'took six Salt Harrier and four Tallow Bell'],
    ],
    mustNot: ['cut Salt Harrier to Tallow Bell'],
  },
  {
    name: 'for <plant> dead',
    mends: { for: 'four' },
    when: (v) => v.clauseStart && v.isPlant(1) && v.within(2, 6, /^(?:rooted|routed|dead|died|rotted)$/),
    phrasings: [['for Salt Harrier dead', 'four Salt Harrier dead']],
    mustNot: ['for Salt Harrier use perlite'],
  },
  {
    name: '<number> of the <plant>',
    mends: SMALL_WORDS,
    when: (v) => v.word(1) === 'of' && (/^(?:the|my|them|those|em)$/.test(v.word(2)) || v.isPlant(2)),
    onlyIf: (v) =>
      v.clauseStart ||
      afterAct(v) ||
      afterParticle(v) ||
      afterCountWord(v) ||
      ((v.isName(-1) || v.isPlant(-1)) && v.word(2) === 'them') ||
      (v.heard !== 'for' &&
        v.word(2) === 'them' &&
        /^(?:have|has|rooted|routed|died|are)$/.test(v.word(3))) ||
      // "Gave Moira too of".
      (/^(?:give|sell|hand|send|bring)$/.test(v.verb(-2)) && v.heard !== 'for'),
    phrasings: [
      ['gave Doreen too of the Salt Harrier', 'gave Doreen two of the Salt Harrier'],
      ['Salt Harrier to of them died', 'Salt Harrier two of them died'],
      ['potted up for of the Salt Harrier', 'potted up four of the Salt Harrier'],
      ['lost to of them', 'lost two of them'],
    ],
    mustNot: ['the one I dream to of them'],
  },
  {
    name: 'took <number> cuttings',
    mends: SMALL_WORDS,
    when: (v) => KIND.has(v.word(1)),
    onlyIf: (v) =>
      v.clauseStart ||
      afterAct(v) ||
      afterParticle(v) ||
      (afterCountWord(v) && !isForOrTo(v)) ||
      // "Did ate cuttings", but "what I did for cuttings".
      (v.word(-1) === 'did' && (!isForOrTo(v) || DID.test(v.word(-2)))),
    phrasings: [
      ['took for cuttings', 'took four cuttings'],
      ['did ate nodal cuttings', 'did eight nodal cuttings'],
      ['so did for cuttings of Salt Harrier', 'so did four cuttings of Salt Harrier'],
    ],
    mustNot: ['the knife is for cuttings', 'what I did for cuttings was wait'],
  },
  {
    name: 'took <number> more',
    mends: SMALL_WORDS,
    when: (v) => v.word(1) === 'more',
    onlyIf: (v) => v.clauseStart || afterAct(v) || (v.heard === 'too' && /^(?:have|are)$/.test(v.word(2))),
    phrasings: [
      ['took to more', 'took two more'],
      ['checked again too more have roots', 'checked again two more have roots'],
    ],
    mustNot: ['looking for more'],
  },
  {
    name: 'took for <new name> <crop> cuttings',
    mends: { for: 'four', to: 'two', too: 'two', ate: 'eight', won: 'one' },
    when: (v) =>
      /^(?:take|strike|stick)$/.test(v.verb(-1)) &&
      (v.isPlant(2) || v.isPlant(3)) &&
      v.within(3, 6, /^cuttings?$/) &&
      !v.isPlant(1),
    phrasings: [
      ['took for bramble usher Salt Harrier cuttings', 'took four bramble usher Salt Harrier cuttings'],
    ],
    mustNot: ['took for Doreen six pelargonium cuttings'],
  },
  {
    name: 'took <number> <plant>',
    mends: SMALL_WORDS,
    when: (v) => v.isPlant(1) && !NAMED_BY_PLANT.test(v.word(2)),
    // "Put three down as rooted for Salt Harrier".
    onlyIf: (v) =>
      !(v.heard === 'for' && v.word(-2) === 'as') &&
      ((afterAct(v) && !isForSomeone(v)) ||
        afterParticle(v) ||
        ((v.clauseStart || afterCountWord(v)) && !isForOrTo(v))),
    phrasings: [
      ['took for Salt Harrier', 'took four Salt Harrier'],
      ['gave to Salt Harrier to Doreen', 'gave two Salt Harrier to Doreen'],
    ],
    mustNot: [
      'for Salt Harrier',
      'put three down as rooted for Salt Harrier',
      'gave to Salt Harrier',
      '2 given to Mum, 1 to next door',
      '18 lost to vine weevil',
      'lost to lily beetle',
    ],
  },
  ...heardInPots,
];
