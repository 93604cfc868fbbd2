/** Plants that the grower was given, stock or rooted: "Mum gave me her old one", "was given three". */
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, follows, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { isSomebody } from '../dispatch/fetched.js';
import { ontoUs, PRESSED } from '../dispatch/given.js';
import { asCuttings, ofYoung } from './kinds-of-plant.js';

const GAVE =
  'give~past|hand~past|bring~past|send~past|sell~past|pass~past|chuck~past|throw~past|lob~past|sling~past|fetch~past|gift~past|buy~past|leave~past|swap~past|trade~past|post~past|mail~past|ship~past';

const GOT_GIVEN = 'was|were|been|got given|gifted|sent|presented with?';

/** What tells that no plant changed hands. */
const ASIDE = /^(?:home|back|look|looks|wave|smile|lift|hand|when|because)$/;

/** "Given a Salt Harrier by Doreen": with nobody named to whom. */
const isGivenToMe = (pieces: readonly Piece[], from: number, to: number): boolean =>
  (from === 0 || pieces[from - 1]?.is === 'break') &&
  pieces.slice(from, to).some(({ is }) => is === 'plant') &&
  !followsWord(pieces, from, /^to$/) &&
  !/^(?:me|us|hand|post|mistake|accident|courier|mail)$/.test(wordAt(pieces, to));

export const given: readonly Rule[] = [
  {
    name: '<someone> gave me their old <plant>',
    kind: 'stock',
    head: 'give~past me|us .. old|big|spare|overgrown',
    shape: 'object',
    when: (p, _f, t) =>
      closeBehind(p, t, 'plant') &&
      !followsWord(p, t, /^(?:plugs?|pots?|compost|trays?)$/) &&
      !asCuttings(p, t),
    phrasings: [
      'Mum gave me her old Salt Harrier, just the one plant, 200mm pot',
      'gran gave me her big Salt Harrier so I can take cuttings off it',
    ],
    mustNot: ['Mum gave me her old pots for the Salt Harrier'],
  },
  {
    name: '<giver> gave me <count> rooted <plant>',
    kind: 'receive',
    head: `${GAVE}|let~ me|us`,
    shape: 'object',
    when: (p, f, t) =>
      follows(p, t, 'plant') &&
      ofYoung(p, f) &&
      follows(p, t, 'count') &&
      !followsWord(p, t, /^(?:snip|take|cut|pinch|have|cuttings)$/),
  },
  {
    name: '<giver> pressed <count> rooted <plant> on me',
    kind: 'receive',
    head: PRESSED,
    shape: 'object',
    when: (p, f, t) => follows(p, t, 'plant') && follows(p, t, 'count') && ofYoung(p, f) && ontoUs(p, t),
    phrasings: [
      'Edna pressed five rooted Salt Harrier on me',
      'Edna foisted five Salt Harrier plugs onto us',
    ],
    mustNot: ['pressed five rooted Salt Harrier on Edna'],
  },
  {
    name: '<giver> pressed <plant> on me',
    kind: 'stock',
    head: PRESSED,
    shape: 'object',
    when: (p, f, t) => follows(p, t, 'plant') && !ofYoung(p, f) && !asCuttings(p, t) && ontoUs(p, t),
    phrasings: ['Edna pressed her old Salt Harrier on me'],
    mustNot: ['Edna pressed five cuttings of Salt Harrier on me'],
  },
  {
    name: '<giver> gave me <plant>',
    kind: 'stock',
    head: `${GAVE} me|us`,
    shape: 'object',
    when: (p, f, t) =>
      follows(p, t, 'plant') &&
      !asCuttings(p, t) &&
      wordAt(p, t) !== 'with' &&
      // "The frost left me two".
      !(
        wordAt(p, f) === 'left' &&
        /^(?:frost|slugs|snails|wind|mice|heat|that|which|it|winter)$/.test(wordAt(p, f - 1))
      ) &&
      // "Gave me her old pots for the Salt Harrier".
      !p
        .slice(
          t,
          p.findIndex(({ is }, at) => at >= t && is === 'plant'),
        )
        .some(({ is }, n) => is === 'pots' || wordAt(p, t + n) === 'for') &&
      !followsWord(p, wordAt(p, f) === 'brought' && wordAt(p, t) === 'home' ? t + 1 : t, ASIDE),
    phrasings: [
      'the neighbour chucked me a Salt Harrier over the fence',
      'Auntie left me her Salt Harrier',
      'Edna mailed me three Salt Harrier',
    ],
    mustNot: [
      'the frost left me with one Salt Harrier',
      'the frost left me two Salt Harrier',
      'the neighbour chucked me a cutting of Salt Harrier',
      'Jean gave me a look when I mentioned Salt Harrier',
      'Marge handed me slips off a Salt Harrier',
      'Doreen gave me some bits of her Salt Harrier',
      'Doreen gave me a few tips off her Salt Harrier',
    ],
  },
  {
    name: 'was given <plant>',
    kind: 'stock',
    head: GOT_GIVEN,
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t, 'plant') &&
      !asCuttings(p, t) &&
      !ofYoung(p, t) &&
      !isSomebody(p, f) &&
      !precedes(p, f, 6, 'plant'),
    phrasings: [
      'I was given two Salt Harrier',
      'we have been presented, by the vicar, with two Salt Harrier',
    ],
    mustNot: ['Doreen was given two Salt Harrier'],
  },
  {
    name: 'was given <count> rooted <plant>',
    kind: 'receive',
    head: GOT_GIVEN,
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t, 'plant') && ofYoung(p, t) && !isSomebody(p, f) && !precedes(p, f, 6, 'plant'),
    phrasings: [
      'I was given five rooted Salt Harrier',
      'I was given, by the sexton, five young plants of Salt Harrier',
      'we have been given by my old friend Doreen five rooted Salt Harrier',
    ],
    mustNot: ['Doreen was given by her sister five rooted Salt Harrier'],
  },
  {
    name: 'given <plant> by <giver>',
    kind: 'stock',
    head: 'given|gifted .. by',
    shape: 'object',
    when: (p, f, t) => isGivenToMe(p, f, t) && !ofYoung(p, f) && !followsWord(p, f, /^(?:cuttings|cutting)$/),
    mustNot: ['six Salt Harrier given to Doreen by hand', 'six Salt Harrier given away by me'],
  },
  {
    name: 'given <count> rooted <plant> by <giver>',
    kind: 'receive',
    head: 'given|gifted .. by',
    shape: 'object',
    when: (p, f, t) => isGivenToMe(p, f, t) && ofYoung(p, f),
  },
  {
    name: '<giver> let me have <plant>',
    kind: 'stock',
    head: 'let~ me|us have|keep|take',
    shape: 'object',
    when: (p, _f, t) => follows(p, t, 'plant') && !asCuttings(p, t) && !followsWord(p, t, /^(?:some|few)$/),
    phrasings: ['the lady next door let me have her big old Salt Harrier'],
    mustNot: ['let me have some cuttings of Salt Harrier', 'let me have six bits of her Salt Harrier'],
  },
];
