/** Growing tips taken out. */
import type { Piece } from '../pieces.js';
import { closeBehind, endsAt, follows, followsWord, precedes, type Rule, wordAt } from './rule.js';

const cuttingsTaken = (pieces: readonly Piece[], _from: number, to: number): boolean =>
  followsWord(pieces, to, /^(?:cuttings|cutting|bits|slips)$/);

export const pinchRules: readonly Rule[] = [
  {
    name: 'pinched out <count> <plant>',
    kind: 'pinch',
    head: 'pinch~ out|back?',
    shape: 'object',
    unless: cuttingsTaken,
  },
  {
    name: 'nipped the tips out of <plant>',
    kind: 'pinch',
    head: 'nip~past|take~past|pinch~past|cut~past|snip~past|nick~past|tweak~past|whip~past .. tips|tops|heads|tip|top|points out|off|of',
    shape: 'object',
    unless: (p, f, t) => cuttingsTaken(p, f, t) || p.slice(f, t).some(({ is }) => is === 'cutting'),
  },
  {
    name: 'nipped out <plant>',
    kind: 'pinch',
    head: 'nip~past|tip~past out|back|off',
    shape: 'object',
    when: (p, f, t) =>
      (closeBehind(p, t, 'plant', 'count') || precedes(p, f, 5, 'plant')) &&
      !(wordAt(p, f) === 'tipped' && followsWord(p, t, /^(?:root|roots|rooted)$/)),
  },
  {
    name: 'tips out <plant>',
    kind: 'pinch',
    head: 'tips|tops|heads be~? out|off|pinched|nipped',
    shape: 'object',
    when: (p, f, t) => follows(p, t, 'plant') || precedes(p, f, 5, 'plant'),
  },
  {
    name: 'stopped <plant>',
    kind: 'pinch',
    head: 'stop~past',
    shape: 'object',
    when: (p, f, t) =>
      (closeBehind(p, t, 'plant') && !/^(?:to|for|at|by|watering|misting)$/.test(wordAt(p, t))) ||
      (precedes(p, f, 4, 'plant') && endsAt(p, t)),
  },
];
