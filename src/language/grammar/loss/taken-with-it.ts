/** Losses told of what took them: "hard frost, took two with it", "there was a fox and it had three". */
import { endsAt, type Rule } from '../rule.js';

export const takenWithIt: readonly Rule[] = [
  {
    name: 'the frost took <count> <plant> with it',
    kind: 'loss',
    head: 'take~past <count> .. with it|them',
    shape: 'object',
    cause: 'frost',
    when: (p, f) =>
      p
        .slice(0, f)
        .some(
          (piece) =>
            (piece.is === 'celsius' && piece.celsius < 3) ||
            (piece.is === 'word' && /^(?:frost|cold|freeze)$/.test(piece.text)),
        ),
    phrasings: ['hard frost last night, took 2 of the Salt Harrier with it'],
    mustNot: ['took 2 of the Salt Harrier with me'],
  },
  {
    name: 'there was frost and it took <count> <plant>',
    kind: 'loss',
    head: 'it take~past|have~past|get~past <count>',
    shape: 'object',
    when: (p, f) =>
      p
        .slice(0, f)
        .some(
          (piece) =>
            (piece.is === 'celsius' && piece.celsius < 3) ||
            (piece.is === 'word' &&
              /^(?:frost|cold|freeze|rot|botrytis|mould|heat|slug|fox|cat)$/.test(piece.text)),
        ),
    phrasings: ['there was a frost and it took two of the Salt Harrier'],
    mustNot: ['it took two hours to pot the Salt Harrier'],
  },
  {
    name: 'took <count> <plant> with it',
    kind: 'loss',
    head: 'take~past <count> .. with it',
    shape: 'object',
    when: (p, f, t) => endsAt(p, t) && p.slice(f, t).some(({ is }) => is === 'plant'),
    mustNot: ['took 2 of the Salt Harrier, with it being so warm'],
  },
];
