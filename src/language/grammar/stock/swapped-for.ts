/** Plants that came back for those swapped away: "swapped two with Ken for three rooted Tallow Bell". */
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, type Rule, wordAt } from '../rule.js';
import { asCuttings, ofYoung, YOUNG } from './kinds-of-plant.js';

/** "Gave Len three for a tray of plugs": so many plants given, and young ones had for them. */
const gaveFor = (pieces: readonly Piece[], from: number, to: number): boolean =>
  YOUNG.test(wordAt(pieces, to - 1)) &&
  pieces.slice(0, from).some(({ is }) => is === 'count') &&
  pieces.slice(0, from).some((piece) => piece.is === 'word' && piece.verb?.lemma === 'give');

/** A swap told before in the same breath, and a plant named behind "for". */
const cameBack = (pieces: readonly Piece[], from: number, to: number): boolean =>
  (gaveFor(pieces, from, to) ||
    pieces
      .slice(0, from)
      .some(
        (piece) => piece.is === 'word' && /^(?:swap|trade|exchange)$/.test(piece.verb?.lemma ?? piece.text),
      )) &&
  (pieces.slice(from, to).some(({ is }) => is === 'plant') || closeBehind(pieces, to, 'plant')) &&
  !asCuttings(pieces, from) &&
  !/^(?:pots?|trays?|food|feed|labels?)$/.test(wordAt(pieces, to));

export const swappedFor: readonly Rule[] = [
  {
    name: 'swapped … for <count> rooted <plant>',
    kind: 'receive',
    head: 'for <count> of? her|his|their? rooted plants?',
    shape: 'object',
    when: cameBack,
    phrasings: ['swapped five Salt Harrier with Nuala for three rooted Tallow Bell'],
    mustNot: ['swapped five Salt Harrier with Nuala for three rooted cuttings of Tallow Bell'],
  },
  {
    name: 'swapped … for <count> <plant> plants',
    kind: 'receive',
    head: 'for <count>|<pots> .. plants|plugs|plug|liners|liner',
    shape: 'object',
    when: cameBack,
    phrasings: [
      'swapped two Salt Harrier with Ken for 3 plugs of Tallow Bell',
      'swapped two Salt Harrier with Ken for a tray of plug petunias, 24 in it',
      'gave Ken two Salt Harrier for a tray of petunia plugs',
    ],
    mustNot: ['potted on two Salt Harrier for three of the Tallow Bell plants'],
  },
  {
    name: 'swapped a jar of honey for a <plant>',
    kind: 'stock',
    head: 'swap~past|trade~past .. for a|an|another|<count>',
    shape: 'object',
    when: (p, f, t) =>
      p.slice(f + 1, t - 2).every(({ is }) => is === 'word' || is === 'pots') &&
      /^(?:a|an|some)$|^$/.test(wordAt(p, f + 1)) &&
      closeBehind(p, t, 'plant') &&
      !asCuttings(p, t) &&
      !ofYoung(p, t),
    phrasings: ['swapped a jar of honey for a Salt Harrier'],
    mustNot: [
      'swapped a jar of honey for a cutting of Salt Harrier',
      'swapped a tray for a bigger one, Salt Harrier',
    ],
  },
  {
    name: 'swapped … for a <plant> tuber',
    kind: 'stock',
    head: 'for a|an|<count> .. tuber|tubers|crown|crowns|stock',
    shape: 'object',
    when: cameBack,
    phrasings: ['swapped two Salt Harrier with Doreen for a dahlia tuber'],
  },
];
