/** Cuttings told as in a telegram: "14 box cuttings, nodal", "five rosemary cuttings done", "72 into plugs", "two pots of Salt Harrier under fog". */
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, endsAt, precedes, type Rule, wordAt } from '../rule.js';
import { bareCuttings, hormoneUsed, SAYS_OTHERWISE } from './bare-cuttings.js';
import { isRound } from './round-the-edge.js';
import { shoots } from './shoots.js';

/** "…, all done before the rain came": the row without the talk that only says when. */
function beforeTalk(pieces: readonly Piece[]): readonly Piece[] {
  const at = pieces.findIndex((_, n) => /^(?:before|after|while|whilst)$/.test(wordAt(pieces, n)));
  const isDone = at > 0 && /^(?:done|in|finished|potted)$/.test(wordAt(pieces, at - 1));
  return isDone && pieces.slice(at).every(({ is }) => is === 'word') ? pieces.slice(0, at) : pieces;
}

const allSlots = (pieces: readonly Piece[]): boolean =>
  beforeTalk(pieces).every(
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
      ((piece.each ?? 0) > 1 ||
        pieces.some((each) => each.is === 'count' && (each.quantity.value ?? 0) > (piece.pots ?? Infinity))),
  );

const ROOTING_PLACE = /\b(?:propagator|mat|mist|misting|fog|hotbed|sill|windowsill|grow ?lights?)\b/;

export const telegrams: readonly Rule[] = [
  ...shoots,
  {
    name: '<count> <plant> in',
    kind: 'strike',
    head: 'in',
    shape: 'subject',
    faint: true,
    when: (p, f, t) =>
      (endsAt(p, t) || p[t]?.is === 'pots' || isRound(p, t)) &&
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
    phrasings: [
      'Salt Harrier: a dozen tips in, three pots',
      'a dozen Salt Harrier heels in round a 15cm clay pot',
    ],
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
    phrasings: [
      '6 Salt Harrier, one 9cm pot',
      'three pots of Salt Harrier under fog',
      'five pots of Salt Harrier, four to a pot, all done before the rain came',
    ],
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
  {
    // Nothing but cuttings of what nobody has had before is told by its number, its crop and a place to root in.
    name: '<count> <new plant> <crop>, <rooting place>',
    kind: 'strike',
    head: '<count>',
    shape: 'object',
    faint: true,
    when: (p, f, t) => {
      const [name, crop] = p.slice(t, t + 2);
      const places = p.filter((piece) => piece.is === 'place');
      return (
        f === 0 &&
        name?.is === 'plant' &&
        !name.known &&
        name.plant.variety !== undefined &&
        crop?.is === 'plant' &&
        p.length < 8 &&
        places.length === 1 &&
        places.every(({ place }) => ROOTING_PLACE.test(place)) &&
        allSlots(p)
      );
    },
    phrasings: ['8 Marsh Tiger dahlia, propagator', '8 Marsh Tiger as well, dahlia, heat mat'],
    mustNot: ['8 Marsh Tiger dahlia, cold frame', '8 Marsh Tiger dahlia dead, propagator'],
  },
];
