/** Plants pulled out because of what had befallen them: "pulled three, damped off". */
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, endsAt, type Rule, wordAt } from '../rule.js';
import { causeAt } from './counted.js';
import { RUINED } from './ruined.js';
import { ofPartsOnly } from './thrown-away.js';

const SICK = /^(?:rot|mould|dampingOff|pest|wilt)$/;
const BETWEEN =
  /^(?:out|up|that|they|they'd|they'll|which|had|have|has|were|was|all|gone|going|with|some|those|the)$/;

/** "…, damped off", "that had gone mouldy" behind the plant, or the last of several, and nothing else before it. */
function ruinedBehind(pieces: readonly Piece[], to: number): boolean {
  let at = pieces.findIndex(({ is }, n) => n >= to && is === 'plant') + 1;
  if (at === 0) return false;
  // "Pulled 3 Salt Harrier and 2 Tallow Bell, damped off".
  for (let next = at; isJoint(pieces, next); next++) {
    const plant = pieces.findIndex(({ is }, n) => n > next && is !== 'count' && is !== 'word');
    if (
      !(pieces[next + 1]?.is === 'count' || /^an?$/.test(wordAt(pieces, next + 1))) ||
      plant > next + 4 ||
      pieces[plant]?.is !== 'plant'
    )
      break;
    at = plant + 1;
    next = plant;
  }
  while (pieces[at]?.is === 'break' || BETWEEN.test(wordAt(pieces, at))) at++;
  return (
    wordAt(pieces, at) === 'damped' || RUINED.test(wordAt(pieces, at)) || SICK.test(causeAt(pieces, at) ?? '')
  );
}

const isJoint = (pieces: readonly Piece[], at: number): boolean =>
  pieces[at]?.is === 'break' || wordAt(pieces, at) === 'and';

/** Several plants pulled, with their numbers. */
export const isPulled = (pieces: readonly Piece[]): boolean =>
  pieces.filter(({ is }) => is === 'plant').length > 1 &&
  pieces.some(
    (piece, at) =>
      piece.is === 'word' &&
      /^(?:pulled|whipped|hoicked|fished|yanked|plucked|culled|pull)$/.test(piece.text) &&
      (pieces[at + 1]?.is === 'count' ||
        (wordAt(pieces, at + 1) === 'out' && pieces[at + 2]?.is === 'count')),
  );

export const pulledOut: readonly Rule[] = [
  {
    name: 'pulled <count> <plant>, damped off',
    kind: 'loss',
    head: 'pull~|whip~past|hoick~past|fished|yanked|plucked|culled|removed out? <count>',
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t - 1, 'plant') &&
      ruinedBehind(p, t) &&
      !/^pull(?:ing|s)$/.test(wordAt(p, f)) &&
      (wordAt(p, f) === 'pull'
        ? wordAt(p, f - 2) === 'had' && wordAt(p, f - 1) === 'to'
        : f === 0 || /^$|^(?:i|we|i've|we've|and|then|just|have|so|had|i'd)$/.test(wordAt(p, f - 1))),
    unless: (p, f, t) => ofPartsOnly(p, f, t - 1),
    phrasings: [
      'pulled 3 Salt Harrier, damped off',
      'yanked out two Salt Harrier, mushy',
      'pulled four of the Salt Harrier that had gone mouldy',
      'pulled 3 Salt Harrier and 2 Tallow Bell, damped off',
    ],
    mustNot: ['pulled 3 Salt Harrier out for a look', 'pulled 3 Salt Harrier labels, mouldy'],
  },
  {
    name: 'pulled the <count> floppy <plant> out',
    kind: 'loss',
    head: 'pull~past|whip~past|pick~past|hoick~past|take~past|remove~past|fished|yanked|plucked out? the|those? <count>',
    shape: 'object',
    when: (p, f, t) =>
      /^(?:floppy|limp|manky|squishy|slimy|brown|black|blackened|crispy|soggy|hopeless|feeble|sickly)$/.test(
        wordAt(p, t),
      ) &&
      (wordAt(p, t + 1) === 'ones' || p[t + 1]?.is === 'plant') &&
      (f === 0 || /^$|^(?:i|we|i've|we've|and|then|just|have|so)$/.test(wordAt(p, f - 1))),
    unless: ofPartsOnly,
    phrasings: ['pulled the two floppy Salt Harrier out', "I've whipped out three limp Salt Harrier"],
    mustNot: ['pulled the two dead Salt Harrier leaves off', 'pulled the two Salt Harrier out for a look'],
  },
  {
    name: 'pulled out <count> <plant> with mould',
    kind: 'loss',
    head: 'pull~past|pick~past|hoick~past|take~past|fished|yanked|plucked|weeded out <count> .. with|showing',
    shape: 'object',
    when: (p, f, t) =>
      p.slice(f, t).some(({ is }) => is === 'plant') &&
      /^(?:rot|mould|dampingOff|pest|wilt)$/.test(causeAt(p, t) ?? ''),
    phrasings: ['pulled out two Salt Harrier with grey mould'],
    mustNot: ['pulled out two Salt Harrier with my fingers', 'picked out two Salt Harrier leaves with mould'],
    unless: ofPartsOnly,
  },
  {
    name: '<disease> in <plant>, <count> removed',
    kind: 'loss',
    head: 'removed|pulled|culled|rogued out?',
    shape: 'subject',
    when: (p, f, t) =>
      p[f - 1]?.is === 'count' &&
      endsAt(p, t) &&
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      p.slice(0, f).some((_, at) => /^(?:rot|mould|dampingOff|pest|wilt)$/.test(causeAt(p, at) ?? '')),
    phrasings: ['botrytis in the Salt Harrier, 40 removed'],
    mustNot: ['Salt Harrier: 40 labels removed'],
  },
];
