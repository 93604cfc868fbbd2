/** Plants that somebody fetched or was let have, told from their side: "Sal came for her 4", "Doreen's taken two". */
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { asTheyWanted, CUTTINGS, isBuyer, isCarried, isFirmAt } from '../taken-away.js';
import { PESTS } from '../loss/pests.js';
import { FOLK, KIN, pastPerson, WORD_NAMES } from '../../mood/somebody-else.js';
import { GROUP } from '../../pieces/meets-on.js';
import { isKnown } from '../../row/lexicon.js';
import { cameAndTook, isSomeones } from '../other-people.js';

/** "… for me". */
const isForMe = (pieces: readonly Piece[], from: number): boolean =>
  pieces
    .slice(from)
    .some((_, n) => wordAt(pieces, from + n) === 'for' && /^(?:me|us)$/.test(wordAt(pieces, from + n + 1)));

/** Who is told to have had something: somebody, and never the grower. */
export function isSomebody(pieces: readonly Piece[], head: number): boolean {
  if (isFirmAt(pieces, head - 1)) return true;
  // "Birgit, my colleague, had two".
  const aside =
    pieces[head - 1]?.is === 'break'
      ? pieces.findLastIndex(({ is }, at) => at < head - 1 && is === 'break')
      : -1;
  if (aside > 0 && pastPerson(pieces, aside + 1)?.to === head - 1) return isSomebody(pieces, aside);
  let from = head;
  while (from > 0 && head - from < 5 && pieces[from - 1]?.is === 'word' && !isJoint(pieces, from - 1)) from--;
  const words = pieces.slice(from, head).map((_, n) => wordAt(pieces, from + n));
  if (words.length === 0 || words.some((word) => NO_OTHER.test(word))) return false;
  return words.some(
    (word) =>
      KIN.test(word) || FOLK.test(word) || GROUP.test(word) || WORD_NAMES.test(word) || !isKnown(word),
  );
}

const isJoint = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:and|but|then|while|so)$/.test(wordAt(pieces, at));
const NO_OTHER =
  /^(?:i|we|i've|we've|it|they|them|which|that|who|you|slugs?|snails?|frost|mice|never|not|haven't|hasn't|to)$/;
export const fetched: readonly Rule[] = [
  {
    name: '<recipient> took <count> <plant> home',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'take~past|have~past|collect~past|buy~past|carry~past .. home|away',
    shape: 'object',
    how: 'given',
    when: (p, f, t) =>
      p.slice(f, t).some(({ is }) => is === 'plant' || is === 'count') &&
      f > 0 &&
      !/^(?:i|we|and|then|also)$/.test(wordAt(p, f - 1)),
  },
  {
    name: '<recipient> took home <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'take~past|carry~past|cart~past home|away|off',
    shape: 'object',
    when: (p, f, t) =>
      isSomebody(p, f) &&
      closeBehind(p, t, 'count') &&
      closeBehind(p, t, 'plant') &&
      !followsWord(p, t, CUTTINGS),
    phrasings: ['Doreen took home six Salt Harrier', 'the volunteers took away six of the Salt Harrier'],
    mustNot: ['Doreen took home six Salt Harrier cuttings', 'took off six Salt Harrier'],
  },
  {
    name: '<recipient> only took <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'only|just took',
    shape: 'object',
    when: (p, f, t) => isSomebody(p, f) && p[t]?.is === 'count' && closeBehind(p, t, 'plant'),
    unless: (p, _f, t) => followsWord(p, t, CUTTINGS),
    phrasings: [
      'my sister only took two of the Salt Harrier',
      'Doreen just took one Salt Harrier',
      'Abbery Barn only took 2 Salt Harrier',
    ],
    mustNot: [
      'only took two Salt Harrier',
      'I only took two Salt Harrier',
      'Doreen only took two Salt Harrier cuttings',
    ],
  },
  {
    name: '<recipient> picked up their <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'pick~past|collect~past|fetch~past|had|claimed up? her|his|their <count>',
    shape: 'object',
    when: (p, f, t) => isSomebody(p, f) && closeBehind(p, t, 'plant'),
    phrasings: [
      'Doreen picked up her 8 Salt Harrier',
      'Mr Abbery collected his six Salt Harrier',
      'Doreen had her four Salt Harrier',
    ],
    mustNot: ['I collected her 8 Salt Harrier'],
  },
  {
    name: '<recipient> came for their <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'come~past|called for her|his|their <count>',
    shape: 'object',
    when: (p, f, t) => f > 0 && !/^(?:i|we)$/.test(wordAt(p, f - 1)) && closeBehind(p, t, 'plant'),
    phrasings: ['Sal came for her 4 Salt Harrier'],
  },
  {
    name: '<recipient> came and took <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'take~past',
    shape: 'object',
    when: (p, f, t) => cameAndTook(p, f) && p[t]?.is === 'count' && closeBehind(p, t, 'plant'),
    unless: (p, _f, t) => followsWord(p, t, /^(?:cuttings?|tips?|slips?)$/),
    phrasings: ['Sal came for her 4 Salt Harrier and took 2 Tallow Bell as well'],
    mustNot: ['came home and took 4 Salt Harrier', 'I came in and took 4 Salt Harrier'],
  },
  {
    name: '<recipient> has taken <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'taken|had|nabbed|scrounged',
    shape: 'object',
    when: (p, f, t) => isSomeones(wordAt(p, f - 1)) && p[t]?.is === 'count' && closeBehind(p, t, 'plant'),
    unless: (p, _f, t) => followsWord(p, t, /^(?:cuttings?|tips?|slips?)$/),
    phrasings: ["Doreen's taken two Salt Harrier"],
    mustNot: ["that's taken two Salt Harrier"],
  },
  {
    name: 'a customer took <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'take~past|have~past|pick~past|grab~past|buy~past|snap~past|came|called up|for?',
    shape: 'object',
    when: (p, f, t) =>
      isBuyer(p, f) &&
      ((p[t]?.is === 'count' && closeBehind(p, t, 'plant')) ||
        // "Took a Salt Harrier".
        (/^(?:took|bought)$/.test(wordAt(p, f)) && /^an?$/.test(wordAt(p, t)) && p[t + 1]?.is === 'plant')),
    unless: (p, f, t) =>
      followsWord(p, t, CUTTINGS) ||
      followsWord(p, t, /^(?:his|her|their|own)$/) ||
      // "From my friend came three plants": those came in.
      (/^(?:came|called)$/.test(wordAt(p, f)) && wordAt(p, t - 1) !== 'for') ||
      // "Picked up two for me": bought for us.
      (wordAt(p, f) !== 'took' && isForMe(p, t)) ||
      // "The neighbour has two in flower": seen there.
      (/^ha(?:d|s|ve)$/.test(wordAt(p, f)) && KIN.test(wordAt(p, f - 1))),
    phrasings: [
      'customer took 6 Salt Harrier',
      'a visitor picked up 6 Salt Harrier',
      'customer came for 6 Salt Harrier',
      'my neighbour took a Salt Harrier',
      'my sister took 4 Salt Harrier',
      'the Rotary took six Salt Harrier',
      'Abbery Barn took six Salt Harrier',
      'gave Edna two Tallow Bell and she took six Salt Harrier',
      'the allotment society had 6 Salt Harrier',
    ],
    mustNot: [
      'my sister took 4 Salt Harrier cuttings',
      'my brother has taken six of his own Salt Harrier',
      'the neighbour had two Salt Harrier flowering',
      'my friend has four Salt Harrier in flower already',
      'my neighbour picked up two Salt Harrier for me',
      'a customer took 3 cuttings of Salt Harrier',
      'a customer wanted 6 Salt Harrier',
      'the Rotary took six cuttings of the Salt Harrier',
      'the job took six Salt Harrier pots',
      'from my friend came yesterday 3 rooted Salt Harrier',
    ],
  },
  {
    name: '<count> <plant> collected by <recipient>',
    kind: 'dispatch',
    head: 'collect~past|buy~past|claim~past|fetch~past|snap~past|pick~past|nab~past|bag~past|scoop~past|snaffle~past up? by',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 6, 'count') &&
      precedes(p, f, 6, 'plant') &&
      p[t]?.is === 'word' &&
      !/^(?:hand|me|us|now|then|mistake|the|lunch|tea|noon|midday|frost|slugs?|snails?|mice|birds|pigeons)$/.test(
        wordAt(p, t),
      ),
    phrasings: [
      '10 Salt Harrier collected by Doreen',
      '10 Salt Harrier snapped up by Doreen',
      '6 Salt Harrier bought by Edna yesterday',
    ],
    mustNot: ['10 Salt Harrier bought by me', '6 Salt Harrier nabbed by slugs'],
  },
  {
    name: 'collected by <recipient>: <count> <plant>',
    kind: 'dispatch',
    head: 'collected|bought|picked|fetched up? by',
    shape: 'object',
    when: (p, f, t) =>
      f === 0 &&
      p[t]?.is === 'word' &&
      !/^(?:me|us|hand|mistake|post|mail|phone|van|courier|slugs)$/.test(wordAt(p, t)) &&
      p.slice(t).some(({ is }) => is === 'count') &&
      p.slice(t).some(({ is }) => is === 'plant'),
    phrasings: ['collected by Hexley Nurseries 80 Salt Harrier'],
    mustNot: ['collected by me, 80 Salt Harrier', 'bought by mistake: 3 Salt Harrier'],
  },
  {
    name: '<recipient> had <count> <plant> for their own',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'have~past|take~past',
    shape: 'object',
    when: (p, f, t) =>
      f > 0 &&
      p[f - 1]?.is === 'word' &&
      !/^(?:i|we|i've|we've|have|had|has|then|and|also|just|it|that|they|you)$/.test(wordAt(p, f - 1)) &&
      p[/^(?:only|just)$/.test(wordAt(p, t)) ? t + 1 : t]?.is === 'count' &&
      closeBehind(p, t, 'plant') &&
      (followsWord(p, t, /^(?:their|her|his)$/) || asTheyWanted(p, t)),
    phrasings: [
      "Father Abbery took only 1 Salt Harrier yesterday, that's all he wanted",
      'the school had 5 Salt Harrier for their raised bed',
      'Doreen took two of the Salt Harrier for her mother',
    ],
  },
  {
    name: '<recipient> went off with <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'go~past|make~past|leave~past|walked|drove|skipped off|away|home? happy|delighted|chuffed|laden? with',
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t, 'count') &&
      closeBehind(p, t, 'plant') &&
      f > 0 &&
      !/^(?:i|we|it|they)$/.test(wordAt(p, f - 1)) &&
      // "A monkey made off with two".
      !PESTS.includes(wordAt(p, f - 1)) &&
      !p.slice(t).some((piece) => piece.is === 'word' && /^(?:gave|sold)$/.test(piece.text)),
    phrasings: ['Doreen went home with three of the Salt Harrier'],
    mustNot: ['went home with a cold', 'Doreen came round with six Salt Harrier'],
  },
  {
    name: '<recipient> collected <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'collect~past',
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t, 'plant') &&
      f > 0 &&
      p[f - 1]?.is === 'word' &&
      (!/^(?:i|we|and|then|just|have|also|i've|we've)$/.test(wordAt(p, f - 1)) || cameAndTook(p, f)) &&
      !isCarried(p, f),
  },
];
