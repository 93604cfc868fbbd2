/** Rot, mould and damping off: "five are mush", "went furry", "botrytis got two". */
import type { Piece } from '../../pieces/pieces.js';
import { followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { counted, needsPlantOrCount } from './counted.js';
import { isPulled } from './pulled-out.js';

/** "2 mouldy", "2 slimy and binned": a number and what has befallen so many, and no more. */
const isCountedAlone = (pieces: readonly Piece[], from: number, to: number): boolean =>
  pieces[from - 1]?.is === 'count' &&
  (!pieces[to] ||
    pieces[to]?.is === 'break' ||
    (wordAt(pieces, to) === 'and' &&
      /^(?:binned|chucked|dumped|tossed|composted)$/.test(wordAt(pieces, to + 1))));

export const rotted: readonly Rule[] = [
  {
    name: '<count> <plant> rotted',
    kind: 'loss',
    head: 'rot~past|rotten off|away|at?',
    shape: 'subject',
    cause: 'rot',
    unless: (p, _f, t) => /^(?:luck|weather|day|week|job|light|time|business|news|show)$/.test(wordAt(p, t)),
  },
  {
    name: '<count> <plant> rotting',
    kind: 'loss',
    head: 'rotting',
    shape: 'subject',
    cause: 'rot',
    unless: (p, f) => /^(?:to|with|of|from|by|like)$/.test(wordAt(p, f - 1)),
    when: (p, f) => precedes(p, f, 5, 'count') && !/^(?:is|are|be)$/.test(wordAt(p, f - 1)),
  },
  {
    name: '<count> <plant> are mush',
    kind: 'loss',
    head: 'be~ mush|mushy|toast|goners|soup|slime',
    shape: 'subject',
    cause: 'rot',
    when: (p, f) => precedes(p, f, 5, 'count'),
    phrasings: ['5 Salt Harrier are mush'],
  },
  {
    name: '<count> mould',
    kind: 'loss',
    head: 'mould|mouldy|botrytis',
    shape: 'subject',
    cause: 'mould',
    when: isCountedAlone,
    phrasings: ['Salt Harrier: 6 rooted, 2 mould', 'eight Salt Harrier rooted, 2 mouldy and binned'],
  },
  {
    name: '<count> blackleg, binned',
    kind: 'loss',
    head: 'blackleg',
    shape: 'subject',
    cause: 'rot',
    when: (p, f, t) =>
      p[/^(?:with|got|has)$/.test(wordAt(p, f - 1)) ? f - 2 : f - 1]?.is === 'count' &&
      p[t]?.is === 'break' &&
      followsWord(p, t + 1, /^(?:binned|bin|chucked|pulled|out|gone|dumped|tossed|scrapped|composted)$/),
    phrasings: ['Salt Harrier 5 of 10 rooted. 1 blackleg, binned', 'two with blackleg, pulled them'],
    mustNot: ['two with blackleg, watch them'],
  },
  {
    name: '<count> mush',
    kind: 'loss',
    head: 'mush|mushy|slime|slimy|rot|soup',
    shape: 'subject',
    cause: 'rot',
    when: isCountedAlone,
    phrasings: ['Salt Harrier: 4 rooted, 1 mush', 'Salt Harrier: 3 rooted, 2 slimy and binned'],
  },
  {
    name: '<count> turned to mush',
    kind: 'loss',
    head: 'turn~|turned to|black|in? mush|mushy|slime|soup|black',
    shape: 'subject',
    cause: 'rot',
    when: counted,
  },
  {
    name: '<count> went soft and black',
    kind: 'loss',
    head: 'go~past|gone|turned all|right|quite|a? bit? soft|soggy|black|slimy|squishy|mushy|manky',
    shape: 'subject',
    cause: 'rot',
    when: (p, f) => precedes(p, f, 7, 'count'),
  },
  {
    name: '<count> gone mouldy',
    kind: 'loss',
    head: 'go~|gone to|all|right? grey|gray? mouldy|furry|fuzzy|mould|botrytis',
    shape: 'subject',
    cause: 'mould',
    when: (p, f) => precedes(p, f, 7, 'count') || followsWord(p, f, /^(?:bin|binned|heap|thrown|chucked)$/),
  },
  {
    name: '<count> damped off',
    kind: 'loss',
    head: 'damp~|damping off|of',
    shape: 'subject',
    cause: 'dampingOff',
    unless: (p, f) =>
      /^(?:to|with|of|from|by|like)$/.test(wordAt(p, f - 1)) ||
      // "Pulled 3 Salt Harrier and 2 Tallow Bell, damped off": what befell all that were pulled.
      (p[f - 1]?.is === 'break' && isPulled(p.slice(0, f))),
  },
  {
    name: 'rot on <plant>, pulled out <count>',
    kind: 'loss',
    head: 'pull~past|whip~past|fished|hoick~past|pick~past|take~past out <count>',
    shape: 'object',
    when: (p, f) =>
      p
        .slice(0, f)
        .some(
          (piece) =>
            piece.is === 'word' && /^(?:rot|botrytis|mould|mold|mildew|blackleg|mush)$/.test(piece.text),
        ),
    phrasings: ['botrytis on the Salt Harrier, pulled out five'],
    mustNot: ['pulled out five Salt Harrier to look at the roots'],
  },
  {
    name: 'rot got <count> <plant>',
    kind: 'loss',
    head: 'rot|blackleg have~|get~|take~|kill~|claim~|do~|finish~past for|off|out?',
    shape: 'object',
    cause: 'rot',
    when: needsPlantOrCount,
  },
  {
    name: 'botrytis got <count> <plant>',
    kind: 'loss',
    head: 'botrytis|mould|mildew has|have? have~|get~|take~|kill~|claim~|do~|finish~past for|off|out?',
    shape: 'object',
    cause: 'mould',
    when: needsPlantOrCount,
    phrasings: [
      'grey mould finished off four Salt Harrier',
      'botrytis did for two Salt Harrier',
      'mould has killed two Salt Harrier',
    ],
  },
];
