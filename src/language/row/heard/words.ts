/** Other words of a note as dictation misheard them: "with a heal", "know roots", "buy the end of May". */
import { NUMBERS } from './number-words.js';
import { COUNTED, THEM } from './leads-to.js';
import { allFor, type Misheard } from './record.js';

/** What plants are given twice over. */
const TREAT =
  /^(?:soaks?|soakings?|drinks?|waterings?|feeds?|mists?|mistings?|sprays?|doses?|turns?|trims?|weeks?|days?|nights?|hours?)$/;

/** A number, or as much as one. */
const SO_MANY =
  /^(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|dozen|couple|few|some|most|half|both|all|none|any|lot)$/;
/** What has become of so many. */
const BECAME =
  /^(?:have|has|had|haven't|hasn't|are|aren't|is|were|was|weren't|did|didn't|rooted|routed|took|taken|died|dead|gone|went|rotted|survived|showing|looking|left|flopped|wilted|snapped|struck|still)$/;
/** Deeds to so many, with a mark, the end or these behind. */
const DID_TO = /^(?:lose|sell|give|bin|chuck|pot|move|shift|plant|pinch|check|keep|save)$/;
const BEHIND_THEM =
  /^(?:to|into|in|for|out|up|on|off|away|and|but|today|yesterday|with|back|down|last|this)$/;

export const heardWords: readonly Misheard[] = [
  {
    // The Midlands and the North say "on" for "of" there.
    name: 'five on them have',
    mends: { on: 'of' },
    when: (v) =>
      /^(?:them|em|'em)$/.test(v.word(1)) &&
      (v.kind(-1) === 'number' || SO_MANY.test(v.word(-1))) &&
      (BECAME.test(v.word(2)) ||
        (DID_TO.test(v.verb(-2)) &&
          (v.kind(2) === undefined || v.kind(2) === 'mark' || BEHIND_THEM.test(v.word(2))))),
    phrasings: [
      ['five on them have', 'five of them have'],
      ['4 on them rooted', '4 of them rooted'],
      ['lost two on them', 'lost two of them'],
      ['potted six on them up', 'potted six of them up'],
      ['none on them have rooted', 'none of them have rooted'],
    ],
    mustNot: [
      'roots on five of them',
      'put five on them shelves',
      'stuck two on them',
      'good roots on them have shown',
      'wrote the labels and put six on them',
    ],
  },
  {
    // One day's lorry; by itself "sundays" are all of them.
    name: 'on thursdays lorry',
    mends: Object.fromEntries(
      ['mon', 'tues', 'wednes', 'thurs', 'fri', 'satur', 'sun'].map((day) => [`${day}days`, `${day}day's`]),
    ),
    when: (v) =>
      /^(?:lorry|van|run|delivery|order|batch|lot|post|frost|storm|sale|market|fair|show|swap)$/.test(
        v.word(1),
      ),
    phrasings: [['sold 12 Salt Harrier on thursdays lorry', "sold 12 Salt Harrier on thursday's lorry"]],
    mustNot: ['on sundays we water'],
  },
  {
    name: 'another ones rooted',
    mends: { ones: 'one' },
    when: (v) => v.word(-1) === 'another' && /^(?:rooted|died|gone|rotted|snapped|dead)$/.test(v.word(1)),
    phrasings: [['another ones rooted', 'another one rooted']],
    mustNot: ['the ones rooted'],
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
    name: 'the others r on the sill',
    mends: { r: 'are' },
    when: (v) =>
      /^(?:they|these|those|others|rest|cuttings|plants|all|both)$/.test(v.word(-1)) || v.isName(-1),
    onlyIf: (v) => v.kind(1) !== undefined && v.kind(1) !== 'mark',
    phrasings: [['the others r on the sill', 'the others are on the sill']],
    mustNot: ['sent to r Jones'],
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
    name: 'sold two the <someone>',
    mends: allFor('to', 'two|too'),
    when: (v) =>
      /^(?:the|my|her|his|our)$/.test(v.word(1)) &&
      (/^(?:sold|gave|given|sent|donated|gone|went)$/.test(v.word(-1)) ||
        (v.gaveBefore && (v.kind(-1) === 'number' || /^(?:one|two|three|four|five|six)$/.test(v.word(-1)))) ||
        (v.movedBefore && (THEM.test(v.word(-1)) || v.isName(-1)))),
    phrasings: [
      ['six sold two the neighbour', 'six sold to the neighbour'],
      ['gave one two the neighbour', 'gave one to the neighbour'],
      ['moved them two the porch', 'moved them to the porch'],
    ],
    mustNot: ['sold two to the neighbour'],
  },
  {
    name: 'in there own pots',
    mends: { there: 'their', "they're": 'their' },
    when: (v) =>
      /^(?:own|final|first|new)$/.test(v.word(1)) && /^(?:in|into|to|on|onto|for)$/.test(v.word(-1)),
    phrasings: [['moved to there final spot', 'moved to their final spot']],
    mustNot: ['up there first'],
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
      /^(?:have|has|got|a|no|some|white|good|little|tiny|new|first|the|showing|taken|any|one|two|three|four|five|six|seven|eight|nine|ten|with)$/.test(
        v.word(-1),
      ) ||
      /^(?:showing|out|coming|poking|visible)$/.test(v.word(1)) ||
      // "Fife routes": the number may itself be misheard.
      Object.hasOwn(NUMBERS, v.word(-1)),
    phrasings: [
      ['white routes on two', 'white roots on two'],
      ['saw routes poking out', 'saw roots poking out'],
      ['have got routes on five of them', 'have got roots on five of them'],
    ],
    mustNot: ['on another route'],
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
      !COUNTED.test(v.word(1)) &&
      !TREAT.test(v.word(1)) &&
      !TREAT.test(v.word(2)),
    phrasings: [
      ['gave six Salt Harrier too Doreen', 'gave six Salt Harrier to Doreen'],
      ['gave six Salt Harrier 2 Doreen', 'gave six Salt Harrier to Doreen'],
    ],
    mustNot: ['gave Salt Harrier two more', 'gave the Salt Harrier two good soaks'],
  },
  {
    // No lodger's.
    name: 'the front boarder',
    mends: { boarder: 'border', boarders: 'borders' },
    when: (v) =>
      /^(?:front|back|long|side|main|top|bottom|rose|hot|sunny|shady|mixed|herbaceous|flower|shrub)$/.test(
        v.word(-1),
      ),
    phrasings: [['six Salt Harrier into the front boarder', 'six Salt Harrier into the front border']],
    mustNot: ['gave two to the boarder upstairs'],
  },
];
