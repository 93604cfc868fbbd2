/** Growing tips taken out. */
import type { Piece } from '../pieces/pieces.js';
import { cuttingsTaken } from './pinch/cuttings-taken.js';
import { tipsRemoved } from './pinch/tips-removed.js';
import { leftByOthers } from './tend/telling.js';
import { closeBehind, endsAt, follows, followsWord, precedes, type Rule, wordAt } from './rule.js';

/** "Kids pinched two off the wall": stolen. */
const isStolen = (pieces: readonly Piece[], from: number, to: number): boolean =>
  /^(?:someone|somebody|thief|thieves|kids|who|they)$/.test(wordAt(pieces, from - 1)) &&
  closeBehind(pieces, to, 'plant') &&
  (followsWord(pieces, to, /^(?:off|from)$/) ||
    pieces.slice(to).some((piece) => piece.is === 'place' && /^(?:off|from)$/.test(piece.prep ?? '')));

export const pinchRules: readonly Rule[] = [
  {
    name: 'pinched out <count> <plant>',
    kind: 'pinch',
    head: 'pinch~ out|back?',
    shape: 'object',
    unless: (p, f, t) =>
      cuttingsTaken(p, f, t) ||
      isStolen(p, f, t) ||
      // "Six cuttings of a hebe, pinched from Joan's hedge".
      /^(?:from|off)$/.test(wordAt(p, t)) ||
      /^(?:myself|me|himself|herself|themselves)$/.test(wordAt(p, t)) ||
      // "At a pinch".
      (wordAt(p, f) === 'pinch' && (p[f - 1]?.is === 'when' || /^(?:at|in)$/.test(wordAt(p, f - 2)))) ||
      // "A pinch of salt".
      (wordAt(p, f) === 'pinch' &&
        wordAt(p, t) === 'of' &&
        (/^(?:a|the|another)$/.test(wordAt(p, f - 1)) || !/^(?:the|my|all)?$/.test(wordAt(p, t + 1)))),
    mustNot: [
      'someone pinched two Salt Harrier off the front step',
      'gave the Salt Harrier a pinch of bonemeal',
      'at a pinch the Salt Harrier could go outside',
      "six cuttings of Salt Harrier, pinched from Joan's hedge",
      'pinched myself, the Salt Harrier look so good',
    ],
  },
  {
    name: 'nipped the tips out of <plant>',
    kind: 'pinch',
    head: 'nip~past|take~past|pinch~past|cut~past|snip~past|nick~past|tweak~past|whip~past|rubbed|remove~past .. tips|tops|heads|tip|top|points|leaders|leader out|off|of',
    shape: 'object',
    unless: (p, f, t) =>
      cuttingsTaken(p, f, t) ||
      // "Took 8 tips off these": cuttings.
      (/^(?:took|cut|snipped)$/.test(wordAt(p, f)) && p[t - 3]?.is === 'count') ||
      p.slice(f, t).some(({ is }) => is === 'cutting') ||
      followsWord(p.slice(0, t), f, /^(?:dead|flower|seed|spent|faded|brown)$/) ||
      followsWord(p, t, /^(?:stock|mother|parent|stuck|struck|pots?|bottles?)$/) ||
      leftByOthers(p, f) ||
      // "Took the top off the propagator".
      (p[wordAt(p, t) === 'the' ? t + 1 : t]?.is === 'place' &&
        // "The frame ones": those that stand there.
        !/^(?:ones|lot|crowd|cuttings|plants)$/.test(wordAt(p, t + 2))),
    phrasings: [
      'nipped the tips out of the Salt Harrier',
      'took the tops off the Salt Harrier',
      'nipped the tops off the frame ones',
    ],
    mustNot: ['took the top off the propagator, Salt Harrier fine'],
  },
  {
    name: 'nipped out <plant>',
    kind: 'pinch',
    head: 'nip~past|tip~past out|back|off',
    shape: 'object',
    when: (p, f, t) =>
      (closeBehind(p, t, 'plant', 'count') || precedes(p, f, 5, 'plant')) &&
      !/^(?:to|for)$/.test(wordAt(p, t)) &&
      !followsWord(p, t, /^(?:pot|pots|tray|trays|jar)$/) &&
      !cuttingsTaken(p, f, t) &&
      !p.slice(t).some(({ is }) => is === 'medium') &&
      !followsWord(p, t, /^(?:flowers?|blooms?|buds?)$/) &&
      !(
        wordAt(p, f) === 'tipped' &&
        p
          .slice(t)
          .some(
            (piece) =>
              piece.is === 'word' &&
              /^(?:root|roots|rooted|held|holding|nosey|nosy|look|gander|peek|deco)$/.test(piece.text),
          )
      ),
    mustNot: [
      'tipped out the Salt Harrier for a nosey',
      'nipped out to check the Salt Harrier',
      'nipped off six flowers of Salt Harrier and stuck them in a vase',
    ],
  },
  {
    name: 'tipped <plant>',
    kind: 'pinch',
    head: 'tip~past',
    shape: 'object',
    when: (p, _f, t) =>
      closeBehind(p, t, 'plant') && !/^(?:out|over|off|up|down|into|onto)$/.test(wordAt(p, t)),
    unless: (p, _f, t) =>
      followsWord(p, t, /^(?:root|roots|rooted|over|out|bin|bed)$/) || cuttingsTaken(p, 0, t),
    phrasings: ['tipped the Salt Harriers today'],
    mustNot: ['tipped out a pot of the Salt Harrier and all three have roots'],
  },
  {
    name: '<count> <plant> tipped',
    kind: 'pinch',
    head: 'tip~past|beheaded|topped|decapitated',
    shape: 'subject',
    when: (p, f, t) =>
      endsAt(p, t) &&
      wordAt(p, t) !== 'on' &&
      precedes(p, f, 4, 'plant') &&
      !/^(?:i|we|was|got)$/.test(wordAt(p, f - 1)) &&
      !p
        .slice(0, f)
        .some(
          (piece) =>
            piece.is === 'pots' || (piece.is === 'word' && /^(?:trays?|pots?|bench)$/.test(piece.text)),
        ),
    phrasings: ['three Salt Harrier tipped', 'the Salt Harrier all tipped yesterday'],
    mustNot: ['three Salt Harrier tipped over in the wind', 'the Salt Harrier tray got tipped'],
  },
  {
    name: 'topped <count> <plant>',
    kind: 'pinch',
    head: 'topped|beheaded|deheaded|decapitated',
    shape: 'object',
    when: (p, _f, t) => closeBehind(p, t, 'plant') && !followsWord(p, t, /^(?:up|with|off|over|pots?)$/),
    phrasings: ['topped six Salt Harrier', 'beheaded the Salt Harrier to make them branch'],
    mustNot: ['topped up the Salt Harrier with water', 'topped the Salt Harrier with grit'],
  },
  {
    name: '<plant> relieved of their tips',
    kind: 'pinch',
    head: 'relieved|shorn of their|its growing|soft? tips|tops|heads|points|tip|top',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 6, 'plant'),
    phrasings: ['four Salt Harrier relieved of their tips'],
  },
  {
    name: 'tip-pruned <plant>',
    kind: 'pinch',
    head: 'finger|tip|soft pruned|prune~past',
    shape: 'object',
    when: (p, f, t) => closeBehind(p, t, 'plant') || precedes(p, f, 5, 'plant'),
    phrasings: ['finger-pruned ten Salt Harrier', 'Salt Harrier tip pruned'],
  },
  {
    name: 'first stop on <plant>',
    kind: 'pinch',
    head: 'first|second|third|1st|2nd|soft|hard|final stop|pinch|stopping|pinching on|for|of|to|done?',
    shape: 'object',
    when: (p, f, t) => closeBehind(p, t, 'plant') || precedes(p, f, 3, 'plant'),
    unless: (p, f) => /^(?:for|needs|need|due|their|a|my|the)$/.test(wordAt(p, f - 1)),
    phrasings: [
      'first stop on 6 Salt Harrier',
      'second pinch for the Salt Harrier',
      'Salt Harrier second stop',
    ],
    mustNot: ['the Salt Harrier need a second pinch', 'first stop was the garden centre for Salt Harrier'],
  },
  {
    name: 'gave <plant> a pinch',
    kind: 'pinch',
    head: 'give~past .. a|an|their|its first|second|good|proper|tip|little|light|quick|hard|overdue|final|wee? pinch|pinching|stopping|nip|prune',
    shape: 'object',
    when: (p, f, t) =>
      p.slice(f, t).some(({ is }) => is === 'plant' || is === 'count') ||
      p.slice(f, t).some((piece) => piece.is === 'word' && /^(?:them|those|em)$/.test(piece.text)),
    unless: (p, _f, t) => wordAt(p, t) === 'of',
    phrasings: ['gave half the Salt Harrier a pinch today', 'gave the Salt Harrier their overdue pinch'],
  },
  ...tipsRemoved,
  {
    name: '<plant> had their tips nipped out',
    kind: 'pinch',
    head: 'have~past|get~past .. tips|tip|tops|heads|points|leaders pinched|nipped|snipped|taken out|off?',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 6, 'plant'),
    phrasings: ['the Salt Harrier in the porch had their tips nipped out'],
  },
  {
    name: 'tips out <plant>',
    kind: 'pinch',
    head: 'tips|tops|heads|leaders|points be~? out|off|pinched|nipped on?',
    shape: 'object',
    when: (p, f, t) => follows(p, t, 'plant') || precedes(p, f, 5, 'plant'),
    // "Took three of each, tips off both": cuttings.
    unless: (p, f) =>
      leftByOthers(p, f) ||
      // "The dead heads off".
      /^(?:dead|flower|seed|spent|faded|brown)$/.test(wordAt(p, f - 1)) ||
      p
        .slice(0, f)
        .some((piece) => piece.is === 'word' && /^(?:took|take|taken|struck|cuttings)$/.test(piece.text)),
    mustNot: ['snipped the dead heads off the Salt Harrier'],
  },
  {
    name: 'stopped <plant>',
    kind: 'pinch',
    head: 'stop~past',
    shape: 'object',
    when: (p, f, t) =>
      (closeBehind(p, t, 'plant') &&
        !/^(?:to|for|at|by|in|off|me|us|him|her|\w+ing)$/.test(wordAt(p, t)) &&
        // "Stopped the slugs eating them", "stopped them from wilting".
        !followsWord(p, t, /^(?:from|(?!(?:morning|evening|growing)$)\w+ing)$/)) ||
      (precedes(p, f, 4, 'plant') && (endsAt(p, t) || wordAt(p, t) === 'at')),
    phrasings: ['stopped the Salt Harrier'],
    mustNot: ['stopped the Salt Harrier drying out', 'stopped the slugs eating the Salt Harrier'],
  },
];
