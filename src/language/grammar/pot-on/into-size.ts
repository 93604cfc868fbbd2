/** Rooted cuttings told by the pots they are in now: "six of them into 9cm", "straight into 3 inch pots they went". */
import type { Piece } from '../../pieces/pieces.js';
import { endsAt, type Rule, wordAt } from '../rule.js';

/** Cuttings, tubers and crowns go into pots too, and are not potted on. */
export const aboutCuttings = (pieces: readonly Piece[], from: number, to: number): boolean =>
  pieces
    .slice(Math.max(0, from - 3), to + 8)
    .some(
      (piece) => piece.is === 'word' && /^(?:cutting|cuttings|struck|took|tubers?|crowns?)$/.test(piece.text),
    );

export const intoSize: readonly Rule[] = [
  {
    name: 'into <size> they went',
    kind: 'potOn',
    head: 'straight? into|in|to <pots>? <size> they|all|those|we went',
    shape: 'subject',
    unless: aboutCuttings,
    phrasings: ['Every one of the Salt Harrier has roots! Straight into 9cm pots they went.'],
    mustNot: ['took six Salt Harrier cuttings and into 9cm pots they went'],
  },
  {
    name: '<count> went into tubes',
    kind: 'potOn',
    head: 'go~past|gone straight? into individual|single|separate|own? tubes|tube|pots',
    shape: 'subject',
    when: (p, f, t) =>
      (p[f - 1]?.is === 'count' || p[f - 1]?.is === 'plant') &&
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      (wordAt(p, t - 1) !== 'pots' ||
        t > f + 3 ||
        p.slice(0, f).some((piece) => piece.is === 'word' && piece.text === 'rooted')),
    unless: aboutCuttings,
    phrasings: ['all ten Salt Harrier rooted, eight went into tubes'],
    mustNot: ['six Salt Harrier cuttings went into pots'],
  },
  {
    name: '<count> <plant> into tubes',
    kind: 'potOn',
    head: 'into individual|single|separate|own|solo? tubes|cups',
    shape: 'subject',
    when: (p, f, t) =>
      p[f - 1]?.is === 'plant' &&
      p.slice(0, f).some(({ is }) => is === 'count') &&
      endsAt(p, t) &&
      p
        .slice(0, f)
        .every(
          (piece) =>
            piece.is !== 'word' ||
            /^(?:and|of|the|whoops|oops|sorry|no|wait|actually|miscounted)$/.test(piece.text),
        ),
    phrasings: ['nine Salt Harrier and five Tallow Bell into tubes'],
    mustNot: ['want nine Salt Harrier into tubes'],
  },
  {
    name: '<plant> now in <size>',
    kind: 'potOn',
    head: 'now|all in|into <size>',
    shape: 'subject',
    when: (p, f) => p.slice(0, f).some(({ is }) => is === 'plant'),
    unless: aboutCuttings,
  },
  {
    name: '<plant> are in <size> now',
    kind: 'potOn',
    head: "are|is|they're|theyre|it's|live|lives|living|sit|sits|sitting <count>? in|into <pots>? <size>",
    shape: 'subject',
    when: (p, f, t) => {
      const filled = wordAt(p, t) === 'of' && p[t + 1]?.is === 'medium' ? t + 2 : t;
      return (
        p.slice(0, f).some(({ is }) => is === 'plant') &&
        (/^(?:now|today)$/.test(wordAt(p, filled)) ||
          p[/^(?:since|from)$/.test(wordAt(p, filled)) ? filled + 1 : filled]?.is === 'when' ||
          wordAt(p, f - 1) === 'now')
      );
    },
    unless: aboutCuttings,
    phrasings: [
      'the ten rooted Salt Harrier are in 3 inch pots now',
      'the Salt Harrier are in 1 litre pots of composted bark now',
      'Salt Harrier are all in 3 inch pots since this morning',
    ],
    mustNot: ['the Salt Harrier are in 3 inch pots', 'Salt Harrier sit in 9cm pots'],
  },
  {
    name: '<count> <plant> done into <size>',
    kind: 'potOn',
    head: 'done|finished|moved|gone|went on|up? into|in|to <pots>? <size>',
    shape: 'subject',
    when: (p, f, t) =>
      (p[f - 1]?.is === 'count' || (p[f - 1]?.is === 'plant' && p[f - 2]?.is === 'count')) &&
      p.slice(0, t).some(({ is }) => is === 'plant'),
    unless: aboutCuttings,
    phrasings: ['started on the Salt Harrier, 48 done into 7cm', '48 Salt Harrier done in 7cm so far'],
    mustNot: ['6 cuttings of Salt Harrier done in 9cm pots'],
  },
  {
    name: 'had <count> <plant> in <size> pots',
    kind: 'potOn',
    head: 'have~past .. in|into <size>',
    shape: 'object',
    when: (p, f, t) => p.slice(f, t).some(({ is }) => is === 'plant'),
  },
];
