/** Plants that somebody was let have or sent home with: "let Ken have two", "Pat had four of them", "off went eight to the school". */
import type { Piece } from '../../pieces/pieces.js';
import { CUTTINGS } from '../taken-away.js';
import { isReceiver } from '../other-people.js';
import { closeBehind, follows, followsWord, type Rule, wordAt } from '../rule.js';
import { isSomebody } from './fetched.js';

/** "Pat had two and Sue had three of them": the plant is named behind the other. */
const isTwoHad = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at + 1) === 'and' &&
  pieces.slice(at + 2, at + 5).some((_, n) => wordAt(pieces, at + 2 + n) === 'had');
const plantAt = (pieces: readonly Piece[], from: number): number =>
  pieces.findIndex(({ is }, at) => at >= from && is === 'plant');
/** What tells of their own plants, behind the name: "had four of the Salt Harrier in flower". */
const BESIDES = /^(?:rooted|flowering|in|die|died|dead|rot|rotted|left|going|out|doing|fail|taken)$/;

export const letHave: readonly Rule[] = [
  {
    name: '<recipient> had <count> of the <plant>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'had|have|bought|has had?',
    shape: 'object',
    when: (p, f, t) =>
      isSomebody(p, f) &&
      p[t]?.is === 'count' &&
      (t > f + 1 || p[t].ofOurs === true || /^(?:the|my|our)$/.test(wordAt(p, t + 1)) || isTwoHad(p, t)) &&
      p.slice(t).some(({ is }) => is === 'plant') &&
      !BESIDES.test(wordAt(p, plantAt(p, t) + 1)),
    phrasings: [
      'Pat had 4 of the Salt Harrier',
      'Doreen has had 4 of my Salt Harrier',
      'Pat had two and Doreen had three of the Salt Harrier',
    ],
    mustNot: [
      'Pat had 4 of the Salt Harrier rooted',
      'I have had 4 of the Salt Harrier',
      'Pat had 4 Salt Harrier',
    ],
    unless: (p, _f, t) => followsWord(p, t, CUTTINGS) || followsWord(p, t, /^(?:his|hers?|their|own)$/),
  },
  {
    // Those that were kept for them.
    name: '<recipient> has had her <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'has? had her|his|their',
    shape: 'object',
    when: (p, f, t) =>
      isSomebody(p, f) && p[t]?.is === 'count' && p[t + 1]?.is === 'plant' && p[t + 2]?.is !== 'word',
    phrasings: ["Doreen's had her two Salt Harrier", 'Pat has had his 4 Salt Harrier'],
    mustNot: ['Pat had her 4 Salt Harrier rooted'],
  },
  {
    name: 'sent <recipient> home with <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient within',
    how: 'given',
    head: 'send~past|packed|waved .. home|off|away|back with',
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t, 'count') &&
      closeBehind(p, t, 'plant') &&
      p.slice(f + 1, t).every(({ is }) => is === 'word') &&
      t > f + 3,
    phrasings: ['sent Doreen home with 8 Salt Harrier', 'packed her off with 8 Salt Harrier'],
  },
  {
    name: 'off went <count> <plant> to <recipient>',
    kind: 'dispatch',
    head: 'off|away|out went|go <count>',
    shape: 'object',
    when: (p, f, t) =>
      (f === 0 || p[f - 1]?.is === 'break' || /^(?:and|then|so)$/.test(wordAt(p, f - 1))) &&
      closeBehind(p, t, 'plant') &&
      followsWord(p, t, /^(?:to|with)$/) &&
      (!follows(p, t, 'place') || p.slice(t).some(isReceiver)),
    phrasings: ['off went 8 Salt Harrier to the school'],
    mustNot: ['out went 8 Salt Harrier to the cold frame', 'off went 8 Salt Harrier to rot'],
    unless: (p, _f, t) => followsWord(p, t, /^(?:rot|heap|bin|bed|border|compost)$/),
  },
  {
    name: 'let <recipient> have <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient within',
    head: 'let~ .. have|take',
    shape: 'object',
    how: 'given',
    when: (p, f, t) =>
      follows(p, t, 'plant', 'count') &&
      !/^(?:me|us)$/.test(wordAt(p, f + 1)) &&
      // "Let the Salt Harrier have an hour outside".
      !p.slice(f, t).some(({ is }) => is === 'plant'),
    mustNot: ['let the Salt Harrier have two hours outside'],
  },
  {
    name: 'let <count> <plant> go to <recipient>',
    kind: 'dispatch',
    how: 'given',
    head: 'let~ .. go to|with',
    shape: 'object',
    when: (p, f, t) =>
      p.slice(f, t).some(({ is }) => is === 'count') &&
      p.slice(f, t).some(({ is }) => is === 'plant') &&
      p[t]?.is === 'word' &&
      !/^(?:seed|pot|waste|rot|ruin|wall|dogs?|compost|bin|heap|tip|sleep|mush)$/.test(
        wordAt(p, /^(?:the|my|our)$/.test(wordAt(p, t)) ? t + 1 : t),
      ),
    phrasings: ['let 3 Salt Harrier go to Doreen', 'let two of my Salt Harrier go to the chapel sale'],
    mustNot: ['let 3 Salt Harrier go to seed', 'let 3 Salt Harrier go to the dogs'],
  },
];
