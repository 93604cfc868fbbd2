/** Planted in final quarters. */
import type { Piece } from '../pieces.js';
import { endsAt, follows, followsWord, precedes, type Rule, wordAt } from './rule.js';

const GARDEN =
  /^(?:bed|beds|border|borders|ground|garden|flowerbed|flowerbeds|rockery|urn|urns|planter|planters|tubs|tub|trough|troughs|barrel|barrels|container|containers|basket|baskets|windowbox|windowboxes|patch|plot|allotment|verge|bank|lawn|soil|rows|row|hedge|orchard|basket|baskets|boxes|box|avenue|sundial|flowerpots)$/;
const garden = (pieces: readonly Piece[], _from: number, to: number): boolean =>
  // "In the honesty box": for sale.
  !followsWord(pieces, to, /^(?:honesty|stall|shop)$/) &&
  (followsWord(pieces, to, GARDEN) ||
    pieces
      .slice(to, to + 6)
      .some(
        (piece) =>
          piece.is === 'place' &&
          !piece.place.startsWith('standing') &&
          piece.place.split(' ').some((word) => GARDEN.test(word)),
      ));

/** "In the ground", as a word or as a place. */
export const groundAt = (pieces: readonly Piece[], at: number): boolean => {
  const piece = pieces[at];
  return wordAt(pieces, at) === 'ground' || (piece?.is === 'place' && /^(?:open )?ground$/.test(piece.place));
};

/** Where plants that simply went "into" it are planted. */
const INTO = /\b(?:border|window ?box|window ?boxes|rockery|hanging baskets?|raised beds?|flower ?bed)$/;

/** Words of a sentence that is no planting ("leggy in the border"). */
const OTHERWISE =
  /^(?:leggy|yellow|cuttings|cutting|looking|flowering|dead|aphids|buds|slugs|want|need|how|where|when|what|happy|still|for)$/;

/** "For the summer", "for good": how long they stay. */
const forTheSeason = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at) === 'for' &&
  (pieces[at + 1]?.is === 'when' ||
    /^(?:good|keeps|summer|season)$/.test(wordAt(pieces, at + (wordAt(pieces, at + 1) === 'the' ? 2 : 1))));

/** "With six of the Salt Harrier": nothing but their number before them. */
const plantStraightBehind = (pieces: readonly Piece[], from: number): boolean => {
  let at = from;
  while (pieces[at]?.is === 'count' || /^(?:the|my|all|of|those|more)$/.test(wordAt(pieces, at))) at++;
  return pieces[at]?.is === 'plant';
};

export const plantOutRules: readonly Rule[] = [
  {
    name: '<plant> out for hardening',
    kind: 'hardenOff',
    head: 'out|outside|gone|moved for|to hardening|acclimatising|harden off?',
    shape: 'subject',
    when: (p, f) => p.slice(0, f).some(({ is }) => is === 'plant'),
    phrasings: ['TB1 out for hardening'],
  },
  {
    name: 'dug in <count> <plant>',
    kind: 'plantOut',
    head: 'dig~past in',
    shape: 'object',
    when: (p, _f, t) => follows(p, t, 'plant', 'count'),
  },
  {
    name: 'in they went, <plant>',
    phrasings: ['in they went, Salt Harrier, along the path'],
    kind: 'plantOut',
    head: 'in they|we went|go',
    shape: 'object',
    when: (p, f, t) =>
      f === 0 &&
      p.slice(t).some(({ is }) => is === 'plant') &&
      (garden(p, f, t) ||
        followsWord(p, 0, /^(?:along|beside|round|by)$/) ||
        p.slice(t).some((piece) => piece.is === 'word' && /^(?:along|beside|round|path)$/.test(piece.text))),
  },
  {
    name: 'filled the urns with <plant>',
    kind: 'plantOut',
    head: 'fill~past|plant~past|make~past|stuffed|crammed up|out? .. with',
    shape: 'object',
    when: (p, f, t) =>
      plantStraightBehind(p, t) && (followsWord(p.slice(0, t), f, GARDEN) || garden(p, f, f + 1)),
    phrasings: ['filled the urns with Salt Harrier', 'planted up the tubs with six Salt Harrier'],
    mustNot: [
      'filled the trays with compost for the Salt Harrier',
      'filled the trough with water for the Salt Harrier',
    ],
  },
  {
    name: 'tubs done with <plant>',
    kind: 'plantOut',
    head: 'done|filled|planted|stuffed up? with',
    shape: 'object',
    when: (p, f, t) =>
      follows(p, t, 'plant') && (garden(p, 0, 0) || followsWord(p.slice(0, f), 0, GARDEN)) && f > 0,
    phrasings: ['patio tubs done with Salt Harrier'],
    mustNot: ['done with the Salt Harrier for today'],
  },
  {
    name: 'planted <count> <plant> out',
    kind: 'plantOut',
    head: 'plant~past .. out|up',
    shape: 'object',
    unless: (p, f, t) =>
      p.slice(f, t).some((piece) => piece.is === 'word' && /^(?:and|then|in|into)$/.test(piece.text)),
  },
  { name: 'planted out <count> <plant>', kind: 'plantOut', head: 'plant~ out', shape: 'object' },
  {
    name: 'planted <plant> in <place>',
    kind: 'plantOut',
    head: 'plant~past',
    shape: 'object',
    unless: (p, _f, t) => follows(p, t, 'size') || followsWord(p, t, /^(?:tubers?|seeds?|bulbs?)$/),
  },
  {
    name: '<count> <plant> into the border',
    kind: 'plantOut',
    head: 'into|to the|my? back|front|middle|end? of? the? border|<place>',
    shape: 'subject',
    faint: true,
    when: (p, f, t) => {
      const place = p[t - 1];
      return (
        (place?.is === 'place' ? INTO.test(place.place) : wordAt(p, t - 1) === 'border') &&
        p.slice(0, f).some(({ is }) => is === 'plant') &&
        !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb !== undefined)
      );
    },
    // "To the front border by Friday": still to be done.
    unless: (p) => p.some((piece) => piece.is === 'when' && /^by\b/i.test(piece.when.words)),
    phrasings: [
      'three Salt Harrier into the long border yesterday evening',
      'three Salt Harrier into the window box',
      'Salt Harrier to the back of the border',
    ],
    mustNot: [
      'three Salt Harrier into the cold frame',
      'three Salt Harrier into the hot bed',
      'four Salt Harrier to the front border by Friday',
    ],
  },
  {
    name: 'whacked <count> <plant> in the bed',
    kind: 'plantOut',
    head: 'whack~past|bung~past|shove~past|stick~past|pop~past|bang~past|plonk~past|put~ <count>? of? the? <plant> <plant>? in|into',
    shape: 'object',
    when: (p, _f, t) =>
      p
        .slice(t, t + 3)
        .some(
          (piece) =>
            piece.is === 'place' &&
            /(?<!(?:standing|sand|mist|hot|prop) )\b(?:bed|border|rockery)$/.test(piece.place),
        ),
    phrasings: ['whacked nine Salt Harrier in the front bed this arvo'],
    mustNot: ['whacked nine Salt Harrier in the sand bed'],
  },
  {
    name: '<count> <plant> put down in the bed',
    kind: 'plantOut',
    head: 'put~past|pop~past|stick~past|tuck~past|dig~past down|out? in|into',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 2, 'plant', 'count') &&
      garden(p, f, t) &&
      !p
        .slice(t, t + 4)
        .some(
          (piece) =>
            piece.is === 'medium' || (piece.is === 'place' && /^(?:sand|mist|hot|prop)/.test(piece.place)),
        ),
    phrasings: ['ten Salt Harrier sold, the last three put down in the bed by the gate'],
    mustNot: ['ten Salt Harrier sold, the last three put down in the sand bed'],
  },
  { name: 'bedded out <count> <plant>', kind: 'plantOut', head: 'bed~past out|in?', shape: 'object' },
  {
    name: 'set out <count> <plant>',
    kind: 'plantOut',
    head: 'set~past|put~ out',
    shape: 'object',
    when: (p, f, t) =>
      follows(p, t, 'plant', 'count') &&
      (garden(p, f, t) || wordAt(p, f) === 'set') &&
      !followsWord(p, t, /^(?:cuttings|cutting|trays|pots|labels|tools)$/),
  },
  {
    name: 'put <plant> in along <place>',
    kind: 'plantOut',
    head: 'put~|pop~past|stick~past|bung~past|shove~past|plonk~past|get~past|dig~past|tuck~past|go~past|gone|be~ .. in|out along|beside|round|around|behind|alongside|by',
    shape: 'object',
    when: (p, f, t) =>
      (p.slice(f, t).some(({ is }) => is === 'plant') || p.slice(0, f).some(({ is }) => is === 'plant')) &&
      !p.some(
        (piece) =>
          (piece.is === 'word' && /^(?:cuttings|cutting|still|pots|trays|if|want)$/.test(piece.text)) ||
          // "Gone out on the bench by the shed": still in their pots.
          (piece.is === 'place' && /\b(?:bench|shelf|table|staging|stand)\b/.test(piece.place)),
      ) &&
      (p[t]?.is === 'place' || /^(?:the|my|our)$/.test(wordAt(p, t))),
    phrasings: [
      'bunged all the Salt Harrier in along the back fence',
      'the Tallow Bell are all in along the avenue now',
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
    unless: (p, _f, t) =>
      followsWord(p, t, /^(?:cuttings|cutting|fleece|cover)$/) || follows(p, t, 'cutting'),
  },
  {
    name: '<plant> went in the bed',
    kind: 'plantOut',
    head: 'go~past|gone|get~past|be~ in|into|out',
    shape: 'subject',
    when: (p, f, t) =>
      (precedes(p, f, 8, 'plant', 'count') || precedes(p, f, 3, 'word')) &&
      garden(p, f, t) &&
      (p.slice(0, f).some(({ is }) => is === 'plant') || /^(?:they|them|all)$/.test(wordAt(p, f - 1))),
    unless: (p) => p.some((piece) => piece.is === 'word' && /^(?:cuttings|cutting)$/.test(piece.text)),
  },
  {
    name: '<plant> in the ground',
    phrasings: ['Salt Harrier in the ground', 'the Salt Harrier are all in the ground now'],
    kind: 'plantOut',
    head: 'in|into the ground|<place>',
    shape: 'subject',
    when: (p, f, t) => p.slice(0, f).some(({ is }) => is === 'plant') && groundAt(p, t - 1),
  },
  {
    name: '<plant> in their final home',
    kind: 'plantOut',
    head: 'final|permanent|forever|flowering home|homes|place|places|position|positions|quarters|spot|spots',
    shape: 'subject',
    when: (p, f) => p.slice(0, f).some(({ is }) => is === 'plant'),
  },
  {
    name: '<plant> in the bed',
    kind: 'plantOut',
    head: 'in|along|into|round|by|down|out',
    shape: 'subject',
    faint: true,
    when: (p, f, t) =>
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      garden(p, f, t) &&
      !p.some(
        (piece, at) =>
          piece.is === 'word' &&
          ((piece.verb !== undefined && !GARDEN.test(piece.text)) || OTHERWISE.test(piece.text)) &&
          !forTheSeason(p, at),
      ),
    phrasings: ['two Salt Harrier in the big tub by the door for the summer'],
    mustNot: ['Salt Harrier in the border for sale'],
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
  {
    name: '<plant> out, <place>',
    phrasings: ['Salt Harrier out, front border'],
    kind: 'plantOut',
    head: 'out',
    shape: 'subject',
    faint: true,
    when: (p, f, t) =>
      p[f - 1]?.is === 'plant' &&
      endsAt(p, t) &&
      p
        .slice(t)
        .some(
          (piece) =>
            piece.is === 'place' || (piece.is === 'word' && GARDEN.test(piece.text)) || piece.is === 'count',
        ) &&
      garden(p, f, t + 1),
  },
];
