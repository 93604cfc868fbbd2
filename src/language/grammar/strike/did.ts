/** Cuttings told by the doing alone: "did ten", "did two pots of Salt Harrier, four in each". */
import { closeBehind, followsWord, type Rule, wordAt } from '../rule.js';
import { isOfEach } from '../../acts/drafting/beside-counts.js';
import type { Piece } from '../../pieces/pieces.js';
import { spoken } from './of-cuttings.js';

/** Looked over or treated, and not made. */
const NO_CUTTINGS =
  /^(?:roots?|rooted|rooting|dead|died|rotted|lost|taken|have|had|has|were|are|showing|pellets?|slugs?)$/;

export const did: readonly Rule[] = [
  {
    name: 'did <count> cuttings of <plant>',
    kind: 'strike',
    head: 'do~past',
    shape: 'object',
    // "Did take nine cuttings": the taking tells it.
    unless: (p, f, t) =>
      /^(?:take|strike|stick|cut|insert)$/.test(wordAt(p, t)) ||
      // "Hers are all potted on, I've only done four Salt Harrier": the same.
      p
        .slice(0, f)
        .some(
          (piece) =>
            piece.is === 'word' && /^(?:potted|repotted|pinched|planted|watered|fed|sold)$/.test(piece.text),
        ),
    mustNot: ["hers are all potted on, I've only done four Salt Harrier"],
    when: (p, f, t) =>
      spoken(p, f, t) ||
      (p[t]?.is === 'count' &&
        closeBehind(p, t, 'plant') &&
        (p.slice(t).some(({ is }) => is === 'pots' || is === 'cutting' || is === 'medium') ||
          // "Did 15 more Salt Harrier on Thursday".
          (p[t]?.is === 'count' && p[t].quantity.more === true) ||
          p.length < t + 5 ||
          // "Did 8 of the little blue salvia by the gate, we're calling it Tin Whistler".
          namesNew(p, t) ||
          // "Did 8 of the Salt Harrier, propagator", "…, same propagator".
          (p.at(-1)?.is === 'place' &&
            p.at(/^(?:same|in|on)$/.test(wordAt(p, p.length - 2)) ? -3 : -2)?.is === 'break' &&
            p.length < t + 8) ||
          followsWord(p, t, /^(?:hormone|powder|gel)$/) ||
          followsWord(p, t, /^(?:tubers?|stools?|crowns?|stock)$/)) &&
        !followsWord(p, t, /^to$/)),
  },
  {
    name: 'did <pots> of <plant>, <count> in each',
    kind: 'strike',
    head: 'do~past <pots>',
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t, 'plant') &&
      p
        .slice(f)
        .some(
          (piece, n) =>
            (piece.is === 'count' && isOfEach(p, f + n)) || (piece.is === 'pots' && piece.each !== undefined),
        ) &&
      !followsWord(p, t, NO_CUTTINGS) &&
      p
        .slice(f)
        .every(
          (piece, n) => piece.is !== 'count' || !isOfEach(p, f + n) || !followsWord(p, f + n, NO_CUTTINGS),
        ),
    phrasings: [
      'did two pots of Salt Harrier with four in each',
      'did two trays of Salt Harrier, ten in each',
      'did two pots of Salt Harrier, five to a pot',
    ],
    mustNot: [
      'did two trays of Salt Harrier today, five in each had roots',
      'did two trays of Salt Harrier, ten in each rooted',
      'did two trays of Salt Harrier, four in each died',
      'did two pots of Salt Harrier with slug pellets in each',
      'did two pots of Salt Harrier',
    ],
  },
  {
    name: 'did <plant>, <pots> of <count>',
    kind: 'strike',
    head: 'do~past the|my? <plant>',
    shape: 'object',
    // Told as one: so many pots, and how many in each.
    when: (p, _f, t) => p.slice(t).some((piece, n) => piece.is === 'count' && p[t + n + 1]?.is === 'pots'),
    unless: (p, _f, t) => p.slice(t).some((piece) => piece.is === 'word' && NO_CUTTINGS.test(piece.text)),
    phrasings: ['did the Salt Harrier this morning, three pots of four'],
    mustNot: [
      'did the Salt Harrier this morning, three pots of four rooted',
      'did the Salt Harrier this morning',
    ],
  },
];

/** A name that nobody knew, beside its crop. */
const namesNew = (pieces: readonly Piece[], from: number): boolean =>
  pieces.some(
    (piece, at) =>
      at >= from &&
      piece.is === 'plant' &&
      !piece.known &&
      piece.plant.variety !== undefined &&
      pieces[at + 1]?.is === 'plant',
  );
