/** Plants that went to new homes: "found a home for three", "all gone to the fete", "left on Joyce's step". */
import { isToCome } from '../../mood/yet-to-be.js';
import { isSomeones } from '../other-people.js';
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, endsAt, followsWord, precedes, type Rule, wordAt } from '../rule.js';

/** "On Joyce's step", "off at Joyce's". */
function isSomebodys(pieces: readonly Piece[], at: number): boolean {
  const piece = pieces[at];
  if (piece?.is === 'place')
    return /^\w+'s (?:front |back )?(?:step|doorstep|porch|gate|drive)$/.test(piece.place);
  const isEnd = endsAt(pieces, at + 1);
  return isSomeones(wordAt(pieces, at)) && isEnd && /^(?:at|on|round)$/.test(wordAt(pieces, at - 1));
}

/** Not gone yet, or no gift. */
const KEPT = /^(?:for|meant|reserved|would|will|lovely|nice|good|ideal|perfect|as|ready|needed|wanted)$/;

export const newHomes: readonly Rule[] = [
  {
    name: 'found a home for <count> <plant>',
    kind: 'dispatch',
    head: 'find~past a|another? new|good? home|homes for',
    shape: 'object',
    how: 'given',
    when: (p, _f, t) => closeBehind(p, t, 'plant'),
    unless: (p) => p.some(({ is }) => is === 'place'),
    phrasings: ['found a new home for three Salt Harrier', 'found homes for six Salt Harrier'],
    mustNot: [
      'found a home for the Salt Harrier on the windowsill',
      'must find a home for three Salt Harrier',
    ],
  },
  {
    name: 'made a present of <count> <plant> to <recipient>',
    kind: 'dispatch',
    head: 'make~past a|the? present|gift of',
    shape: 'object',
    how: 'given',
    when: (p, f, t) =>
      closeBehind(p, t, 'plant') &&
      (followsWord(p, t, /^to$/) ||
        f === 0 ||
        p[f - 1]?.is === 'break' ||
        p[f - 1]?.is === 'when' ||
        /^(?:i|we|and|i've|we've)$/.test(wordAt(p, f - 1))),
    unless: (p, _f, t) => followsWord(p, t, /^(?:me|us)$/),
    phrasings: ['made a present of two Salt Harrier on Sunday'],
    mustNot: ['she made me a present of two Salt Harrier', 'Doreen made a present of two Salt Harrier'],
  },
  {
    name: 'made <recipient> a present of <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient within',
    head: 'make~past .. a|the present|gift of',
    shape: 'object',
    how: 'given',
    when: (p, f, t) => closeBehind(p, t, 'plant') && t > f + 4 && !/^(?:me|us)$/.test(wordAt(p, f + 1)),
    phrasings: ['made Doreen a present of two Salt Harrier'],
    mustNot: ['Doreen made us a present of two Salt Harrier'],
  },
  {
    name: '<count> <plant> to <recipient> as a present',
    kind: 'dispatch',
    head: 'to .. as|for a present|gift|treat|thank-you|thankyou',
    shape: 'subject',
    how: 'given',
    when: (p, f) =>
      precedes(p, f, 2, 'plant') &&
      precedes(p, f, 5, 'count') &&
      // "Took two Salt Harrier to the chapel as a present": the taking tells it.
      !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb?.form === 'past') &&
      !/^(?:give|go|be|use|keep|sell|send|grow|have|take)$/.test(wordAt(p, f + 1)),
    phrasings: ['5 Salt Harrier to the sacristan as a present', 'two Salt Harrier to Doreen for a thank-you'],
    mustNot: ['potted 5 Salt Harrier to give as a present'],
  },
  {
    name: '<count> <plant> gone, all to <recipient>',
    kind: 'dispatch',
    head: 'go~past|gone <break>? <count> to|with',
    shape: 'subject',
    when: (p, f, t) => precedes(p, f, 4, 'count', 'plant') && p[t]?.is !== 'place',
    unless: (p, _f, t) => /^(?:slugs?|rot|frost|mould|mush|seed|mice|botrytis|damping)$/.test(wordAt(p, t)),
    phrasings: ['six Salt Harrier gone, all to the church plant sale'],
    mustNot: ['six Salt Harrier gone, all to slugs', 'six Salt Harrier gone, all rotten'],
  },
  {
    // Told without a verb; "took six as a present for Edna" is told by its own.
    name: '<count> <plant> as a present for <recipient>',
    kind: 'dispatch',
    head: 'as a? present|gift|prezzie|pressie|thankyou for|to',
    shape: 'subject',
    how: 'given',
    faint: true,
    when: (p, f) =>
      p.slice(0, f).some(({ is }) => is === 'plant') && p.slice(0, f).some(({ is }) => is === 'count'),
    unless: (p, f, t) =>
      /^(?:me|us|myself)$/.test(wordAt(p, t)) ||
      p.some(isToCome) ||
      p
        .slice(0, f)
        .some((piece) => piece.is === 'word' && (piece.verb !== undefined || KEPT.test(piece.text))),
    phrasings: ['Salt Harrier, 3 pieces, as present for Edna', 'six Salt Harrier as a gift to the church'],
    mustNot: [
      'need six Salt Harrier as a present for Edna',
      'six Salt Harrier as a present for me',
      'took six Salt Harrier as a present for Edna',
    ],
  },
  {
    name: "left <count> <plant> on <someone>'s step",
    kind: 'dispatch',
    head: 'leave~past|drop~past|put~ .. on|off|at|round at|on?',
    shape: 'object',
    how: 'given',
    when: (p, f, t) =>
      p.slice(f, t).some(({ is }) => is === 'count') &&
      p.slice(f, t).some(({ is }) => is === 'plant') &&
      isSomebodys(p, t),
    phrasings: ["left two Salt Harrier on Joyce's step", "dropped four Salt Harrier off at Joyce's"],
    mustNot: ["left two Salt Harrier on Joyce's list", "left my gloves at Joyce's, two Salt Harrier rooted"],
  },
];
