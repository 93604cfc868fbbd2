/** Cuttings told as in a telegram: "14 box cuttings, nodal", "five rosemary cuttings done", "72 into plugs", "two pots of Salt Harrier under fog". */
import type { Piece } from '../../pieces.js';
import { isToldOfLast } from '../../drafting/last-pot.js';
import { closeBehind, endsAt, followsWord, precedes, type Rule, wordAt } from '../rule.js';

const SAYS_OTHERWISE =
  /^(?:need|needs|want|wants|look|looks|looking|are|is|going|gone|getting|from|should|still|doing|seem|got|have|has|rooted|later|where|which|that|if|for|will|would|my|these|those|your|how|took|job|jobs|plan|todo|order)$/;

/** A plant stands there, or behind an article. */
const isPlant = (pieces: readonly Piece[], at: number): boolean =>
  pieces[/^(?:the|a|my|an|our)$/.test(wordAt(pieces, at)) ? at + 1 : at]?.is === 'plant';

/** "Cuttings from the streptocarpus", "from Mum's hedge": off a plant, not out of somebody's hands. */
const fromAPlant = (pieces: readonly Piece[], at: number): boolean =>
  isPlant(pieces, at + 1) ||
  followsWord(pieces, at, /^(?:hedges?|bush|bushes|shrubs?|trees?)$/) ||
  pieces.slice(at).some((piece) => piece.is === 'word' && /^(?:prunings|trimmings|stock)$/.test(piece.text));

/** "Rooting hormone used": a slot, however it is told. */
const hormoneUsed = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at) === 'used' && /^(?:hormone|powder|gel|dip)$/.test(wordAt(pieces, at - 1));

/** Telegraphic: "14 box cuttings, nodal" and nothing that says otherwise. */
const bareCuttings = (pieces: readonly Piece[], from: number): boolean => {
  if (!pieces.some(({ is }) => is === 'plant')) return false;
  if (!pieces.some(({ is }) => is === 'count' || is === 'pots')) return false;
  // "Got started at last, 14 basals …": talk before the first break.
  const first = pieces.findIndex(({ is }) => is === 'plant' || is === 'count' || is === 'pots');
  const opening = pieces.slice(0, first).findLastIndex(({ is }) => is === 'break') + 1;
  return !pieces.some(
    (piece, at) =>
      piece.is === 'word' &&
      // "Four in each bar the last one, that got five".
      !isToldOfLast(pieces, at + 1) &&
      ((SAYS_OTHERWISE.test(piece.text) &&
        !(piece.text === 'from' && fromAPlant(pieces, at)) &&
        !(piece.text === 'that' && wordAt(pieces, at + 1) === 'makes') &&
        !(piece.text === 'got' && /^(?:round|around|started|going)$/.test(wordAt(pieces, at + 1)))) ||
        // "Ten basal shoots on the Salt Harrier": seen, and still there.
        (piece.text === 'on' && isPlant(pieces, at + 1)) ||
        (piece.verb !== undefined &&
          at >= opening &&
          wordAt(pieces, at + 1) !== 'count' &&
          wordAt(pieces, at + 1) !== 'round' &&
          at !== from &&
          !hormoneUsed(pieces, at) &&
          !/^(?:heel|root|rooting|water|damp|compost|place|tip|stem|leaf|pot|bed|cut|cutting|cuttings|shade)$/.test(
            piece.text,
          ) &&
          // "…, that makes the dozen".
          !(piece.text === 'makes' && /^(?:that|which)$/.test(wordAt(pieces, at - 1))) &&
          // "Started the Salt Harrier, 5 semi-ripe bits".
          !(
            /^(?:start|begin)$/.test(piece.verb.lemma) &&
            piece.verb.form === 'past' &&
            /^(?:the|my|some|off)$/.test(wordAt(pieces, at + 1))
          ) &&
          !/^(?:push|put|go|do|tuck|pop|dip|dunk|stick|lay|dust|line|insert|space)$/.test(piece.verb.lemma))),
  );
};

const allSlots = (pieces: readonly Piece[]): boolean =>
  pieces.every(
    (piece) =>
      piece.is !== 'word' ||
      /^(?:of|the|in|on|with|each|a|all|at|from|my|new|more|into|under|and|cuttings|cutting|done|per|to|today|it|them|before|tea|lunch|every|one|x|together|mixed|sharing|same|again|fleece|glass|lid|cover|fog|mist)$/.test(
        piece.text,
      ),
  );

/** More plants than containers: rooted ones would have a pot each. */
const sharesPot = (pieces: readonly Piece[]): boolean =>
  pieces.some(
    (piece) =>
      piece.is === 'pots' &&
      pieces.some((each) => each.is === 'count' && (each.quantity.value ?? 0) > (piece.pots ?? Infinity)),
  );

export const telegrams: readonly Rule[] = [
  {
    name: '<count> <plant> in',
    kind: 'strike',
    head: 'in',
    shape: 'subject',
    faint: true,
    when: (p, f, t) =>
      (endsAt(p, t) || p[t]?.is === 'pots') &&
      p[t]?.is !== 'place' &&
      precedes(p, f, 6, 'count', 'pots') &&
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      !p
        .slice(0, f)
        .some(
          (piece) =>
            piece.is === 'word' &&
            ((piece.verb !== undefined && piece.verb.lemma !== 'tip') ||
              /^(?:came|plugs?|liners?)$/.test(piece.text)),
        ),
    phrasings: ['Salt Harrier: a dozen tips in, three pots'],
  },
  {
    name: '<count> <plant> into plugs',
    kind: 'strike',
    head: 'into|in plugs|modules|cells|jiffies',
    shape: 'subject',
    faint: true,
    when: (p, f, t) =>
      endsAt(p, t) &&
      precedes(p, f, 5, 'count') &&
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb !== undefined),
    phrasings: ['72 Salt Harrier into plugs'],
  },
  {
    name: '<count> cuttings of <plant> made',
    kind: 'strike',
    head: 'cuttings|cutting|pieces|slips|shoots|<cutting> .. made|done|struck|taken|prepared|inserted|stuck|pushed|cut|started',
    shape: 'subject',
    when: (p, f, t) =>
      p.some(({ is }) => is === 'count' || is === 'pots') &&
      !(wordAt(p, t - 1) === 'started' && (/ing$/.test(wordAt(p, t)) || wordAt(p, t) === 'to')) &&
      !p.slice(0, t).some((piece) => piece.is === 'word' && /^(?:and|then|took|take)$/.test(piece.text)) &&
      (p.slice(0, t).some(({ is }) => is === 'plant') || closeBehind(p, f, 'plant')) &&
      !p.slice(0, t).some(
        (piece) =>
          piece.is === 'word' &&
          /^(?:have|has|are|were|be|to|not|need|needs|want|get|when|how|should|must|rooted|dead|roots|root)$/.test(
            piece.text,
          ) &&
          !/^(?:i|we)$/.test(wordAt(p, p.indexOf(piece) - 1)) &&
          // "From the Salt Harrier are 15 cuttings made".
          !(/^(?:are|were|have)$/.test(piece.text) && p[p.indexOf(piece) + 1]?.is === 'count'),
      ) &&
      !/^(?:roots|root|off|well|it)$/.test(wordAt(p, t)),
    phrasings: [
      'five rosemary cuttings done',
      'from Salt Harrier are 15 cuttings made',
      '6 cuttings of Salt Harrier I have made in water',
      'three pots of Salt Harrier cuttings started this morning',
    ],
    mustNot: [
      'six Tallow Bell cuttings have made roots',
      'three cuttings were taken by slugs',
      'three pots of Salt Harrier cuttings started rooting this morning',
      'six Salt Harrier cuttings started to wilt',
    ],
  },
  {
    name: 'new cuttings: <count> <plant>',
    kind: 'strike',
    head: 'cuttings|basals|slips|snippets|sprigs|twigs|basal|<cutting>',
    shape: 'subject',
    faint: true,
    when: bareCuttings,
    phrasings: [
      'new cuttings: five Salt Harrier',
      '18 nodal cuttings, Salt Harrier, 3 pots of 6, rooting hormone used',
      'started the Salt Harrier, 5 semi-ripe cuttings in one pot',
      '3 leaf cuttings from my Salt Harrier in damp perlite',
      'three pots of Salt Harrier cuttings down, four in each bar the last one, that got five',
      "nearly a dozen lavender cuttings from Mum's hedge, each with a heel, now tucked up in the cold frame",
    ],
    mustNot: [
      'used 18 nodal cuttings of Salt Harrier at the talk',
      'job for Friday: 9 Salt Harrier heel cuttings',
      'ten lavender cuttings from Mum',
      "the lavender cuttings from Mum's hedge are thriving",
      'ten basal shoots on Salt Harrier',
      'eight sprigs of Salt Harrier wilted',
    ],
  },
  {
    name: '<count> <plant> in <medium>',
    kind: 'strike',
    head: 'in|into <medium>',
    shape: 'subject',
    faint: true,
    when: (p, f, t) => {
      const medium = p[t - 1];
      return (
        medium?.is === 'medium' &&
        /\b(?:sand|perlite|vermiculite|pumice|sphagnum|moss|leca)\b/.test(medium.medium) &&
        endsAt(p, t) &&
        f === 2 &&
        p[0]?.is === 'count' &&
        p[1]?.is === 'plant' &&
        // Of a variety it may tell where those stand that were struck before.
        p[1].plant.variety === undefined &&
        p[1].plant.batch === undefined
      );
    },
    phrasings: ['ten lavender in gritty sand, no bottom heat'],
    mustNot: ['need ten lavender in sand', 'ten lavender in compost', 'ten Salt Harrier in sand'],
  },
  {
    name: '<plant>, <count> off the mother plant',
    kind: 'strike',
    head: '<count> off|from the|my|our|one|that? old|big|best? mother|stock|parent|stools|stool|tuber|tubers|crown|bush|hedge plant|plants?',
    shape: 'subject',
    faint: true,
    when: (p, f) =>
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      !p
        .slice(0, f)
        .some(
          (piece) => piece.is === 'word' && (piece.verb !== undefined || SAYS_OTHERWISE.test(piece.text)),
        ),
    phrasings: ['Salt Harrier, 12 off the mother plant, perlite'],
    mustNot: ['Salt Harrier flowers, need 12 off the mother plant'],
  },
  {
    name: '<pots> of <plant>',
    kind: 'strike',
    head: '<pots>',
    shape: 'subject',
    faint: true,
    when: (p) =>
      p.some(({ is }) => is === 'plant') &&
      allSlots(p) &&
      !p.some(({ is }) => is === 'celsius') &&
      (sharesPot(p) || !p.some(({ is }) => is === 'size')),
    phrasings: ['6 Salt Harrier, one 9cm pot', 'three pots of Salt Harrier under fog'],
  },
  {
    name: '<count> <plant>, dipped',
    kind: 'strike',
    head: 'iba|dipped|clonex|hormone',
    shape: 'subject',
    faint: true,
    when: (p) =>
      p.some(({ is }) => is === 'plant') &&
      p.some(({ is }) => is === 'count') &&
      !p.some(
        (piece, at) =>
          piece.is === 'word' &&
          piece.verb !== undefined &&
          !/^dip$/.test(piece.verb.lemma) &&
          piece.text !== 'rooting' &&
          !hormoneUsed(p, at),
      ),
    phrasings: ['18 Salt Harrier, rooting hormone used'],
    mustNot: ['used hormone, 18 Salt Harrier rooted'],
  },
];
