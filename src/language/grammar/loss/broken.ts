/** Mishaps at the bench: "snapped two", "knocked a tray over", "let them dry out". */
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, endsAt, follows, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { counted } from './counted.js';
import { PESTS } from './pests.js';

/** Where the number of the plant straight before `from` stands, if it has one: "one of the Salt Harrier". */
const countedBefore = (pieces: readonly Piece[], from: number): number =>
  pieces[from - 1]?.is !== 'plant' ? -1 : /^(?:the|my)$/.test(wordAt(pieces, from - 2)) ? from - 3 : from - 2;

/** A number of the plant straight before `from`, or one of it. */
const isOne = (pieces: readonly Piece[], from: number): boolean =>
  pieces[countedBefore(pieces, from)]?.is === 'count' ||
  (pieces[from - 1]?.is === 'plant' && /^(?:a|an|another)$/.test(wordAt(pieces, from - 2)));

/** "The stake by one Salt Harrier": something else, told by the plants that it stands by. */
const isByThem = (pieces: readonly Piece[], from: number): boolean => {
  const count = countedBefore(pieces, from);
  return pieces[count]?.is === 'count' && /^(?:of|by|on|in|for|beside)$/.test(wordAt(pieces, count - 1));
};

/** "Slugs", "the frost": what kills plants, and so plants are what it killed. */
const killsPlants = (pieces: readonly Piece[], at: number): boolean => {
  const killer = wordAt(pieces, /^(?:the|a|that|last)$/.test(wordAt(pieces, at)) ? at + 1 : at);
  return (
    PESTS.includes(killer) || /^(?:frosts?|cold|heat|sun|mould|rot|botrytis|blackleg|drought)$/.test(killer)
  );
};

export const broken: readonly Rule[] = [
  {
    name: '<count> <plant> ruined',
    kind: 'loss',
    head: 'ruined|wrecked|squashed|smashed|trashed|flattened|crushed|trampled',
    shape: 'subject',
    when: (p, f, t) => precedes(p, f, 4, 'count') && endsAt(p, t),
    phrasings: ['dropped the tray, five Salt Harrier ruined', 'four of the Salt Harrier got flattened'],
  },
  {
    name: 'killed <count> <plant>',
    kind: 'loss',
    head: 'kill~past|murder~past|finish~past',
    shape: 'object',
    when: (p, f, t) => closeBehind(p, t, 'plant', 'count') && !/^finish/.test(wordAt(p, f)),
    // "Killed a load of slugs round the plants".
    unless: (p, _f, t) =>
      PESTS.includes(wordAt(p, t + (p[t + 1]?.is === 'count' ? 2 : 1))) ||
      /^(?:hour|time|afternoon|morning)$/.test(wordAt(p, t + 1)),
    mustNot: ['killed six slugs round the Salt Harrier'],
  },
  {
    name: '<count> <plant> killed by <something>',
    kind: 'loss',
    head: 'killed|murdered|destroyed|zapped|wrecked|finished off? by',
    shape: 'subject',
    when: (p, f, t) => precedes(p, f, 5, 'count') && (precedes(p, f, 5, 'plant') || killsPlants(p, t)),
    // Those that were killed are the slugs.
    unless: (p, f, t) =>
      /^(?:hand|me|us|torchlight|accident)$/.test(wordAt(p, t)) ||
      p.slice(0, f).some((_, at) => PESTS.includes(wordAt(p, at))),
    phrasings: [
      '7 Salt Harrier killed by frost',
      'four killed by slugs',
      'two of the Salt Harrier were destroyed by the dog',
    ],
    mustNot: ['Salt Harrier finished by lunchtime', 'six slugs killed by torchlight'],
  },
  {
    name: 'wiped out <count> <plant>',
    kind: 'loss',
    head: 'wipe~past out',
    shape: 'object',
    when: (p, _f, t) =>
      (p[t]?.is === 'plant' || p[t]?.is === 'count' || p[t + 1]?.is === 'plant') &&
      follows(p, t, 'plant') &&
      p.slice(t).some(({ is }) => is === 'count'),
    unless: (p, _f, t) => followsWord(p, t, /^(?:pots?|trays?|bleach|cloth|jeyes)$/),
    phrasings: ['botrytis wiped out nine Salt Harrier', 'wiped out: Salt Harrier, all nine, greenfly'],
    mustNot: [
      'wiped out the nine trays for the Salt Harrier',
      'wiped out all nine Salt Harrier pots with bleach',
    ],
  },
  {
    name: 'let <count> <plant> die',
    kind: 'loss',
    head: 'let~|leave~past .. dry|die|rot|freeze|wilt|shrivel|cook|fry',
    shape: 'object',
    // What dried out or wilted may live.
    unless: (p, f, t) =>
      /^(?:dry|wilt)$/.test(wordAt(p, t - 1)) &&
      (!p.slice(f, t).some(({ is }) => is === 'count') ||
        p
          .slice(t)
          .some(
            (piece) =>
              piece.is === 'word' &&
              /^(?:fine|ok|okay|recovered|recover|perked|survived|purpose)$/.test(piece.text),
          )),
    mustNot: ['let the Salt Harrier dry out, all fine after a soak'],
  },
  {
    name: 'snapped <count> <plant>',
    kind: 'loss',
    head: 'snap~past|break~past|squash~past|crush~past|smash~past|trample~past|behead~past',
    shape: 'object',
    cause: 'broken',
    unless: (p, f, t) =>
      // "Two tips all squashed in one pot": how close they stand.
      (/^(?:squash|crush)/.test(wordAt(p, f)) &&
        /^in(?:to)?$/.test(wordAt(p, t)) &&
        p[t + 1]?.is === 'pots') ||
      (p[f - 1]?.is === 'count' && /^(?:so|and|but)$/.test(wordAt(p, t))) ||
      (/^(?:had|has|have)$/.test(wordAt(p, f - 1)) && isByThem(p, f - 1)),
    when: (p, f, t) =>
      counted(p, f, t) ||
      // "Sat the can on two Salt Harrier, snapped clean off", "stepped on a Salt Harrier, squashed flat".
      (p[f - 1]?.is === 'break' &&
        isOne(p, f - 1) &&
        (endsAt(p, t) || endsAt(p, t + 1) || endsAt(p, t + 2))) ||
      /^it$/.test(wordAt(p, f - 1)) ||
      // No "snapped a cane staking them".
      (/^(?:a|an)$/.test(wordAt(p, t)) &&
        (p[t + 1]?.is === 'plant' ||
          p[t + 2]?.is === 'plant' ||
          /^(?:cutting|plant|stem|shoot)$/.test(wordAt(p, t + 1)))),
    mustNot: ['the stake by one Salt Harrier had snapped off', 'the label on two Salt Harrier had snapped'],
    phrasings: [
      'snapped five Salt Harrier',
      'dropped Salt Harrier and it broke',
      'one of the Salt Harrier had snapped off',
      'two Salt Harrier have broken off',
    ],
  },
  {
    name: 'knocked <count> <plant> over',
    kind: 'loss',
    head: 'knock~past over|off|down?',
    shape: 'object',
    cause: 'broken',
    when: (p, f, t) =>
      (closeBehind(p, t, 'count') || (/^(?:a|an|another)$/.test(wordAt(p, t)) && p[t + 1]?.is === 'plant')) &&
      // "Knocked three over and snapped two": what it came to.
      !p
        .slice(t)
        .some(
          (piece, n) =>
            piece.is === 'word' && /^(?:snapped|broke)$/.test(piece.text) && p[t + n + 1]?.is === 'count',
        ) &&
      (/^(?:over|off|down)$/.test(wordAt(p, t - 1)) || followsWord(p, t, /^(?:over|off|down|flying)$/)) &&
      f >= 0,
    mustNot: ['knocked on 12 Plum Gaiters to 1 litre'],
  },
  {
    name: '<count> <plant> knocked over',
    kind: 'loss',
    head: 'knock~past over|off|down',
    shape: 'subject',
    cause: 'broken',
    when: (p, f) =>
      precedes(p, f, 5, 'count') &&
      !p.slice(0, f).some((piece) => piece.is === 'word' && /^(?:i|wind|we)$/.test(piece.text)),
  },
  {
    name: '<count> broke',
    kind: 'loss',
    head: 'break~past|snap~past',
    shape: 'subject',
    cause: 'broken',
    when: (p, f, t) => p[f - 1]?.is === 'count' && /^(?:so|and|but)$/.test(wordAt(p, t)),
    phrasings: ['took 10 Salt Harrier, 2 broke so 8 in'],
  },
];
