/** What thumbs write for small words: "moved the rest 2 the shelf", "th", "lst night". */
import { COUNTED, THEM } from './leads-to.js';
import { allFor, type Misheard } from './record.js';
import type { HeardView } from './view.js';

/** "12" → "12th", as far as months go. */
const NTH = Object.fromEntries(
  Array.from({ length: 31 }, (_, n) => [
    String(n + 1),
    `${String(n + 1)}${/1[1-3]$/.test(String(n + 1)) ? 'th' : (['th', 'st', 'nd', 'rd'][(n + 1) % 10] ?? 'th')}`,
  ]),
);

/** "The 12 and not the 13", to the end of what is said: days, for nobody counts so. */
function isOfTwoDays(v: HeardView): boolean {
  if (v.word(-1) !== 'the') return false;
  const isEnd = (at: number): boolean => v.kind(at) === undefined || v.kind(at) === 'mark';
  let not = 1;
  while (v.kind(not) === 'mark' || /^(?:and|but)$/.test(v.word(not))) not++;
  if (v.word(not) === 'not')
    return v.word(not + 1) === 'the' && /^\d/.test(v.word(not + 2)) && isEnd(not + 3) && isSaid(v, -2);
  let right = -3;
  while (v.kind(right) === 'mark' || /^(?:and|but)$/.test(v.word(right))) right--;
  return (
    v.word(-2) === 'not' &&
    /^\d/.test(v.word(right)) &&
    v.word(right - 1) === 'the' &&
    isEnd(1) &&
    isSaid(v, right - 2)
  );
}
const isSaid = (v: HeardView, at: number): boolean => /^(?:was|is|were|on)$/.test(v.word(at));

export const thumbed: readonly Misheard[] = [
  {
    name: 'pl out <count>',
    mends: { pl: 'planted', plntd: 'planted' },
    when: (v) => v.word(1) === 'out',
    phrasings: [['pl out 9 Salt Harrier', 'planted out 9 Salt Harrier']],
    mustNot: ['pl 9 Salt Harrier'],
  },
  {
    name: '<count> lf cuttings',
    mends: { lf: 'leaf' },
    when: (v) => /^(?:cutting|cuttings|ctgs)$/.test(v.word(1)),
    phrasings: [['6 lf cuttings of Salt Harrier', '6 leaf cuttings of Salt Harrier']],
    mustNot: ['6 lf plants'],
  },
  {
    // The North says "were" there.
    name: 'it were only four',
    mends: { were: 'was' },
    when: (v) =>
      v.word(-1) === 'it' && (/^(?:only|just|really|actually)$/.test(v.word(1)) || v.kind(1) === 'number'),
    phrasings: [['it were only four Salt Harrier', 'it was only four Salt Harrier']],
    mustNot: ['if it were me', 'they were only four'],
  },
  {
    name: 'nay, it was',
    mends: { nay: 'no' },
    when: (v) => v.clauseStart && (v.kind(1) === 'mark' || /^(?:it|that|i|they|not|only)$/.test(v.word(1))),
    phrasings: [['nay, it was four', 'no, it was four']],
    mustNot: ['sold two to nay'],
  },
  {
    name: 'it was the 12 and not the 13',
    mends: NTH,
    when: isOfTwoDays,
    phrasings: [
      ['it was the 12 and not the 13', 'it was the 12th and not the 13th'],
      ['it was the 3, not the 2', 'it was the 3rd, not the 2nd'],
    ],
    mustNot: [
      'it was 12 and not 13',
      'it was the 12 bus and not the 13',
      'it was the 12 and not the 13 that died',
    ],
  },
  {
    name: 'th <something>',
    mends: { th: 'the' },
    // "The 4 th".
    when: (v) => v.kind(-1) !== 'number' && v.kind(1) !== undefined,
    phrasings: [['sent th Salt Harrier', 'sent the Salt Harrier']],
    mustNot: ['on the 4 th'],
  },
  {
    // Before a verb and who asks: it may be a name too.
    name: 'wen can i',
    mends: { wen: 'when' },
    when: (v) =>
      /^(?:can|could|do|did|does|will|should|shall|am|are|is|was)$/.test(v.word(1)) &&
      /^(?:i|we|they|it|you)$/.test(v.word(2)),
    phrasings: [['wen can i expect roots', 'when can i expect roots']],
    mustNot: ['gave two to wen'],
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
    // No "2 dry, 3 rotten".
    name: '2 windy',
    mends: { 2: 'too' },
    when: (v) =>
      /^(?:windy|breezy|gusty|stormy|draughty|drafty|rainy|sunny|late|early|busy|tired|risky)$/.test(
        v.word(1),
      ),
    phrasings: [
      [
        'potted on the Salt Harrier, 2 late for the fair',
        'potted on the Salt Harrier, too late for the fair',
      ],
    ],
    mustNot: ['lost 2 Salt Harrier, windy'],
  },
  {
    name: '<plant> 4 the stall',
    mends: { 4: 'for' },
    when: (v) => /^(?:the|my|our|her|his|mum|dad|a)$/.test(v.word(1)) && v.isName(-1),
    phrasings: [['six Salt Harrier 4 the stall', 'six Salt Harrier for the stall']],
    mustNot: ['Salt Harrier 4 rooted'],
  },
  {
    name: '<plant> 4 xmas fair',
    mends: { 4: 'for' },
    when: (v) =>
      v.isName(-1) &&
      /^(?:xmas|christmas|easter|spring|summer|autumn|winter|market|school|church|village|mum|dad|nan|gran|mums|mothers|plant|stall|sale|fair|show|fete)$/.test(
        v.word(1),
      ) &&
      !/^(?:pots?|trays?)$/.test(v.word(2)) &&
      !v.isPlace(1),
    phrasings: [['need 30 Salt Harrier 4 xmas fair', 'need 30 Salt Harrier for xmas fair']],
    mustNot: ['Salt Harrier 4 plant pots', 'Salt Harrier 4 rooted'],
  },
  {
    name: 'moved <plant> 2 the <place>',
    mends: { 2: 'to' },
    when: (v) =>
      (v.isName(-1) || THEM.test(v.word(-1)) || /^(?:over|back)$/.test(v.word(-1))) &&
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
];
