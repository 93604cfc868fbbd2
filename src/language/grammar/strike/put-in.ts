/** Cuttings told by where they were put to root: "put six in water", "whacked in 16", "filled a tray with them". */
import { CUTTINGS } from '../taken-away.js';
import { setGoing } from './set-going.js';
import { plantsIn } from '../../sentences/sentences.js';
import { closeBehind, endsAt, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { inVessels } from './in-vessels.js';
import { whackedIn } from './whacked-in.js';

export const putIn: readonly Rule[] = [
  {
    name: 'filled a tray with <plant>',
    kind: 'strike',
    head: 'fill~past .. with|of',
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t, 'plant', 'count', 'cutting') &&
      (p.slice(f, t).some(({ is }) => is === 'pots' || is === 'size') ||
        // "Filled the propagator with …": only cuttings told as such.
        (p.slice(f, t).some(({ is }) => is === 'place') &&
          p.slice(t).some(({ is }) => is === 'count') &&
          p
            .slice(t)
            .some((piece) => piece.is === 'cutting' || (piece.is === 'word' && CUTTINGS.test(piece.text))))),
    phrasings: ['filled the propagator with Salt Harrier, 18 basal cuttings all told'],
    mustNot: ['filled the greenhouse with Salt Harrier', 'filled the greenhouse with Salt Harrier cuttings'],
  },
  ...setGoing,
  {
    name: '<count> more <plant> on the go',
    kind: 'strike',
    head: 'on the go|way',
    shape: 'subject',
    when: (p, f) => {
      const count = p.slice(Math.max(0, f - 4), f).find(({ is }) => is === 'count');
      return count?.is === 'count' && count.quantity.more === true && precedes(p, f, 4, 'plant');
    },
    phrasings: ['8 more Salt Harrier on the go in the propagator'],
    mustNot: ['8 Salt Harrier on the way to the show'],
  },
  {
    name: 'put <count> <plant> in <medium>',
    kind: 'strike',
    head: 'put~|start~past|pop~past|stick~past|bung~past|place~past|chuck~past|throw~past|sling~past|fire~past|lob~past|fling~past|whack~past|shove~past|set~past|root~past|dunk~past|plonk~past .. in|into the? <pots>? of|with? <medium>',
    shape: 'object',
    when: (p, f, t) =>
      (p.slice(f, t).some(({ is }) => is === 'count' || is === 'cutting') ||
        p.slice(f, t).some((piece) => piece.is === 'word' && CUTTINGS.test(piece.text))) &&
      !p.slice(f, t).some(({ is }) => is === 'size') &&
      // "Chucked in the sand bed", but "chucked six cuttings in the compost": thrown out.
      (wordAt(p, t - 2) !== 'the' || /^(?:bed|beds|bench|frame|trough|box)$/.test(wordAt(p, t))) &&
      // "Seven rooted cuttings": that they are.
      !(wordAt(p, f) === 'rooted' && p[f - 1]?.is === 'count') &&
      !p.slice(f, t).some((piece) => piece.is === 'word' && /^(?:flowers?|blooms?|roses?)$/.test(piece.text)),
    phrasings: [
      'put five Salt Harrier in perlite',
      'chucked a few Salt Harrier cuttings in the sand bed before milking',
      'yesterday I have put 7 twigs of Salt Harrier in a glass with water',
    ],
    mustNot: [
      'chucked six Salt Harrier cuttings in the compost',
      'planted seven rooted cuttings of Salt Harrier in compost',
      'put six Salt Harrier flowers in a vase with water',
    ],
  },
  {
    // Plants nobody knew of before, so that none of them can have been potted up together.
    name: 'shoved <count> <new plant> and <count> <new plant> in the same pot',
    kind: 'strike',
    head: 'put~|start~past|pop~past|bung~past|place~past|chuck~past|whack~past|shove~past|set~past|plonk~past|tuck~past .. in|into the? <pots>',
    shape: 'object',
    when: (p, f, t) => {
      const plants = plantsIn(p.slice(f, t)).filter(({ plant }) => plant.variety !== undefined);
      const counts = p.slice(f, t).filter(({ is }) => is === 'count');
      return (
        plants.length > 1 &&
        counts.length === plants.length &&
        plants.every(({ known }) => !known) &&
        !p.slice(0, t).some((piece) => piece.is === 'word' && /^(?:rooted|bulbs?|seeds?)$/.test(piece.text))
      );
    },
    phrasings: ['shoved 3 Marsh Canon coleus and 2 Pan Piper fuchsia in the same pot'],
    mustNot: ['shoved 3 Salt Harrier and 2 Tallow Bell in the same pot'],
  },
  {
    name: 'planted <count> cuttings of <plant> in <medium>',
    kind: 'strike',
    head: 'plant~past .. in|into <pots>? of|with? <medium>',
    shape: 'object',
    when: (p, f, t) =>
      p.slice(f, t).some(({ is }) => is === 'plant') &&
      p.slice(f, t).some(({ is }) => is === 'count') &&
      p.slice(f, t).some((piece) => piece.is === 'word' && /^(?:cuttings|slips)$/.test(piece.text)) &&
      !p.slice(0, t).some((piece) => piece.is === 'word' && piece.text === 'rooted'),
    phrasings: ['I have planted today seven cuttings from Salt Harrier in sand'],
    mustNot: [
      'planted seven rooted cuttings of Salt Harrier in compost',
      'planted seven Salt Harrier in sand',
      'potted seven Salt Harrier cuttings into compost',
    ],
  },
  {
    // A plant nobody knew of before: it has no pots that could be stood in water.
    name: '<count> <new plant> stood in <pots> of water',
    kind: 'strike',
    head: 'stood|standing|sat|sitting in <pots> of? <medium>',
    shape: 'subject',
    when: (p, f) =>
      precedes(p, f, 6, 'count') && p.slice(0, f).some((piece) => piece.is === 'plant' && !piece.known),
    phrasings: [
      "had a go at a new one today six water bailiff that's a plectranthus just stood in a jar of water",
    ],
    mustNot: ['six Salt Harrier stood in a jar of water overnight'],
  },
  {
    name: 'put <count> <plant> in to root',
    kind: 'strike',
    head: 'put~|pop~past|set~past|stick~past|start~past|tuck~past .. to root|strike',
    shape: 'object',
    when: (p, f, t) =>
      p.slice(f, t).some(({ is }) => is === 'count') &&
      p.slice(f, t).some(({ is }) => is === 'plant') &&
      !followsWord(p, t, /^(?:out|through|well)$/),
    phrasings: ["I've just put 7 Salt Harrier in to root"],
    mustNot: ['put the Salt Harrier in the propagator to root'],
  },
  {
    name: '<count> cuttings of <plant> went in',
    kind: 'strike',
    head: 'go~past|gone|going|popped|put|in|got in|into',
    shape: 'subject',
    when: (p, f, t) =>
      (precedes(p, f, 8, 'plant') ||
        // "Been at the Salt Harrier again, 2 cuttings gone in".
        (CUTTINGS.test(wordAt(p, f - 1)) &&
          p[f - 2]?.is === 'count' &&
          endsAt(p, t) &&
          p.slice(0, f).some(({ is }) => is === 'plant'))) &&
      precedes(p, f, 8, 'count', 'cutting', 'pots') &&
      (p
        .slice(0, f)
        .some(
          (piece) =>
            piece.is === 'cutting' ||
            (piece.is === 'word' && CUTTINGS.test(piece.text)) ||
            (piece.is === 'count' && piece.quantity.more === true),
        ) ||
        endsAt(p, t) ||
        p[t]?.is === 'pots' ||
        p[t]?.is === 'medium' ||
        (p[t]?.is === 'word' && /^to$/.test(wordAt(p, t)))) &&
      !(p[t]?.is === 'size') &&
      // Irish "after going in".
      (wordAt(p, f) !== 'going' || wordAt(p, f - 1) === 'after') &&
      // "Gone in that frost".
      !/^(?:that|this|last)$/.test(wordAt(p, t)) &&
      !followsWord(p, t, /^(?:bin|bed|border|ground|compost|garden)$/),
    phrasings: ['been at the Salt Harrier again, 2 cuttings gone in'],
    mustNot: [
      'every last one of the Salt Harrier gone in that frost',
      'been at the Salt Harrier again, 2 cuttings gone in the heat',
    ],
  },
  ...inVessels,
  {
    name: '<count> cuttings of <plant> are in',
    kind: 'strike',
    head: "be~|they're all|safely|now? in",
    shape: 'subject',
    when: (p, f, t) =>
      endsAt(p, t) &&
      p[t]?.is !== 'place' &&
      precedes(p, f, 6, 'plant') &&
      (precedes(p, f, 6, 'count') || p[t + 1]?.is === 'count') &&
      p
        .slice(0, f)
        .some((piece) => piece.is === 'cutting' || (piece.is === 'word' && CUTTINGS.test(piece.text))),
    phrasings: [
      'all 16 Salt Harrier cuttings are in now',
      'the slips of Salt Harrier are in, seven in one pot',
    ],
    mustNot: ['six Salt Harrier cuttings are in the porch'],
  },
  ...whackedIn,
  {
    name: 'dipped <count> <plant> and stuck them in',
    kind: 'strike',
    head: 'dip~past <count>',
    shape: 'object',
    when: (p, _f, t) =>
      closeBehind(p, t, 'plant') &&
      p
        .slice(t)
        .some(
          (piece) =>
            (piece.is === 'word' && /^(?:stuck|struck|popped|put|inserted)$/.test(piece.text)) ||
            (piece.is === 'pots' && piece.pots !== undefined),
        ),
    phrasings: [
      'prepped and dipped 15 Salt Harrier, all in one tray',
      'dipped 15 Salt Harrier in honey and stuck em in sand',
    ],
  },
  {
    name: 'put down <count> <plant>',
    kind: 'strike',
    head: 'put~ down <count>',
    shape: 'object',
    when: (p, _f, t) =>
      closeBehind(p, t, 'plant') &&
      !p.slice(t, t + 6).some(
        (piece) =>
          piece.is === 'place' ||
          // Put down in the book.
          (piece.is === 'word' && /^(?:lost|dead|died|gone|sold|given|rooted|potted)$/.test(piece.text)),
      ),
    phrasings: ['put down 20 Salt Harrier there on Sunday'],
    mustNot: ['put down 2 Salt Harrier sold'],
  },
  {
    name: '<count> <plant> cuttings in <medium>',
    kind: 'strike',
    head: 'cuttings|slips|shoots|snippets|sprigs|leaf|leaves|stems|stalks|ends|pieces|bits|lengths|<cutting> .. in|into|on <pots>? of? <medium>',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 5, 'count') &&
      (precedes(p, f, 8, 'plant') ||
        closeBehind(p, f + 1, 'plant') ||
        (f === 1 && p[f + 1]?.is !== 'plant')) &&
      !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb?.form === 'past') &&
      !p
        .slice(f, t)
        .some(
          (piece) =>
            piece.is === 'word' &&
            /^(?:going|gone|rooted|rooting|showing|growing|sprouting|dead|dying|brown|yellow|yellowing|rotting|rotten|soggy|floating|left|roots)$/.test(
              piece.text,
            ),
        ),
    phrasings: [
      '5 Salt Harrier cuttings are now in a jar of water',
      '3 leaf cuttings from my Salt Harrier are in damp perlite now',
      'seven Salt Harrier shoots now tucked up in vermiculite',
      'two leaves of the snake plant in another glass of water',
    ],
    mustNot: [
      '5 Salt Harrier cuttings going brown in water',
      '5 Salt Harrier cuttings rooted in water',
      'four Salt Harrier shoots showing in compost',
      'two Salt Harrier leaves floating in the water',
    ],
  },
];
