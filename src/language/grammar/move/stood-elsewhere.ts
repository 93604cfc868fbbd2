/** Plants told of where they stand now: "they live in the porch now", "everything that was in the hot press is on the sill". */
import type { Piece } from '../../pieces/pieces.js';
import { causeAt } from '../loss/counted.js';
import { isReceiver } from '../other-people.js';
import { bedAt, groundAt, withoutReason } from '../plant-out/quarters.js';
import { followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { ageOf, isMonth, isOneOfSeveral } from '../../lots/lot-words.js';
import { isWhole } from '../stand-ins.js';
import { OUTSIDE, toPlace } from './to-place.js';

/** "Everything", "the rest", "both", told before; a lot by its age or its day: "the older ones", "the 5 March lot". */
const isTold = (piece: Piece, at: number, pieces: readonly Piece[]): boolean =>
  isWhole(piece) ||
  (piece.is === 'count' && piece.quantity.both === true) ||
  (/^(?:lot|ones|batch)$/.test(wordAt(pieces, at)) &&
    (pieces[at - 1]?.is === 'when' || isOneOfSeveral(pieces, at - 1)) &&
    (pieces[at - 1]?.is === 'when' ||
      ageOf(pieces, at - 1) !== undefined ||
      isMonth(wordAt(pieces, at - 1))));

/** "Six of which", "four of them": of those just told of. */
const ofThose = (pieces: readonly Piece[], from: number): boolean =>
  /^(?:which|them|those|these)$/.test(wordAt(pieces, from - 1)) && pieces[from - 2]?.is === 'count';

/** "The Salt Harrier were due on Monday, but they all went into the greenhouse today". */
function isThey(pieces: readonly Piece[], from: number): boolean {
  const who = /^(?:all|both|have|just)$/.test(wordAt(pieces, from - 1)) ? from - 2 : from - 1;
  return wordAt(pieces, who) === 'they' && pieces.slice(0, who).some(({ is }) => is === 'plant');
}

const standing = (pieces: readonly Piece[], from: number, to: number): boolean =>
  (precedes(pieces, from, 8, 'plant') ||
    ofThose(pieces, from) ||
    isThey(pieces, from) ||
    pieces.slice(0, from).some(isTold)) &&
  toPlace(pieces, from, to) &&
  !withoutReason(pieces, to)
    .slice(from)
    .some(
      (piece) =>
        (piece.is === 'word' && /^(?:bin|bed|border|ground|heap)$/.test(piece.text)) ||
        (piece.is === 'place' && /(?<!standing )\b(?:bed|border|ground)$/.test(piece.place)),
    );

/** "… and on the windowsill". */
function isPlaceNext(pieces: readonly Piece[], from: number): boolean {
  let at = from;
  while (/^(?:in|on|under|back|over|the|my|our)$/.test(wordAt(pieces, at))) at++;
  return pieces[at]?.is === 'place';
}

/** "Got them going in the greenhouse": begun there, whatever was begun. */
const isGotGoing = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at) === 'going' &&
  pieces.slice(Math.max(0, at - 5), at).some((piece) => piece.is === 'word' && piece.text === 'got');

export const stoodElsewhere: readonly Rule[] = [
  {
    name: 'had <plant> in <place>, now they are in <place>',
    kind: 'move',
    head: "now they're|it's in|on|under|at the|my? <place>",
    shape: 'subject',
    when: (p, f) => p.slice(0, f).some(({ is }) => is === 'plant'),
    phrasings: ["we've had the Salt Harrier in the porch and now they're in the greenhouse"],
    mustNot: ["the Salt Harrier were fine, now they're in the greenhouse?"],
  },
  {
    name: '<plant> came out of <place> into <place>',
    kind: 'move',
    head: 'come~|go~|be~ out? of|from|off the? <place>',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 8, 'plant') &&
      p.slice(t).some(({ is }) => is === 'place') &&
      // "Forty plugs of petunia came from the nursery": bought.
      !p.slice(0, f).some((_, at) => /^(?:plugs?|liners?)$/.test(wordAt(p, at))) &&
      (!/^(?:is|are|was|were|be|been)$/.test(wordAt(p, f)) ||
        (p[f + 1]?.is === 'word' && /^(?:and|now)$/.test(wordAt(p, t)) && isPlaceNext(p, t + 1))),
    phrasings: [
      'the Salt Harrier are out of the propagator and on the windowsill',
      'the Salt Harrier have come out of the propagator and are in the cold frame',
    ],
  },
  {
    name: 'everything that was in <place> is in <place> now',
    kind: 'move',
    sense: 'emptying',
    head: 'that|which was|were .. is|are',
    shape: 'subject',
    when: (p, f, t) => {
      const [from, to] = [p.slice(f, t).find(({ is }) => is === 'place'), p.slice(t, t + 6)];
      const place = to.find(({ is }) => is === 'place');
      const isIn = /^(?:in|on|under)$/;
      return (
        (p[f - 1]?.is === 'count' || p[f - 1]?.is === 'plant') &&
        from?.is === 'place' &&
        isIn.test(from.prep ?? '') &&
        place?.is === 'place' &&
        isIn.test(place.prep ?? '') &&
        (p.slice(t).some(({ is }) => is === 'when') || followsWord(p, t, /^now$/))
      );
    },
    phrasings: ['everything that was in the propagator is in the cold frame since Thursday'],
    mustNot: [
      'the Salt Harrier that were in the propagator are rooted now',
      'everything that was in the propagator is dead since Thursday',
    ],
  },
  {
    name: '<plant> came in to <place>',
    kind: 'move',
    head: 'come~past|come in|inside|indoors|back|up|down|over|across',
    shape: 'subject',
    when: (p, f, t) =>
      standing(p, f, t) &&
      p.slice(t).some((piece) => piece.is === 'place' && /^(?:to|into|onto)$/.test(piece.prep ?? '')) &&
      // "Came in from Hexley to bench 4": no plants of ours.
      !p.some(
        (piece) => piece.is === 'word' && /^(?:from|plugs?|liners?|delivery|order|parcel)$/.test(piece.text),
      ),
    phrasings: [
      'the Salt Harrier have come in to the kitchen windowsill',
      'half the Salt Harrier have come in off the porch to the windowsill',
    ],
  },
  {
    name: '<plant> went to <place>',
    kind: 'move',
    head: 'go~ over|across|back|off|up|down|out? into|to|in|out|onto|on|under|back|up|down',
    shape: 'subject',
    when: standing,
    unless: (p, f, t) =>
      p.slice(t, t + 2).some(isReceiver) ||
      isGotGoing(p, f) ||
      (wordAt(p, f) === 'go' && followsWord(p, t, /^(?:next|soon|later)$/)),
    mustNot: ['got the Salt Harrier going in the greenhouse', 'Salt Harrier go in the cold frame next'],
    phrasings: [
      'ten Salt Harrier potted on, six of which went out to the cold frame and four onto the windowsill',
      'potted on six Salt Harrier, the rest went to the cold frame',
      'Salt Harrier went into the cold frame',
      'everything in the cold frame went over to the greenhouse yesterday so the bed can be scrubbed',
      'had the Salt Harrier down for Monday but the wind dropped, so they went into the cold frame',
    ],
  },
  {
    name: 'everything that was in <place> is sitting on <place>',
    kind: 'move',
    head: 'be~ sitting|standing|living|sat in|on|under|at',
    shape: 'subject',
    when: (p, f, t) =>
      standing(p, f, t) &&
      p.slice(0, f).some((piece) => piece.is === 'word' && /^(?:was|were|stood|lived)$/.test(piece.text)),
    phrasings: ['everything that was in the propagator is sitting on the windowsill as of this morning'],
    mustNot: ['the Salt Harrier is sitting on the windowsill'],
  },
  {
    name: '<plant> live in <place>',
    kind: 'move',
    head: 'live~|reside|resides|residing in|on|under|at',
    shape: 'subject',
    when: standing,
    // "Potted on the Salt Harrier that were living in the porch": which ones.
    unless: (p, f) =>
      p
        .slice(Math.max(0, f - 2), f)
        .some((piece) => piece.is === 'word' && /^(?:that|which)$/.test(piece.text)),
  },
  {
    name: '<plant> are in <place> now',
    kind: 'move',
    head: "be~|they're out|up|down|over|back? in|on|under|at the|my? <place> now|nowadays|currently|these|<when>",
    shape: 'subject',
    when: (p, f) =>
      wordAt(p, f) === "they're" ||
      p.slice(0, f).some((piece, n) => piece.is === 'plant' || isTold(piece, n, p)),
    phrasings: [
      "they're back in the porch since yesterday",
      'potted two Salt Harrier up, the others are on the windowsill now',
      'the Salt Harrier are in the porch these days',
      'the older ones are in the porch now',
    ],
    // "Pinched the Salt Harrier that are in the tunnel yesterday": which ones.
    unless: (p, f, t) =>
      /^(?:that|which)$/.test(wordAt(p, f - 1)) ||
      (wordAt(p, t - 1) === 'these' && wordAt(p, t) !== 'days') ||
      groundAt(p, t - 2) ||
      bedAt(p, t - 2),
    mustNot: [
      'the Salt Harrier are in the front border now',
      'the Salt Harrier are in the far bed since Sunday',
    ],
  },
  {
    // What is back there was brought back.
    name: '<plant> are back in <place>',
    kind: 'move',
    head: "are|is|they're|theyre back in|on|under|at the|my|our? <place>",
    shape: 'subject',
    when: (p, f) =>
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      (p[f - 1]?.is === 'plant' ||
        /^they/.test(wordAt(p, f)) ||
        /^(?:they|those|these|both)$/.test(wordAt(p, f - 1))) &&
      // "The Salt Harrier had greenfly, they're back in the porch".
      p.slice(0, f).every((_, at) => causeAt(p, at) === undefined),
    phrasings: [
      "watered the Salt Harrier and they're back on the windowsill",
      'potted five Salt Harrier, gave them a drink, and they are back in the porch',
    ],
    unless: (p, f, t) => /^(?:that|which)$/.test(wordAt(p, f - 1)) || groundAt(p, t - 1) || bedAt(p, t - 1),
    mustNot: [
      'the slugs are back in the porch',
      'watered the Salt Harrier, the kids are back in the porch',
      "sprayed the Salt Harrier for slugs, they're back in the porch",
      'are the Salt Harrier back in the porch?',
    ],
  },
  {
    name: '<plant> now in <place>',
    phrasings: ['everything in the propagator is now in the greenhouse'],
    kind: 'move',
    head: 'now in|on|under|at|outside|inside|indoors',
    shape: 'subject',
    when: (p, f, t) =>
      (precedes(p, f, 5, 'plant') || p.slice(0, f).some(isTold)) &&
      (p[t]?.is === 'place' || wordAt(p, t) === 'the' || OUTSIDE.test(wordAt(p, t - 1))),
  },
  {
    name: '<plant> to <place>',
    kind: 'move',
    head: 'to|into|onto|off the? <place>',
    shape: 'subject',
    faint: true,
    // Into a border is planted out.
    unless: (p, f, t) => {
      const place = p[t - 1];
      return wordAt(p, f) === 'into' && place?.is === 'place' && /\bborder$/.test(place.place);
    },
    when: (p, f) =>
      p.slice(0, f).some((piece) => piece.is === 'plant' || isWhole(piece)) &&
      !p
        .slice(0, f)
        .some(
          (piece) =>
            piece.is === 'word' && piece.verb !== undefined && !/^(?:mist|pot|water)$/.test(piece.text),
        ) &&
      !p.some(
        (piece) =>
          piece.is === 'word' &&
          /^(?:cuttings|cutting|next|close|want|need|going|how|why|will|tomorrow)$/.test(piece.text),
      ),
    phrasings: ['Salt Harrier to the greenhouse', 'everything out of the greenhouse into the greenhouse'],
  },
];
