/** Cuttings told with "take": "took 12 off the Salt Harrier", "five taken on Monday", "took them all". */
import { CUTTINGS } from '../taken-away.js';
import { cameAndTook, isSomeones } from '../other-people.js';
import type { Piece } from '../../pieces/pieces.js';
import { tookRoot } from '../check/in-short.js';
import { hadSomeToo } from '../dispatch/took-some-too.js';
import { endsAt, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { forTheirOwn, takesSomethingElse } from './other-takings.js';
import { isRelative } from './told-before.js';

const TOPS = /^(?:tops?|tips?|heads?|ends)$/;

/** Whether a verb of cutting stands before the tops and "off" or "out" behind them. */
const isCutOff = (pieces: readonly Piece[], at: number, to: number): boolean =>
  /^(?:off|out)$/.test(wordAt(pieces, at + 1)) &&
  at + 1 < to &&
  pieces
    .slice(0, at)
    .some(
      (piece) => piece.is === 'word' && /^(?:take|cut|snip|nip|pinch|chop)$/.test(piece.verb?.lemma ?? ''),
    );

export const taken: readonly Rule[] = [
  {
    name: 'took <count> cuttings of <plant>',
    kind: 'strike',
    head: 'take~past',
    shape: 'object',
    unless: (p, f, t) =>
      takesSomethingElse(p, f, t) ||
      tookRoot(p, f, t) ||
      ((isSomeones(wordAt(p, f - 1)) || cameAndTook(p, f)) && !followsWord(p, t, CUTTINGS)) ||
      (endsAt(p, t) && precedes(p, f, 6, 'plant', 'count')) ||
      forTheirOwn(p, f, t) ||
      hadSomeToo(p, f, t) ||
      /^(?:be|been|got)$/.test(wordAt(p, f - 1)),
    mustNot: [
      'Doreen took two of the Salt Harrier for her mother',
      'took the Salt Harrier outside for the day',
      'took the Salt Harrier indoors',
      'took two Salt Harrier home',
      'took six Salt Harrier out of the propagator',
      'took two Salt Harrier into work',
      'took the dead leaves off the Salt Harrier',
      'took the other seven over to the windowsill',
      'sold 7 Salt Harrier at the fete and Doreen took two',
    ],
  },
  {
    name: '<count> <plant> taken',
    kind: 'strike',
    head: 'taken|took',
    shape: 'subject',
    when: (p, f, t) =>
      !isRelative(p, f) &&
      !tookRoot(p, f, t) &&
      (precedes(p, f, 8, 'plant', 'count') ||
        (p.slice(0, f).some(({ is }) => is === 'plant') &&
          p.slice(0, f).some(({ is }) => is === 'count') &&
          !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb !== undefined))) &&
      (endsAt(p, t) || p[t]?.is === 'place' || /^(?:from|in|into|with|as|at)$/.test(wordAt(p, t))) &&
      !/^(?:i|we)$/.test(wordAt(p, f - 1)) &&
      !/^(?:have|has)$/.test(wordAt(p, f - 1)) &&
      !/^(?:what|how|which)$/.test(wordAt(p, 0)),
    mustNot: ['the Salt Harrier taken on 20 March: three rooted, one rotted away'],
  },
  {
    name: '<count> cuttings made from <plant>',
    kind: 'strike',
    head: '<count> cuttings|slips made|taken|struck from|off the|my?',
    shape: 'object',
    when: (p, f, t) =>
      p[t]?.is === 'plant' &&
      (f === 0 || p[f - 1]?.is === 'when' || /^(?:have|had|today|and)$/.test(wordAt(p, f - 1))) &&
      (endsAt(p, t + 1) || /^(?:and|today|this|in|into)$/.test(wordAt(p, t + 1))),
    phrasings: [
      'I have today 12 cuttings made from the Salt Harrier',
      '12 cuttings made from the Salt Harrier and a brew after',
    ],
    mustNot: [
      'the 12 cuttings made from the Salt Harrier have rooted',
      '12 cuttings made from the Salt Harrier are looking poor',
    ],
  },
  {
    name: '<count> <plant> cuttings were made by me',
    kind: 'strike',
    head: 'cuttings|slips|<cutting> be~past|have~? been? made|taken|struck by? me|us?',
    shape: 'subject',
    when: (p, f, t) =>
      (/^(?:me|us)$/.test(wordAt(p, t - 1)) ||
        (wordAt(p, t - 1) === 'made' &&
          /^from (?:it|that|them)$/.test(`${wordAt(p, t)} ${wordAt(p, t + 1)}`))) &&
      p[f - 1]?.is !== 'word' &&
      precedes(p, f + 1, 4, 'count') &&
      !isRelative(p, f) &&
      p.some(({ is }) => is === 'plant'),
    phrasings: [
      'six Salt Harrier cuttings were made by me on Sunday',
      'please note that six Salt Harrier cuttings were taken by me on Sunday',
      'the gale had a branch of Salt Harrier off, six cuttings made from it',
    ],
    mustNot: [
      'six Salt Harrier cuttings were made by Doreen',
      'the Salt Harrier cuttings made last week look poor',
    ],
  },
  {
    name: '<count> <plant> I took on <day>',
    kind: 'strike',
    head: 'i|we took|cut|struck',
    shape: 'subject',
    when: (p, f, t) =>
      p[0]?.is === 'count' &&
      p[0].ofOurs !== true &&
      p[f - 1]?.is === 'plant' &&
      // "Three of the Salt Harrier I took have rooted": which.
      p.slice(1, f - 1).every((_, at) => /^(?:of|slips|cuttings|tips)$/.test(wordAt(p, at + 1))) &&
      endsAt(p, p[t]?.is === 'when' ? t + 1 : t),
    phrasings: [
      "12 Salt Harrier I took yesterday, they're in the greenhouse in sand",
      'a dozen slips of Salt Harrier we took on Sunday',
    ],
    mustNot: [
      'three of the Salt Harrier I took on Sunday, gone',
      '12 Salt Harrier I took on Sunday have rooted',
      '4 rooted of the Salt Harrier I took on Sunday',
    ],
  },
  {
    name: 'take <count> cuttings of <plant>',
    kind: 'strike',
    head: 'take~base',
    shape: 'object',
    unless: takesSomethingElse,
  },
  {
    name: 'taking <count> cuttings of <plant>',
    kind: 'strike',
    head: 'take~ing',
    shape: 'object',
    unless: takesSomethingElse,
  },
  {
    name: '<count> <plant>, taken on <day>',
    kind: 'strike',
    head: 'taken|struck',
    shape: 'subject',
    when: (p, f, t) =>
      p[f - 1]?.is === 'break' &&
      (p[t]?.is === 'when' ||
        p[t] === undefined ||
        /^(?:before|after|first|this|earlier)$/.test(wordAt(p, t))) &&
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      p.slice(0, f).some(({ is }) => is === 'count') &&
      !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb?.form === 'past'),
    phrasings: ['five Salt Harrier basals in perlite, no hormone, taken on Monday'],
  },
  {
    name: 'took the tops off <plant> and rooted <count>',
    kind: 'strike',
    head: 'root~past <count>',
    shape: 'object',
    when: (p, f) =>
      /^(?:and|then)$/.test(wordAt(p, f - 1)) &&
      p.slice(0, f).some((piece, at) => piece.is === 'word' && TOPS.test(piece.text) && isCutOff(p, at, f)),
    phrasings: ['took the tops off the Salt Harrier and rooted six'],
    mustNot: [
      'took the lid off the Salt Harrier and rooted six have',
      'tops off the Salt Harrier, six rooted',
    ],
  },
  {
    name: 'took a mixed pot, <count> <plant> and <count> <plant>',
    kind: 'strike',
    head: 'take~past|strike~past|stick~past|make~past|do~past|fill~past a|one mixed|joint|shared pot|tray|batch',
    shape: 'object',
    when: (p, _f, t) =>
      p.slice(t).some(({ is }) => is === 'count') && p.slice(t).some(({ is }) => is === 'plant'),
    phrasings: [
      "took a mixed pot this afternoon, 3 Salt Harrier and 2 Tallow Bell, it's in the conservatory",
    ],
  },
  {
    name: '<pots> of <plant>, took them all',
    kind: 'strike',
    head: 'take~past|snip~past|nip~past|cut~past|struck|stuck them|those|em all?',
    shape: 'subject',
    when: (p, f, t) =>
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      p.slice(0, f).some(({ is }) => is === 'pots' || is === 'count') &&
      (endsAt(p, t) || p[t]?.is === 'when' || p[t]?.is === 'count') &&
      !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb?.form === 'past'),
    phrasings: [
      'two pots of Salt Harrier, four in each, took them all on Sunday',
      '6 Salt Harrier cuttings, took those just now',
      'eight Salt Harrier in water on the windowsill, just snipped them',
    ],
    mustNot: ['6 Salt Harrier cuttings, took those to the shed'],
  },
];
