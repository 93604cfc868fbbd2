/** Plants that somebody had from the grower: "Ken had two off me". */
import type { Piece } from '../../pieces/pieces.js';
import { type Rule, wordAt } from '../rule.js';

/** Somebody else, who had plants or so many. */
const hadPlants = (pieces: readonly Piece[], from: number, to: number): boolean =>
  pieces.slice(from, to).some(({ is }) => is === 'plant' || is === 'count') &&
  from > 0 &&
  !/^(?:i|we)$/.test(wordAt(pieces, from - 1));

export const fromMe: readonly Rule[] = [
  {
    name: '<recipient> had <count> <plant> off me',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'take~past|have~past|collect~past|get~past|score~past|nab~past|blag~past|cadge~past|scrounged .. off|from me|us',
    shape: 'object',
    how: 'given',
    when: hadPlants,
  },
  {
    name: '<recipient> took <count> <plant> off my hands',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'take~past|have~past|get~past .. off my|our hands',
    shape: 'object',
    how: 'given',
    when: hadPlants,
    phrasings: ['the neighbours took four Salt Harrier off my hands'],
  },
  {
    name: '<recipient> bought <count> <plant> off me',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'buy~past .. off|from me|us',
    shape: 'object',
    how: 'sold',
    when: hadPlants,
    phrasings: ['Doreen bought 3 Salt Harrier off me at the gate'],
  },
  {
    name: '<recipient> got <count> <plant> from me',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'get~past|become|became|have~past .. from me|us',
    shape: 'object',
    how: 'given',
    when: (p, f, t) => p.slice(f).some(({ is }) => is === 'plant') && t > f,
  },
];
