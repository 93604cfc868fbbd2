/** Rooted cuttings told by the size they go up to: "9cm pots for X", "X up a size". */
import { followsWord, precedes, type Rule } from '../rule.js';
import { aboutCuttings } from './into-size.js';

export const toSize: readonly Rule[] = [
  {
    name: '<size> for <plant>',
    kind: 'potOn',
    head: '<size> for the|my?',
    shape: 'object',
    faint: true,
    when: (p, f, t) => f === 0 && p[t]?.is === 'plant',
    unless: aboutCuttings,
    phrasings: ['9cm pots for the Salt Harrier today'],
  },
  {
    name: '<plant> up a size',
    kind: 'potOn',
    head: 'up a size',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 3, 'plant'),
    phrasings: ['Salt Harrier up a size'],
  },
  {
    name: '<plant> to <size>',
    kind: 'potOn',
    head: 'to|into|in|> <size>',
    shape: 'subject',
    faint: true,
    when: (p, f, t) =>
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      !p
        .slice(0, f)
        .some(
          (piece) =>
            piece.is === 'word' &&
            (piece.verb !== undefined ||
              /^(?:cuttings|cutting|taken|sit|sits|sitting|stand|standing|live|lives|living|growing)$/.test(
                piece.text,
              )),
        ) &&
      !followsWord(p, t, /^(?:please|tomorrow)$/),
    phrasings: ['Salt Harrier to 9cm', 'Salt Harrier, five of them into 9cm'],
  },
];
