/** Plants told by where they are now: "put six in the bed", "in the ground at last", "out, front border". */
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, follows, followsWord, precedes, wordAt, type Rule } from '../rule.js';
import { areCuttings, GARDEN, garden, groundAt, tellsWhich } from './quarters.js';

/** Words of a sentence that is no planting ("leggy in the border"). */
const OTHERWISE =
  /^(?:leggy|yellow|cuttings|cutting|looking|flowering|dead|aphids|buds|slugs|want|need|how|where|when|what|happy|still|for)$/;

/** There to root, or there all winter. */
const STAYED = /^(?:cuttings?|still|tubers?|bulbs?|corms?|stools?|left|frost)$/;

/** "For the summer", "for good": how long they stay. */
const forTheSeason = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at) === 'for' &&
  (pieces[at + 1]?.is === 'when' ||
    /^(?:good|keeps|summer|season)$/.test(wordAt(pieces, at + (wordAt(pieces, at + 1) === 'the' ? 2 : 1))));

/** "Did it Sunday": the same again, with its day. */
const isDidIt = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at) === 'did' && wordAt(pieces, at + 1) === 'it' && pieces[at + 2]?.is === 'when';

/** "They're all out now", "the lot are out": plants, without their name. */
const theyAreOut = (pieces: readonly Piece[], from: number): boolean =>
  wordAt(pieces, from) === 'out' &&
  pieces
    .slice(0, from)
    .some(
      (piece) =>
        piece.is === 'count' || (piece.is === 'word' && /^(?:they|they're|they've)$/.test(piece.text)),
    );

/** Where pots stand, and nothing is planted. */
const STANDS =
  /\b(?:bench|shelf|table|staging|stand|windowsill|windowledge|sill|propagator|heat mat|heater)\b/;
const UNDER_COVER = /\b(?:frame|greenhouse|tunnel|shed|house|porch)$/;

export const inTheBed: readonly Rule[] = [
  {
    name: 'put <plant> in along <place>',
    kind: 'plantOut',
    head: 'put~|pop~past|stick~past|bung~past|whack~past|bang~past|chuck~past|sling~past|shove~past|plonk~past|get~past|dig~past|tuck~past|go~past|gone|be~ .. in|out along|beside|round|around|behind|alongside|by',
    shape: 'object',
    when: (p, f, t) =>
      (p.slice(f, t).some(({ is }) => is === 'plant') || p.slice(0, f).some(({ is }) => is === 'plant')) &&
      !p.some(
        (piece) =>
          (piece.is === 'word' && /^(?:cuttings?|slips?|still|pots|trays|if|want)$/.test(piece.text)) ||
          // "Gone out on the bench by the shed": still in their pots.
          (piece.is === 'place' && STANDS.test(piece.place)),
      ) &&
      (p[t]?.is === 'place' || /^(?:the|my|our)$/.test(wordAt(p, t))),
    phrasings: [
      'bunged all the Salt Harrier in along the back fence',
      'the Tallow Bell are all in along the avenue now',
      "whacked 20 Salt Harrier in along the neighbours' driveway",
      'chucked six Salt Harrier in round the pond',
    ],
    mustNot: [
      'put six Salt Harrier in along the windowsill',
      'chucked six Salt Harrier in the bin by the shed',
    ],
  },
  {
    name: 'put in <count> <plant> along <place>',
    kind: 'plantOut',
    head: 'put~|pop~past|stick~past|bung~past|whack~past|shove~past|plonk~past in|out .. along|beside|alongside|behind',
    shape: 'object',
    when: (p, f, t) =>
      p.slice(f, t).some(({ is }) => is === 'plant') &&
      !follows(p, t, 'plant') &&
      !p.some(
        (piece) =>
          (piece.is === 'word' && /^(?:cuttings?|edges?|rims?|pots?|tray|if|want)$/.test(piece.text)) ||
          (piece.is === 'place' && (STANDS.test(piece.place) || UNDER_COVER.test(piece.place))),
      ),
    phrasings: ['put in 8 Salt Harrier along the driveway'],
    mustNot: [
      'put in 8 Salt Harrier cuttings along the edge of a pot',
      'put in 8 Salt Harrier along the windowsill',
      'put in 8 Salt Harrier beside the others in the propagator',
      'stuck in 8 Salt Harrier beside the Tallow Bell',
    ],
  },
  {
    name: 'put <plant> in the bed',
    kind: 'plantOut',
    head: 'put~|pop~past|stick~past|set~past|place~past|bung~past|dig~past|plonk~past|get~past|move~past|transplant~past|bring~past|tuck~past|shove~past|go~past|shift~past|drop~past|settled|sling~past|lob~past in|out|into?',
    shape: 'object',
    when: (p, f, t) =>
      (follows(p, t, 'plant', 'count') || followsWord(p, t, /^(?:them|em|those)$/)) &&
      garden(p, f, t) &&
      followsWord(p, t, /^(?:in|into|out|along|round|by|to)$/),
    unless: (p, f, t) =>
      followsWord(p, t, /^(?:cuttings?|slips?|fleece|cover)$/) ||
      follows(p, t, 'cutting') ||
      // "Dug it out of its box of sand".
      (wordAt(p, f) === 'dug' && followsWord(p, t, /^out$/)),
    phrasings: [
      'stuck nine Salt Harrier in the memorial bed by the gate',
      'shoved 4 Salt Harrier in the far bed',
      'put six of the Salt Harrier out in the long bed',
    ],
    mustNot: [
      'stuck nine Salt Harrier slips in the bed by the gate',
      'stuck nine Salt Harrier in the heated bed',
    ],
  },
  {
    name: '<plant> went in the bed',
    kind: 'plantOut',
    head: 'go~past|gone|get~past|be~|living above|below|down|over|out? in|into|out',
    shape: 'subject',
    when: (p, f, t) =>
      (precedes(p, f, 8, 'plant', 'count') || precedes(p, f, 3, 'word')) &&
      garden(p, f, t) &&
      (p.slice(0, f).some(({ is }) => is === 'plant') || /^(?:they|them|all)$/.test(wordAt(p, f - 1))),
    unless: (p, f, t) =>
      p.some((piece) => piece.is === 'word' && /^(?:cuttings?|slips?)$/.test(piece.text)) ||
      tellsWhich(p, f) ||
      // Past their flowering.
      (/^(?:go|going|goes|gone)$/.test(wordAt(p, f)) &&
        p.slice(f, t).some((_, n) => wordAt(p, f + n) === 'over')),
    mustNot: [
      'the Salt Harrier have gone over in the border',
      'potted on the Salt Harrier that were living in the front bed',
    ],
  },
  {
    name: '<plant> in the ground',
    phrasings: [
      'Salt Harrier in the ground',
      'the Salt Harrier are all in the ground now',
      'in the ground at last, 6 by the steps',
      'all in the ground now',
    ],
    kind: 'plantOut',
    head: 'in|into the ground|<place>',
    shape: 'subject',
    when: (p, f, t) =>
      (p.slice(0, f).some(({ is }) => is === 'plant' || is === 'count') ||
        (f === 0 && (p[t] === undefined || p[t]?.is === 'break' || isAtLast(p, t)))) &&
      groundAt(p, t - 1) &&
      // "Five hardwood willow rods in the ground by the pond": there to root.
      !p.some((piece) => piece.is === 'cutting' || (piece.is === 'word' && STAYED.test(piece.text))),
    mustNot: ['8 tubers still in the ground'],
    // "Got nine Salt Harrier dahlias in the ground": told by its verb.
    unless: (p, f) =>
      p
        .slice(0, f)
        .some(
          (piece, at) =>
            piece.is === 'word' &&
            /^(?:get|put|stick|pop|dig|bung|shove|tuck|plonk)$/.test(piece.verb?.lemma ?? '') &&
            p[at + 1]?.is === 'count',
        ),
  },
  {
    name: '<place>: <count> <plant>',
    kind: 'plantOut',
    head: 'basket|trough|tub|border|bed|urn|planter|windowbox|<place>',
    shape: 'object',
    when: (p, f, t) => f === 0 && isPlanting(p, t),
    phrasings: ['trough: 2 Salt Harrier, 3 Tallow Bell', 'front border: 6 Salt Harrier'],
    mustNot: ['trough: 2 Salt Harrier dead', 'cold frame: 6 Salt Harrier'],
  },
  {
    name: '<plant> in their final home',
    kind: 'plantOut',
    head: 'final|permanent|forever|flowering home|homes|place|places|position|positions|quarters|spot|spots',
    shape: 'subject',
    when: (p, f, t) =>
      p.slice(0, f).some(({ is }) => is === 'plant') ||
      // "Permanent spot for the Salt Harrier: north border".
      (f === 0 &&
        wordAt(p, t) === 'for' &&
        closeBehind(p, t, 'plant') &&
        p.slice(t).some(({ is }) => is === 'place')),
    phrasings: ['permanent spot for the Salt Harrier: front border'],
  },
  {
    name: '<plant> in the bed',
    kind: 'plantOut',
    head: 'in|along|into|round|by|down|out',
    shape: 'subject',
    faint: true,
    when: (p, f, t) =>
      (p.slice(0, f).some(({ is }) => is === 'plant') || theyAreOut(p, f)) &&
      garden(
        p,
        f,
        Math.max(
          t,
          p.findIndex((_, at) => isDidIt(p, at)),
        ),
      ) &&
      !areCuttings(p) &&
      !p.some(
        (piece, at) =>
          piece.is === 'word' &&
          ((piece.verb !== undefined && !GARDEN.test(piece.text) && !isDidIt(p, at)) ||
            OTHERWISE.test(piece.text)) &&
          !forTheSeason(p, at),
      ),
    phrasings: [
      'two Salt Harrier in the big tub by the door for the summer',
      'Salt Harrier out, front border',
      "they're all out now, did it Sunday, the front border",
    ],
    mustNot: [
      'Salt Harrier in the border for sale',
      'six Salt Harrier in this morning, basal shoots, all in the south border',
    ],
  },
  {
    name: 'the last of <plant> went out',
    phrasings: ['the last of the Salt Harrier went out to the border'],
    kind: 'plantOut',
    head: 'go~past out',
    shape: 'subject',
    when: (p, f, t) =>
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      (garden(p, f, t) || followsWord(p, t, /^(?:beside|along|by|round)$/)),
  },
];

/** "In the ground at last", "… finally", "… now". */
const isAtLast = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:now|finally)$/.test(wordAt(pieces, at)) ||
  (wordAt(pieces, at) === 'at' && wordAt(pieces, at + 1) === 'last');

/** ": 2 Salt Harrier, 3 Tallow Bell" behind a garden's place: so many plants there and no word of anything else. */
function isPlanting(pieces: readonly Piece[], to: number): boolean {
  const where = pieces.slice(0, to);
  const listed = pieces.slice(to + 1);
  const mark = pieces[to];
  return (
    mark?.is === 'break' &&
    /^[:-]$/.test(mark.mark) &&
    where.some((piece) =>
      (piece.is === 'place' ? piece.place : piece.is === 'word' ? piece.text : '')
        .split(' ')
        .some((word) => GARDEN.test(word)),
    ) &&
    listed.some(({ is }) => is === 'count') &&
    listed.every(
      (piece) => /^(?:count|plant|break)$/.test(piece.is) || (piece.is === 'word' && piece.text === 'and'),
    )
  );
}
