/** Numbers that the words around them tell alone: "to pots of", "all except won", "the other ate". */
import { NUMBERS } from './number-words.js';
import { allFor, type Misheard } from './record.js';

const EIGHT = allFor('eight', 'ate');
const ONE = allFor('one', 'won');
const TWO = allFor('two', 'to|too');

/** What a pot is like. */
const POT_LIKE =
  /^(?:clay|plastic|glass|terracotta|tin|big|wee|small|large|little|tiny|old|deep|shallow|square|round|jam|yoghurt|yogurt|coffee)$/;

export const heardNumbers: readonly Misheard[] = [
  {
    name: 'sicks',
    mends: { sicks: 'six' },
    phrasings: [["no it's sicks", "no it's six"]],
  },
  {
    name: 'propagator at ate',
    mends: { ate: 'eight' },
    when: (v) =>
      /^(?:at|around|about|by)$/.test(v.word(-1)) && !/^(?:the|my|all|them|it|up)$/.test(v.word(1)),
    phrasings: [
      ['cold frame at ate', 'cold frame at eight'],
      ['tomorrow at ate in the morning', 'tomorrow at eight in the morning'],
    ],
    mustNot: ['the mouse we swore at ate the lot'],
  },
  {
    name: 'twenty ate in each',
    mends: { ate: 'eight', too: 'two', won: 'one' },
    when: (v) =>
      /^(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)$/.test(v.word(-1)) &&
      (/^(?:in|of|per|each|to|all|cuttings?|plants?|plugs|rooted|have|into)$/.test(v.word(1)) ||
        v.isPlant(1)),
    phrasings: [
      ['two trays of Salt Harrier twenty ate in each', 'two trays of Salt Harrier twenty eight in each'],
      ['took thirty too Salt Harrier', 'took thirty two Salt Harrier'],
    ],
    mustNot: ['lost twenty too'],
  },
  {
    name: 'sold too at the gate',
    mends: TWO,
    when: (v) => /^(?:sold|flogged)$/.test(v.word(-1)) && /^(?:at|off|for|from)$/.test(v.word(1)),
    phrasings: [['sold too at the gate', 'sold two at the gate']],
    mustNot: ['sold to the school'],
  },
  {
    name: 'have for with roots',
    mends: { for: 'four' },
    when: (v) =>
      /^(?:have|has|had|got)$/.test(v.word(-1)) && v.word(1) === 'with' && /^roots$/.test(v.word(2)),
    phrasings: [['the Salt Harrier have for with roots', 'the Salt Harrier have four with roots']],
  },
  {
    name: 'gave for to <someone>',
    mends: { ...TWO, ...EIGHT, ...ONE, for: 'four' },
    when: (v) =>
      (/^(?:give|sell|send|pass|hand|donate|post)$/.test(v.verb(-1)) && v.word(1) === 'to') ||
      (/^(?:swap|trade)$/.test(v.verb(-1)) && v.word(1) === 'with'),
    phrasings: [
      ['the Salt Harrier I gave for to the sale', 'the Salt Harrier I gave four to the sale'],
      ['gave too to Doreen', 'gave two to Doreen'],
      ['swapped ate with Doreen', 'swapped eight with Doreen'],
    ],
    mustNot: ['gave for the sale', 'gave to Doreen'],
  },
  {
    name: '<number> pots of',
    mends: NUMBERS,
    when: (v) =>
      /^(?:pots|trays|pot|tray)$/.test(v.word(1)) &&
      v.word(2) === 'of' &&
      !/^(?:cms?|mm|l|litres?|liters?|inch|inches|cell|cells)$/.test(v.word(4)),
    phrasings: [['to pots of Salt Harrier', 'two pots of Salt Harrier']],
    mustNot: ['moved to pots', 'moved six Salt Harrier to pots of 11 cm'],
  },
  {
    name: 'with <number> in each',
    mends: NUMBERS,
    when: (v) =>
      v.word(1) === 'in' &&
      /^(?:each|every)$/.test(v.word(2)) &&
      (v.clauseStart || v.isName(-1) || /^(?:with|and|holding|put|stuck)$/.test(v.word(-1))),
    phrasings: [
      ['two pots of Salt Harrier with for in each', 'two pots of Salt Harrier with four in each'],
      ['two pots, too in every one', 'two pots, two in every one'],
    ],
    mustNot: ['what the label is for in each'],
  },
  {
    name: "that's <number> altogether",
    mends: NUMBERS,
    when: (v) =>
      /^(?:that's|is|makes|making)$/.test(v.word(-1)) &&
      (/^(?:altogether|total)$/.test(v.word(1)) || (v.word(1) === 'in' && /^(?:all|total)$/.test(v.word(2)))),
    phrasings: [["so that's ate altogether", "so that's eight altogether"]],
    mustNot: ['slugs ate altogether too much'],
  },
  {
    name: 'won degree',
    mends: ONE,
    when: (v) => v.word(1) === 'degree',
    phrasings: [['down at won degree', 'down at one degree']],
  },
  {
    name: 'won has died',
    mends: ONE,
    when: (v) =>
      /^(?:is|has|was)$/.test(v.word(1)) && /^(?:dead|died|gone|rotted|rotten|dyed)$/.test(v.word(2)),
    phrasings: [['won has died', 'one has died']],
    mustNot: ['the raffle I won was big'],
  },
  {
    name: 'to dozen',
    mends: TWO,
    when: (v) => v.word(1) === 'dozen',
    phrasings: [['took to dozen', 'took two dozen']],
  },
  {
    name: 'minus <number>',
    mends: NUMBERS,
    when: (v) => v.word(-1) === 'minus',
    phrasings: [['minus fore last night', 'minus four last night']],
  },
  {
    name: '<number> inch',
    mends: NUMBERS,
    when: (v) => /^(?:inch|litre|litres|mil|cm)$/.test(v.word(1)),
    phrasings: [['into for inch pots', 'into four inch pots']],
    mustNot: ['moved to inches'],
  },
  {
    name: 'all except to',
    mends: { ...TWO, for: 'four', ...allFor('three', 'tree|free') },
    when: (v) =>
      (v.kind(1) === undefined ||
        // "All but too of them", but "all but for the frost".
        (v.word(1) === 'of' && /^(?:them|em|those|these)$/.test(v.word(2)))) &&
      /^(?:except|bar|but|for)$/.test(v.word(-1)) &&
      /\b(?:except|bar|all but)\b/.test(`${v.word(-3)} ${v.word(-2)} ${v.word(-1)}`),
    phrasings: [
      ['all rooted except to', 'all rooted except two'],
      ['all but for', 'all but four'],
      ['er all but too of them', 'er all but two of them'],
      ['all rooted except for too', 'all rooted except for two'],
    ],
    mustNot: ['wanted to but too', 'all but for the frost'],
  },
  {
    name: 'and for tossed',
    mends: { for: 'four' },
    when: (v) =>
      v.word(-1) === 'and' &&
      /^(?:tossed|binned|chucked|lost|thrown|dumped|died|dead|rotted|rotten|potted|moved|sold|pinched)$/.test(
        v.word(1),
      ),
    phrasings: [['six rooted and for tossed', 'six rooted and four tossed']],
    mustNot: ['up and for sale'],
  },
  {
    name: 'threw to away',
    mends: TWO,
    when: (v) =>
      /^(?:thrown|threw|chucked|tossed|gave|given|put|took|knocked)$/.test(v.word(-1)) &&
      /^(?:away|out|on|off)$/.test(v.word(1)),
    phrasings: [['threw to away', 'threw two away']],
    mustNot: ['gave to Doreen'],
  },
  {
    name: 'of to cuttings',
    mends: TWO,
    when: (v) => v.word(-1) === 'of' && /^(?:cuttings|cutting|plants)$/.test(v.word(1)),
    phrasings: [['a batch of to cuttings', 'a batch of two cuttings']],
  },
  {
    name: 'the other <number> have',
    mends: NUMBERS,
    when: (v) =>
      v.word(-1) === 'other' &&
      (/^(?:have|has|are|is|rooted|died|went|look|looks)$/.test(v.word(1)) ||
        // "Binned the other won oh and …": no verb can end what is said, nor lead to a joint.
        (/^(?:to|won|for|ate)$/.test(v.word(0)) &&
          /^(?:binned|chucked|lost|potted|threw|tossed|composted|pinched|moved|gave|sold|kept)$/.test(
            v.word(-3),
          ) &&
          /^(?:and|oh|then|so|but|up|on|out|too|also|yesterday|today)?$/.test(v.word(1)))),
    phrasings: [
      ['the other ate have rooted', 'the other eight have rooted'],
      ['binned the other won oh and gave them a spray', 'binned the other one oh and gave them a spray'],
    ],
    mustNot: ['the other won a prize', 'kept one and the other won'],
  },
  {
    name: 'took ate cuttings',
    mends: EIGHT,
    when: (v) =>
      /^(?:cuttings|cutting|of|plants|pots)$/.test(v.word(1)) &&
      /^(?:was|were|took|it|only|had|and|is|potted|on)$/.test(v.word(-1)),
    phrasings: [['potted on ate plants', 'potted on eight plants']],
    mustNot: ['slugs ate cuttings'],
  },
  {
    name: "that's ate cuttings",
    mends: EIGHT,
    when: (v) =>
      /^(?:that's|thats|there's|theres|was)$/.test(v.word(-1)) &&
      (v.isPlant(1) ||
        /^(?:cuttings|cutting|tip|tips|basal|nodal|heel|softwood|stem|more|new)$/.test(v.word(1))),
    phrasings: [["that's ate tip cuttings done", "that's eight tip cuttings done"]],
    mustNot: ["that's what ate cuttings"],
  },
  {
    name: 'and ate <plant>',
    mends: EIGHT,
    when: (v) => v.isPlant(1) && v.word(-1) === 'and' && v.actBefore,
    phrasings: [['took six Tallow Bell and ate Salt Harrier', 'took six Tallow Bell and eight Salt Harrier']],
    mustNot: ['slugs ate Salt Harrier'],
  },
  {
    name: '<plant> ate of twelve',
    mends: EIGHT,
    when: (v) => v.isName(-1) && v.word(1) === 'of',
    phrasings: [['Salt Harrier ate of twelve have rooted', 'Salt Harrier eight of twelve have rooted']],
  },
  {
    name: 'all bar won',
    mends: ONE,
    when: (v) =>
      /^(?:bar|except|save|but)$/.test(v.word(-1)) ||
      (v.word(-1) === 'from' && /^(?:apart|aside)$/.test(v.word(-2))),
    phrasings: [
      ['all rooted bar won', 'all rooted bar one'],
      ['all rooted apart from won', 'all rooted apart from one'],
    ],
    mustNot: ['a pot from won prizes'],
  },
  {
    name: 'won pot',
    mends: allFor('one', 'won|wan'),
    when: (v) =>
      /^(?:pot|tray|jar|plant|cutting)$/.test(v.word(1)) ||
      (POT_LIKE.test(v.word(1)) &&
        /^(?:pot|tray|jar|tub|pan|bucket|cup|glass|box|dish)$/.test(v.word(2)) &&
        !/^(?:i|we|he|she|they|has|have)$/.test(v.word(-1))),
    phrasings: [
      ['filled won pot', 'filled one pot'],
      ['took four Salt Harrier, wan clay pot', 'took four Salt Harrier, one clay pot'],
    ],
    mustNot: ['I won big tray of bedding'],
  },
  {
    name: 'twenty <number> have',
    mends: NUMBERS,
    when: (v) =>
      /^(?:twenty|thirty|forty|fifty|sixty)$/.test(v.word(-1)) &&
      /^(?:have|has|rooted|routed|died|rotted|dead|cuttings)$/.test(v.word(1)),
    phrasings: [['twenty for have rooted', 'twenty four have rooted']],
    mustNot: ['twenty for Doreen'],
  },
];
