/** Stock plants potted up or woken: "boxed up the tubers", "woke the stools". */
import type { Piece } from '../../pieces/pieces.js';
import { followsWord, type Rule, wordAt } from '../rule.js';
import { garden } from '../plant-out/quarters.js';
import { anyStock, isPutBy, isSetGrowing, ofStock } from './kinds-of-plant.js';

/** Plants that rest are woken: named right behind it, with their number at most between. */
function isWoken(pieces: readonly Piece[], from: number, to: number): boolean {
  const verb = pieces[from];
  if (verb?.is !== 'word' || verb.verb?.lemma !== 'wake') return false;
  let at = to;
  while (/^(?:the|my|our|all|both|those|these)$/.test(wordAt(pieces, at)) || pieces[at]?.is === 'count') at++;
  return pieces[at]?.is === 'plant';
}

/** A tuber told of before, or that it slept; and nothing that was taken off it. */
const restedBefore = (pieces: readonly Piece[], from: number): boolean => {
  const before = pieces.slice(0, from);
  return (
    before.some((piece) => piece.is === 'word' && /^(?:tubers?|hibernation|dormancy)$/.test(piece.text)) &&
    !before.some(
      (piece) =>
        piece.is === 'cutting' ||
        (piece.is === 'word' && /^(?:cuttings?|basals|shoots|slips|off|rooted)$/.test(piece.text)),
    )
  );
};

/** "Divided the Salt Harrier and …": plants that were parted at the root, and no pot of cuttings. */
const dividedBefore = (pieces: readonly Piece[], from: number): boolean =>
  pieces
    .slice(0, from)
    .some(
      (_, at) =>
        wordAt(pieces, at) === 'divided' &&
        pieces.slice(at, from).some(({ is }) => is === 'plant') &&
        !pieces
          .slice(at, from)
          .some(
            (piece, n) => piece.is === 'pots' || /^(?:cuttings?|pots?|trays?)$/.test(wordAt(pieces, at + n)),
          ),
    );

export const woken: readonly Rule[] = [
  {
    name: 'potted up <count> tubers',
    kind: 'stock',
    head: 'pot~past up|on?',
    shape: 'object',
    when: (p, f, t) =>
      ofStock(p, t) ||
      // "Divided the crown and potted up three bits".
      dividedBefore(p, f) ||
      // "Found a tuber I'd missed, potted it".
      restedBefore(p, f) ||
      p
        .slice(0, f)
        .some(
          (piece, at) =>
            piece.is === 'word' &&
            /^(?:mother|stock|parent)$/.test(piece.text) &&
            /^plants?$/.test(wordAt(p, at + 1)),
        ),
  },
  {
    name: 'boxed up <count> tubers',
    kind: 'stock',
    head: 'box~past|bed~past|plunged|nestled up|down?',
    shape: 'object',
    when: (p, f) =>
      (anyStock(p) || p.slice(f).some((piece) => piece.is === 'word' && piece.text === 'growth')) &&
      !isPutBy(p),
    unless: (p, f, t) => wordAt(p, f) === 'bedded' && (wordAt(p, t) === 'out' || garden(p, f, t)),
    phrasings: [
      'boxed up 6 Salt Harrier tubers',
      'fetched three Salt Harrier tubers out of the garage and bedded them in damp compost on the heated bench',
      'Salt Harrier stools bedded down in the greenhouse',
    ],
    mustNot: [
      'boxed up the Salt Harrier tubers for the winter',
      'bedded the Salt Harrier tubers down in dry sand in the garage',
      'bedded out three Salt Harrier tubers in the top border',
    ],
  },
  {
    name: 'woke <plant>',
    phrasings: ['woke the Salt Harrier stools', 'woke up the dahlias today', 'woke three Salt Harrier'],
    mustNot: [
      'woke up to find the Salt Harrier limp',
      'started the Salt Harrier',
      'brought the Salt Harrier tubers into the garage',
      'brought the Salt Harrier tubers in for the winter',
      'woke up and fed the Salt Harrier',
    ],
    kind: 'stock',
    head: 'wake~past|start~past|bring~past|coax~past up|off?',
    shape: 'object',
    when: (p, f, t) =>
      isWoken(p, f, t) ||
      (p.some(({ is }) => is === 'plant') &&
        (p.slice(t).some((piece) => piece.is === 'word' && piece.text === 'growth') ||
          (wordAt(p, f) === 'brought' ? isSetGrowing(p, t) : anyStock(p)))),
    // "Got started at last, 14 basals off the two crowns".
    unless: (p, _f, t) =>
      p.slice(t).some(({ is }) => is === 'cutting') &&
      !p.some((piece) => piece.is === 'word' && /^(?:took|taken|struck)$/.test(piece.text)),
  },
  {
    name: 'set <count> tubers in <place> to wake up',
    kind: 'stock',
    head: 'set~past|put~|stand~past|lay~past|bring~past|move~past|pop~past|stick~past|bung~past|place~past|chuck~past .. to wake|sprout|shoot|chit|start|get|break|bring',
    shape: 'object',
    when: (p, f, t) =>
      anyStock(p.slice(f, t)) &&
      p.slice(f, t).some(({ is }) => is === 'plant') &&
      (!/^(?:get|bring)$/.test(wordAt(p, t - 1)) || followsWord(p, t, /^(?:going|growing|moving|on|away)$/)),
    phrasings: [
      'set five Salt Harrier tubers in the greenhouse to wake them up',
      'stood three Salt Harrier crowns in the shed to get them going',
      'moved the Salt Harrier tubers to the greenhouse to sprout',
      'put 5 Salt Harrier tubers in trays in the greenhouse to shoot',
    ],
    mustNot: [
      'put the Salt Harrier tubers in the shed to dry',
      'moved the Salt Harrier cuttings to the greenhouse to get them going',
    ],
  },
  {
    name: '<count> <plant> tubers started',
    kind: 'stock',
    head: 'tubers|tuber|crowns|stools|crown',
    shape: 'subject',
    faint: true,
    when: (p) =>
      p.some(({ is }) => is === 'plant') &&
      p.some(({ is }) => is === 'count') &&
      !isPutBy(p) &&
      !p.some(
        (piece) =>
          piece.is === 'word' &&
          /^(?:not|order|ordered|due|coming|waiting|need|want|look|looking|rotten|rotting|dead|buy|must|soft|sprouting|basals|cuttings|shoots|slips|off|back|lifted|dug|checked|inspected|looked|counted|sorted|cleaned|washed|labelled|dusted|photographed|found|saw|firm)$/.test(
            piece.text,
          ),
      ) &&
      !p.some(({ is }) => is === 'cutting'),
  },
  {
    name: 'tubers …, laid them in compost',
    kind: 'stock',
    head: 'lay~past|sat|set~past|get~past|put~past|stand~past|tuck~past|pop~past|plant~past|settled|plonk~past|stick~past them|it|em|those',
    shape: 'object',
    when: (p, f, t) => anyStock(p.slice(0, f)) && isSetGrowing([...p.slice(0, f), ...p.slice(t)], f),
    phrasings: [
      'lifted five Salt Harrier tubers out of the box and laid them in compost on the heated bench',
      'dug the Salt Harrier crown out of the sand and sat it in a 3 litre pot',
    ],
    mustNot: ['lifted the Salt Harrier tubers and laid them in the garage to dry'],
  },
  {
    name: '<plant> tubers into trays',
    kind: 'stock',
    head: 'tubers|tuber|crowns|stools|crown .. into',
    shape: 'subject',
    when: (p, f, t) => p.some(({ is }) => is === 'plant') && isSetGrowing(p.slice(f), t - f - 1),
    phrasings: ['the Salt Harrier tubers are out of the press and into compost in the tunnel'],
    mustNot: ['the Salt Harrier tubers went into the garage for the winter'],
    // "Got the tubers into trays": told by its verb.
    unless: (p, _f, t) =>
      p
        .slice(0, t)
        .some((piece) => piece.is === 'word' && piece.verb?.form === 'past' && piece.verb.lemma !== 'be'),
  },
  {
    name: '<plant> tubers started',
    kind: 'stock',
    head: 'tubers|tuber|crowns|stools|crown .. started|potted|boxed|woken|off|going',
    shape: 'subject',
    when: (p) => p.some(({ is }) => is === 'plant'),
    // "Bought a dahlia tuber and potted it up": told by its coming.
    unless: (p, f, t) =>
      wordAt(p, t - 1) === 'potted' &&
      wordAt(p, t - 2) === 'and' &&
      /^(?:it|them|this|both|straight)$/.test(wordAt(p, t)) &&
      p.slice(0, f).some((piece) => /^(?:a|an)$/.test(piece.is === 'word' ? piece.text : '')),
  },
];
