/** Cuttings told to have rooted: "five have rooted", "12 of 14 rooting". */
import type { Piece } from '../../pieces/pieces.js';
import { endsAt, precedes, type Rule, wordAt } from '../rule.js';
import { rootedIsAdjective, tellsWhichOnes } from './told-of-rooted.js';

/** "Rooted to the sofa all evening": a grower. */
const isToSpot = (pieces: readonly Piece[], from: number, to: number): boolean =>
  wordAt(pieces, to) === 'to' &&
  (/^(?:spot|sofa|settee|couch|chair|armchair|seat|bed|telly|television|screen|ground|radio|desk)$/.test(
    wordAt(pieces, to + 2),
  ) ||
    !precedes(pieces, from, 8, 'plant', 'count')) &&
  !/^(?:bottom|edge|edges|sides?|base)$/.test(wordAt(pieces, to + 2)) &&
  wordAt(pieces, to + 1) !== 'date';

/** "Three were barely rooted": why those were left, and nothing that has rooted. */
const areBarely = (pieces: readonly Piece[], from: number): boolean =>
  /^(?:barely|hardly|scarcely)$/.test(wordAt(pieces, from - 1)) &&
  /^(?:was|were|are|is)$/.test(wordAt(pieces, from - 2)) &&
  pieces[from - 3]?.is === 'count' &&
  pieces.slice(0, from - 3).some(({ is }) => is === 'count');

export const rooted: readonly Rule[] = [
  {
    name: '<plant> fully rooted',
    kind: 'check',
    head: 'fully|completely root~past',
    shape: 'subject',
    rooted: 'all',
    when: (p, f) => precedes(p, f, 5, 'plant'),
    phrasings: ['Salt Harrier fully rooted'],
  },
  {
    name: 'the last <plant> has rooted',
    kind: 'check',
    head: 'root~past',
    shape: 'subject',
    rooted: 'all',
    when: (p, f) => {
      const at = /^(?:has|have|is|are)$/.test(wordAt(p, f - 1)) ? f - 2 : f - 1;
      return p[at]?.is === 'plant' && /^(?:last|final)$/.test(wordAt(p, at - 1));
    },
    phrasings: ['the last Salt Harrier has rooted'],
    mustNot: ['moved the last Salt Harrier'],
  },
  {
    name: '<count> of <plant> have rooted',
    kind: 'check',
    head: 'well? root~past|rooty',
    shape: 'subject',
    // "Potted the eight that had rooted": which ones.
    unless: (p, f, t) =>
      rootedIsAdjective(p, f, t) ||
      tellsWhichOnes(p, f) ||
      areBarely(p, f) ||
      (/^(?:around|about)$/.test(wordAt(p, t)) && /^(?:in|the)$/.test(wordAt(p, t + 1))) ||
      // "Rooted through the drawer".
      (wordAt(p, t) === 'through' && f === 0) ||
      isToSpot(p, f, t),
    mustNot: [
      'rooted around in the shed for the Salt Harrier labels',
      'rooted to the sofa all evening with the snooker',
      'stood there rooted to the spot',
      "potted on everything that's rooted",
      'potted on 10 Salt Harrier, two were barely rooted',
    ],
  },
  {
    name: '<count> more <plant> after rooting',
    kind: 'check',
    head: 'after rooting',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 7, 'count'),
    phrasings: ["there's two more of the Salt Harrier after rooting since I last looked"],
    mustNot: ['pot them on after rooting'],
  },
  { name: '<plant> are rooting', kind: 'check', head: 'be~ rooting', shape: 'subject', rooted: 'some' },
  {
    name: '<plant> rooting like mad',
    kind: 'check',
    head: 'rooting like|well|nicely|away|fast|quickly mad|crazy|anything|weeds|now?',
    shape: 'subject',
    rooted: 'some',
    when: (p, f) => precedes(p, f, 4, 'plant'),
    phrasings: ['Salt Harrier rooting like mad, 5 of them', 'the Tallow Bell are rooting nicely'],
    mustNot: ['rooting like mad in the drawer for a label'],
  },
  {
    name: '<count>/<count> rooting',
    kind: 'check',
    head: 'rooting',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 6, 'plant', 'count') &&
      (endsAt(p, t) || p[t]?.is === 'count') &&
      !(p[t]?.is === 'word' && /^(?:powder|hormone|gel)$/.test(wordAt(p, t))),
  },
];
