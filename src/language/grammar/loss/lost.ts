/** Losses told as losses: "lost three", "losses: 3 Salt Harrier", "two short", "3 down". */
import type { Piece, PieceOf } from '../../pieces/pieces.js';
import { closeBehind, endsAt, follows, precedes, type Rule, wordAt } from '../rule.js';
import { causeAt, counted, isPlantPart } from './counted.js';

/** "Gone with the kids": who took them along. */
const TAKES = /^(?:kids|kid|children|boys|girls|lads|lasses|family|grandkids)$/;
const who = (pieces: readonly Piece[], at: number): string =>
  wordAt(pieces, /^(?:the|my|our|her|his)$/.test(wordAt(pieces, at)) ? at + 1 : at);

const allBefore = (pieces: readonly Piece[], from: number): boolean =>
  pieces.slice(0, from).some((piece) => piece.is === 'count' && 'whole' in piece.quantity);

const LOOKED = /^(?:checked|looked|inspected|examined|look|check|peeked|peered)$/;

/** "Lost three one at the football". */
const isMatch = (pieces: readonly Piece[], from: number): boolean =>
  pieces
    .slice(from, from + 6)
    .some((_, n) =>
      /^(?:football|cricket|rugby|hurling|netball|darts|bowls|match|raffle)$/.test(wordAt(pieces, from + n)),
    );

const isNil = (piece: Piece | undefined): boolean => piece?.is === 'count' && piece.quantity.value === 0;

export const lost: readonly Rule[] = [
  {
    name: 'losses: <count> <plant>',
    kind: 'loss',
    head: 'losses|loss|deaths|casualties|scrap|waste|wastage|failures|culls|dump|dead|binned',
    shape: 'object',
    when: (p, f, t) =>
      f === 0 &&
      p[t]?.is === 'break' &&
      p.slice(t).some(({ is }) => is === 'plant') &&
      p.slice(t).some(({ is }) => is === 'count'),
  },
  {
    name: '<plant> wastage <count>',
    kind: 'loss',
    head: 'wastage|losses|loss|deaths|casualties|failures|culls|culled|scrapped|write off|offs? so? far? <break>? <count>',
    shape: 'object',
    faint: true,
    when: (p, f, t) => precedes(p, f, 2, 'plant') && endsAt(p, t) && p[f - 1]?.is !== 'count',
    phrasings: ['SH1 wastage 6', 'Salt Harrier losses 3', 'Salt Harrier failures so far: 3'],
    mustNot: ['Salt Harrier wastage'],
  },
  {
    name: '<plant>: <count> failures',
    kind: 'loss',
    head: '<count> failures|failure|losses|loss|casualties|casualty|deaths|fatalities',
    shape: 'subject',
    when: (p, f, t) =>
      p.some(({ is }) => is === 'plant') &&
      (endsAt(p, t) || /^(?:in|among|amongst|with)$/.test(wordAt(p, t))) &&
      !/^(?:no|after|despite|of)$/.test(wordAt(p, f - 1)) &&
      !p
        .slice(0, f)
        .some(
          (piece) => piece.is === 'word' && /^(?:expect|expecting|allow|allowing|if|maybe)$/.test(piece.text),
        ),
    phrasings: ['Salt Harrier: two failures', 'two casualties among the Salt Harrier'],
    mustNot: ['no failures among the Salt Harrier', 'expect two failures in the Salt Harrier'],
  },
  {
    name: 'lost a cutting of <plant>',
    kind: 'loss',
    head: 'lose~past',
    when: (p, _f, t) => /^(?:a|another)$/.test(wordAt(p, t)) && /^(?:cutting|plant)$/.test(wordAt(p, t + 1)),
    shape: 'object',
  },
  {
    name: 'lost <count> <plant>',
    kind: 'loss',
    head: 'lose~past',
    shape: 'object',
    unless: (p, _f, t) =>
      (/^(?:my|hope|a|their|its|the)$/.test(wordAt(p, t)) && !follows(p, t, 'plant', 'count')) ||
      /^(?:track|count|sight|interest|heart|patience)$/.test(wordAt(p, t)) ||
      (wordAt(p, t) === 'for' && wordAt(p, t + 1) === 'words') ||
      // "We lost two nil": a match.
      (p[t]?.is === 'count' && (isNil(p[t + 1]) || isMatch(p, t))) ||
      // "Lost an hour to the paperwork".
      (/^(?:an|a|the|half|whole|my|all)$/.test(wordAt(p, t)) &&
        /^(?:hour|morning|afternoon|day|evening|weekend|week|glove|gloves|knife|secateurs|dibber|plot|thread|bet|key|keys|phone|signal)$/.test(
          wordAt(p, t + 1),
        )) ||
      /^(?:label|labels|leaves|leaf|tag|will)$/.test(wordAt(p, t + 1)) ||
      // "Lost all its leaves", "lost most of their buds".
      (/^(?:its|their|her|his|the)$/.test(wordAt(p, t + 1)) && isPlantPart(wordAt(p, t + 2))),
    phrasings: ['lost five Salt Harrier', 'five Salt Harrier lost'],
    mustNot: ['Salt Harrier lost all its leaves', 'fed the Salt Harrier, we lost two nil'],
  },
  {
    name: 'losses in <plant>, <count>',
    kind: 'loss',
    head: 'losses|deaths in|of|on|among|from',
    shape: 'object',
    when: (p, _f, t) => follows(p, t, 'plant') && p.slice(t).some(({ is }) => is === 'count'),
    phrasings: ['losses in TB1, 11 no., vine weevil', 'losses on the Salt Harrier: four'],
    mustNot: ['no losses on the Salt Harrier'],
    unless: (p, f) => /^(?:no|any|more|further|what|fewer)$/.test(wordAt(p, f - 1)),
  },
  {
    // As it is written in letters.
    name: 'the death of <count> <plant>',
    kind: 'loss',
    head: 'death|deaths|loss|demise of',
    shape: 'object',
    when: (p, f, t) =>
      wordAt(p, f - 1) === 'the' &&
      p.slice(t, t + 3).some(({ is }) => is === 'count') &&
      follows(p, t, 'plant'),
    phrasings: [
      'I regret to report the death of two Salt Harrier and of one Tallow Bell',
      'I have to announce the loss of three Salt Harrier',
    ],
    mustNot: ['mourning the loss of my two good trowels', 'the loss of light stunts the Salt Harrier'],
  },
  {
    name: 'down <count> <plant>',
    kind: 'loss',
    head: 'down <count>',
    shape: 'object',
    when: (p, f, t) =>
      ((f === 0 || p[f - 1]?.is === 'break' || /^(?:i'm|we're|am|are)$/.test(wordAt(p, f - 1))) &&
        closeBehind(p, t, 'plant')) ||
      // "Salt Harrier down two, stem rot".
      (f === 1 && p[0]?.is === 'plant' && endsAt(p, t)),
    phrasings: ['down two Salt Harrier to damping off', 'Salt Harrier down two, stem rot'],
    // "Salt Harrier down two, sold".
    unless: (p, _f, t) =>
      p[t]?.is === 'break' && /^(?:sold|given|gave|swapped|gone|went)$/.test(wordAt(p, t + 1)),
    mustNot: ['Salt Harrier down two shelves', 'Salt Harrier down two, sold at the gate'],
  },
  {
    name: '<count> <plant> short',
    kind: 'loss',
    head: 'short|down|light',
    shape: 'subject',
    when: (p, f) =>
      /^(?:i'm|im|we're|am|are)$/.test(wordAt(p, 0)) &&
      precedes(p, f, 3, 'count') &&
      precedes(p, f, 3, 'plant'),
    phrasings: ["I'm two Salt Harrier short after the slugs"],
  },
  {
    name: "that's <count> <plant> the fewer",
    kind: 'loss',
    head: "that's|thats <count> .. fewer|less|short",
    shape: 'object',
    when: (p, f, t) => p.slice(f, t).some(({ is }) => is === 'plant') && endsAt(p, t),
    phrasings: ["dropped a tray, that's five Salt Harrier the fewer"],
    mustNot: ["that's five Salt Harrier, fewer than I hoped"],
  },
  {
    name: '<count> <plant> gone the same way',
    kind: 'loss',
    head: 'gone|went the same way',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 4, 'count', 'plant'),
    phrasings: ['another Salt Harrier gone the same way'],
  },
  {
    // "Gone with the kids": not broken, but taken along.
    name: '<count> gone with <cause>',
    kind: 'loss',
    head: 'go~past|gone|out straight? with|to',
    shape: 'subject',
    when: (p, f, t) =>
      counted(p, f, t) &&
      (!/^(?:broken|other)?$/.test(causeAt(p, t) ?? '') ||
        // "Two are gone with it": the frost that was told before.
        (wordAt(p, t - 1) === 'with' && /^(?:it|that)$/.test(wordAt(p, t)) && endsAt(p, t + 1))),
    // "Fifteen thrown out with mildew": the throwing tells it.
    unless: (p, f) =>
      /^(?:thrown|threw|tossed|chucked|slung|sorted|weeded|pulled|took|taken)$/.test(wordAt(p, f - 1)),
    phrasings: [
      'three of the Salt Harrier gone with botrytis',
      'two Salt Harrier went to slugs',
      'Salt Harrier: 8 out with botrytis, rest moved to the porch',
      'five gone to rot',
      'five gone to black rot',
      'two more of the Salt Harrier gone to that grey fluffy stuff',
      'two of the Salt Harrier are gone with it',
    ],
    mustNot: ['three Salt Harrier gone with the kids', 'two Salt Harrier went to Ines'],
  },
  {
    name: '<count> gone on me',
    kind: 'loss',
    head: 'gone|dead|rotted|died on me|us',
    shape: 'subject',
    when: (p, f, t) => precedes(p, f, 6, 'count') && endsAt(p, t),
    phrasings: ['the Tallow Bell are potted on and two of the Salt Harrier are gone on me'],
    mustNot: ['the Salt Harrier are gone on me'],
  },
  {
    name: 'checked <plant>, <count> had gone',
    kind: 'loss',
    head: 'have~|be~? gone',
    shape: 'subject',
    when: (p, f, t) =>
      p[f - 1]?.is === 'count' &&
      (p[f - 2]?.is === 'break' || /^(?:and|but|only|found)$/.test(wordAt(p, f - 2))) &&
      p
        .slice(0, f)
        .some(
          (piece, at) =>
            piece.is === 'word' &&
            (LOOKED.test(piece.text) ||
              piece.text === 'rooted' ||
              (piece.text === 'up' && p[at - 1]?.is === 'count')),
        ) &&
      endsAt(p, t),
    unless: (p, _f, t) => /^(?:to|with|on|into|in)$/.test(wordAt(p, t)) || p[t]?.is === 'place',
    phrasings: [
      'checked the Salt Harrier, three had gone so I tossed them',
      'checked the Salt Harrier and three were gone',
      'looked at the Salt Harrier, two gone',
      '5 Salt Harrier rooted, the other one is gone',
      'Salt Harrier: eight up, two gone',
    ],
    mustNot: ['checked the Salt Harrier, three had gone into the greenhouse'],
  },
  {
    name: '<count> gone',
    kind: 'loss',
    head: 'gone|out|snuffed|kaput|caput',
    shape: 'subject',
    faint: true,
    when: (p, f, t) =>
      precedes(p, f, 4, 'count') &&
      (endsAt(p, t) || wordAt(p, t) === 'at' || (wordAt(p, t) === 'with' && !TAKES.test(who(p, t + 1)))) &&
      // "Gone on me", but "gone on the trolley".
      !(wordAt(p, t) === 'on' && /^(?:the|my|our|a)$/.test(wordAt(p, t + 1))) &&
      (p[t]?.is !== 'when' ||
        /^(?:today|yesterday|this|last)\b/i.test((p[t] as PieceOf<'when'>).when.words)) &&
      // "Knocked a pot off the shelf, one gone": what was done before the mark is another telling.
      !p
        .slice(p.slice(0, f).findLastIndex(({ is }) => is === 'break') + 1, f)
        .some(
          (piece) =>
            piece.is === 'word' &&
            (piece.verb !== undefined || /^tips$/.test(piece.text)) &&
            !/^(?:have|has|are|is)$/.test(piece.text),
        ) &&
      !p.slice(t).some((piece) => piece.is === 'place'),
    // "I'm one out": miscounted; "they're all out now": outdoors.
    unless: (p, f, t) =>
      /^(?:i'm|we're|i|we|was|were|am)$/.test(wordAt(p, f - 2)) ||
      (wordAt(p, f) === 'out' && allBefore(p, f)) ||
      // "Order for the school, 20 Salt Harrier gone": sent off.
      p.slice(0, f).some((_, at) => wordAt(p, at) === 'order') ||
      // "Six gone, all to the church sale".
      (p[t]?.is === 'break' &&
        p[t + 1]?.is === 'count' &&
        wordAt(p, t + 2) === 'to' &&
        causeAt(p, t + 3) === undefined),
    phrasings: ['four of the Salt Harrier gone on me'],
    mustNot: [
      '30 Salt Harrier gone on the trolley',
      "I'm one out",
      'the Salt Harrier are all out now',
      'school order, 20 Salt Harrier gone',
    ],
  },
];
