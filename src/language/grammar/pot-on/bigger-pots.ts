/** Potting on told by the pots: "done into bigger pots", "new pots all round", "a 7cm pot each for the Salt Harrier". */
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, endsAt, follows, precedes, type Rule, wordAt } from '../rule.js';
import { isWhole } from '../stand-ins.js';

/** Behind a plant and no verb, and of all of them. */
const isAllRound = (pieces: readonly Piece[], from: number, to: number): boolean =>
  pieces.slice(0, from).some(({ is }) => is === 'plant') &&
  pieces.slice(from, to).some(isWhole) &&
  endsAt(pieces, to) &&
  !pieces.slice(0, from).some((piece) => piece.is === 'word' && piece.verb !== undefined);

export const biggerPots: readonly Rule[] = [
  {
    name: 'upsized <plant>',
    kind: 'potOn',
    head: 'upsize~past|uppotted|upped',
    shape: 'object',
    when: (p, f, t) =>
      /^up/.test(wordAt(p, f)) &&
      (wordAt(p, f) !== 'upped' || p[t]?.is === 'size' || follows(p, t, 'size')) &&
      (closeBehind(p, t, 'plant') || precedes(p, f, 5, 'plant')),
    phrasings: [
      'finally got the Salt Harrier upsized',
      'up-potted four Salt Harrier',
      'uppotted the Salt Harrier',
    ],
  },
  {
    name: 'tubed <count> <plant>',
    kind: 'potOn',
    head: 'tub~past|tube~past',
    shape: 'object',
    when: (p, _f, t) =>
      !closeBehind(p, t, 'medium') &&
      (closeBehind(p, t, 'plant', 'count') || /^(?:em|them|those)$/.test(wordAt(p, t))),
    phrasings: ['tubed all the Salt Harrier'],
    mustNot: ['tubed some compost'],
  },
  {
    name: '<plant> done into bigger pots',
    kind: 'potOn',
    head: 'into|in|to more|some|nice|the|their? bigger|larger|big|individual|separate|proper|single pots|pot|ones|homes',
    shape: 'subject',
    when: (p, f) =>
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      p
        .slice(0, f)
        .some(
          (piece) =>
            (piece.is === 'word' &&
              /^(?:done|put|popped|moved|gone|went|got|stuck|shifted|upgraded|rehoused|now|all)$/.test(
                piece.text,
              )) ||
            isWhole(piece),
        ),
    unless: (p) =>
      p.some(
        (piece) =>
          piece.is === 'word' && /^(?:cuttings?|water|watered|look|looking|already)$/.test(piece.text),
      ),
    phrasings: [
      'five Salt Harrier moved up to the big pots',
      'Salt Harrier all done into bigger pots',
      'I have put four Salt Harrier in more big pots',
    ],
    mustNot: ['the Salt Harrier look good in bigger pots', 'the Salt Harrier should go into bigger pots'],
  },
  {
    name: '<plant>: new pots all round',
    kind: 'potOn',
    head: 'new|bigger|larger|fresh bigger|larger? pots|pot for? <count> round?',
    shape: 'subject',
    when: isAllRound,
    phrasings: ['Salt Harrier: new bigger pots all round', 'Salt Harrier, bigger pots for all'],
    mustNot: ['the Salt Harrier need new pots all round'],
  },
  {
    name: 'singled <count> <plant> into <medium>',
    kind: 'potOn',
    head: 'singled into|up|in',
    shape: 'object',
    when: (p, f, t) => follows(p, t, 'plant', 'medium', 'pots') || precedes(p, f, 4, 'plant'),
    phrasings: ['eight Salt Harrier singled into multipurpose', 'singled up the Salt Harrier'],
    mustNot: ['singled out the Salt Harrier for praise'],
  },
  {
    name: 'bagged up <count> <plant> into planter bags',
    kind: 'potOn',
    head: 'bag~past up|on .. into|in planter|grow|poly|bigger|black? bags',
    shape: 'object',
    phrasings: ['bagged up 12 Salt Harrier into planter bags'],
    mustNot: ['bagged up 12 Salt Harrier for Doreen'],
  },
  {
    name: 'given a pot of their own',
    kind: 'potOn',
    head: 'give~past|given|got|have~ a|each? <pots>|pot of their|its own',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 5, 'plant'),
    phrasings: ['all nine Salt Harrier given a pot of their own'],
  },
  {
    name: 'from the tray to <size>, <plant>',
    kind: 'potOn',
    head: 'from|out of? the|their? tray|trays|cells|plugs|modules|seedtray to|into <size>',
    shape: 'object',
    when: (p, f, t) => f === 0 && follows(p, t + 1, 'plant', 'count'),
    phrasings: ['from the tray to 8cm pots, five Salt Harrier'],
  },
  {
    name: '<plant> given more room, <size>',
    kind: 'potOn',
    head: 'given|got|have|gave .. more|extra room|space',
    shape: 'subject',
    when: (p, f, t) => precedes(p, f, 4, 'plant') && p.slice(t, t + 3).some(({ is }) => is === 'size'),
    phrasings: ['the Salt Harrier have been given more room, one litre pots'],
    mustNot: ['the Salt Harrier have more room now'],
  },
  {
    name: 'got <plant> out of the tray and into <size>',
    kind: 'potOn',
    head: 'get~past|took|lifted|tipped|knock~past .. out of .. into <size>',
    shape: 'object',
    when: (p, f, t) => p.slice(f, t).some(({ is }) => is === 'plant') || precedes(p, f, 4, 'plant'),
    unless: (p) => p.some((piece) => piece.is === 'word' && /^(?:cuttings?|tips?|slips)$/.test(piece.text)),
    phrasings: ['got the Salt Harrier out of the tray and into 9cm'],
    mustNot: ['took six cuttings out of the Salt Harrier and into 9cm'],
  },
  {
    name: 'stuck the <plant> in <size>',
    kind: 'potOn',
    head: 'stick~past the|my|all <plant> in|into <size>',
    shape: 'object',
    unless: (p) => p.some((piece) => piece.is === 'word' && /^cuttings?$/.test(piece.text)),
    phrasings: ['stuck the Salt Harrier in 140mm pots'],
    mustNot: ['stuck the Salt Harrier cuttings in 9cm pots'],
  },
  {
    name: '<plant>: <size> all round',
    kind: 'potOn',
    head: '<size> for? <count> round?',
    shape: 'subject',
    when: isAllRound,
    unless: (p) => p.some((piece) => piece.is === 'word' && /^cuttings?$/.test(piece.text)),
    phrasings: ['Salt Harrier: 1 litre pots all round'],
    mustNot: ['six Salt Harrier cuttings, 9cm pots all round'],
  },
  {
    name: 'moved <plant> up a size',
    kind: 'potOn',
    head: 'move~past|go~past|shift~past|take~past|bring~past|put~past .. up|on a|one|<count>|<pots> size|sizes',
    shape: 'object',
    when: (p, f, t) => p.slice(f, t).some(({ is }) => is === 'plant' || is === 'count'),
    phrasings: ['moved the Salt Harrier up a size, litre pots', 'moved two Salt Harrier up a pot size'],
  },
  {
    name: '<plant> each in a <size> now',
    kind: 'potOn',
    head: 'each|singly|individually in|into a|its|their|own? <pots>|<size>',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 5, 'plant') &&
      p.slice(f, t + 1).some(({ is }) => is === 'size') &&
      (/^(?:now|today)$/.test(wordAt(p, t)) ||
        /^(?:now|today)$/.test(wordAt(p, t + 1)) ||
        p.slice(0, f).some((piece) => /^now$/.test(piece.is === 'word' ? piece.text : ''))),
    unless: (p) =>
      p.some((piece) => piece.is === 'word' && /^(?:cuttings?|took|struck|stuck)$/.test(piece.text)),
    phrasings: ['twelve Salt Harrier each in a 3 inch pot now'],
    mustNot: ['twelve Salt Harrier cuttings each in a 3 inch pot now'],
  },
  {
    name: '<plant> moved on a size',
    kind: 'potOn',
    head: 'move~past|go~past|step~past|bump~past|pot~past|gone up|on a|<count>|<pots> size|sizes',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 5, 'plant'),
    phrasings: ['Salt Harrier moved on a size', 'three Salt Harrier went up one size'],
  },
  {
    name: '<plant> up into the next size pot',
    kind: 'potOn',
    head: 'up|into|on|to into|to? the next size pot|pots|up',
    shape: 'subject',
    when: (p, f) =>
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      !p.some((piece) => piece.is === 'word' && /^(?:ready|need|needs|due|want|wants)$/.test(piece.text)),
    phrasings: ['three Salt Harrier up into the next size pot'],
    mustNot: ['the Salt Harrier need to go up to the next size pot'],
  },
  {
    name: 'individual <size> for <plant>',
    kind: 'potOn',
    head: 'individual|new|bigger|own|single <size> for all? the|my?',
    shape: 'object',
    faint: true,
    when: (p, f, t) => f === 0 && closeBehind(p, t, 'plant'),
    phrasings: ['individual 7cm pots for all the Salt Harrier'],
    mustNot: ['bought new 7cm pots for the Salt Harrier'],
  },
];
