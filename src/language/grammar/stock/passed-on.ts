/** Rooted plants that somebody dropped off, sent or parted with: "Bazza dropped off 8", "got 5 rooted cuttings off my neighbour". */
import { sentByOthers } from '../other-people.js';
import { closeBehind, follows, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { ofYoung } from './kinds-of-plant.js';

export const passedOn: readonly Rule[] = [
  {
    name: 'got <count> rooted cuttings of <plant> off <someone>',
    kind: 'receive',
    head: 'get~past|have~past|be~past given|got?',
    shape: 'object',
    when: (p, _f, t) =>
      closeBehind(p, t, 'count') &&
      followsWord(p, t, /^rooted$/) &&
      follows(p, t, 'plant') &&
      followsWord(p, t, /^(?:off|from)$/),
    phrasings: ['got 5 rooted cuttings of salt harrier off my neighbour'],
  },
  {
    name: '<count> rooted youngsters came from <giver>',
    kind: 'receive',
    head: 'rooted|well-rooted youngsters|babies|plants|ones|plugs|cuttings came|arrived|turned|come',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 4, 'count'),
    phrasings: ['thirty well rooted youngsters of Salt Harrier came from Gwen'],
  },
  {
    name: '<someone> dropped off <count> <plant>',
    kind: 'receive',
    head: 'drop~past|leave~past|bring~past|hand~past|deliver~past|pass~past|chuck~past off|round|over|in|on|along?',
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t, 'count') &&
      follows(p, t, 'plant') &&
      f > 0 &&
      !/^(?:i|we|i've|we've|and|then|have|just|also|were|was|been|got|be|frost|slugs|snails|wind|mice|heat|winter)$/.test(
        wordAt(p, f - 1),
      ) &&
      (ofYoung(p, f) || followsWord(p, t, /^(?:me|us)$/)) &&
      !followsWord(p, t, /^(?:to|cuttings|tubers?|crowns?|stools?)$/),
    phrasings: [
      'Bazza dropped off 8 rooted Salt Harrier on Sunday',
      'A friend passed on three rooted Salt Harrier',
      'Jean dropped round six little rooted Salt Harrier',
    ],
    mustNot: ['I dropped off 8 rooted Salt Harrier to Bazza'],
  },
  {
    name: 'have become <count> <plant>',
    kind: 'receive',
    head: 'have become',
    shape: 'object',
    when: (p, _f, t) => p[t]?.is === 'count' && follows(p, t, 'plant'),
  },
  {
    name: '<someone> sent <count> rooted <plant>',
    kind: 'receive',
    head: 'send~past',
    shape: 'object',
    when: (p, f, t) =>
      sentByOthers(p, f, t) && follows(p, t, 'plant') && (ofYoung(p, f) || follows(p, t, 'count')),
    unless: (p, _f, t) => followsWord(p, t, /^(?:cuttings|cutting|photo|photos|picture)$/),
    phrasings: ['Mr Abbery has kindly sent four rooted plants of Tallow Bell'],
    mustNot: ['I sent four rooted Tallow Bell to Doreen'],
  },
];
