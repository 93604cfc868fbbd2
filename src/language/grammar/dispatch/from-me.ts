/** Plants that somebody had from the grower: "Ken had two off me". */
import { type Rule, wordAt } from '../rule.js';

export const fromMe: readonly Rule[] = [
  {
    name: '<recipient> had <count> <plant> off me',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'take~past|have~past|collect~past|buy~past|get~past .. off|from me|us',
    shape: 'object',
    how: 'given',
    when: (p, f, t) =>
      p.slice(f, t).some(({ is }) => is === 'plant' || is === 'count') &&
      f > 0 &&
      !/^(?:i|we)$/.test(wordAt(p, f - 1)),
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
