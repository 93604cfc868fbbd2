/** Where plants went straight from the potting: "potted 4 into 9cm and out to the greenhouse". */
import type { Piece } from '../../pieces/pieces.js';
import { endsAt, type Rule, wordAt } from '../rule.js';
import { isOnBench } from './in-short.js';

const WAY = 'over|out|down|up|back|across|through|sat|sitting|stood|standing|now';

const pottedAt = (pieces: readonly Piece[], to: number): number =>
  pieces
    .slice(0, to)
    .findLastIndex(
      (piece) =>
        piece.is === 'word' &&
        piece.verb?.form === 'past' &&
        /^(?:pot|repot|bump|prick)$/.test(piece.verb.lemma),
    );

const plantFrom = (pieces: readonly Piece[], to: number): number =>
  pieces.slice(0, to).findLastIndex(({ is }) => is === 'plant');

/** Behind what was potted: nothing but a place on the bench, and no more. */
function isTakenOn(pieces: readonly Piece[], from: number, to: number): boolean {
  const place = pieces[to - 1];
  return (
    place?.is === 'place' &&
    isOnBench(place.place) &&
    (endsAt(pieces, to) || wordAt(pieces, to) === 'now') &&
    plantFrom(pieces, from) >= 0 &&
    pottedAt(pieces, from) >= 0
  );
}

export const takenOn: readonly Rule[] = [
  {
    name: '<plant> potted on and over on <place>',
    kind: 'move',
    head: `and ${WAY} in|on|under|into|onto|to the|my? <place>`,
    shape: 'subject',
    when: (p, f, t) => isTakenOn(p, f, t) && plantFrom(p, f) < pottedAt(p, f),
    phrasings: [
      'all the Salt Harrier are bumped up to 4 inch pots and over on the windowsill',
      'Salt Harrier potted on yesterday and down in the porch',
    ],
    mustNot: [
      'Salt Harrier potted on and out on the heap',
      'are the Salt Harrier potted on and out in the porch?',
    ],
  },
  {
    name: 'potted on <plant> and out to <place>',
    kind: 'move',
    head: `and|then ${WAY}? in|on|under|into|onto|to the|my? <place>`,
    shape: 'object',
    when: (p, f, t) =>
      isTakenOn(p, f, t) &&
      plantFrom(p, f) > pottedAt(p, f) &&
      !p.slice(0, f).some(({ is }) => is === 'place'),
    phrasings: [
      'potted up the Salt Harrier and back in the propagator',
      'potted 4 Salt Harrier into 9cm and out to the greenhouse',
    ],
    mustNot: [
      'potted on the Salt Harrier and onto the heap with the rest',
      'potted on the Salt Harrier in the porch and in the greenhouse',
    ],
  },
];
