/** Leaves, stems and roots cut into lengths to be struck: "chopped a leaf into nine". */
import type { Rule } from '../rule.js';

export const cutUp: readonly Rule[] = [
  {
    name: 'chopped a leaf of <plant> into <count>',
    kind: 'strike',
    head: 'chop~past|cut~past|sliced|snip~past|divide~past .. leaf|leaves|stem|stems|root|roots .. into',
    shape: 'object',
    when: (p, f, t) => p[t]?.is === 'count' && p.slice(f, t).some(({ is }) => is === 'plant'),
    phrasings: ['chopped a streptocarpus leaf into nine and stood the bits in perlite'],
    mustNot: ['chopped a streptocarpus leaf into nothing for the hens'],
  },
  {
    name: 'a leaf of <plant> chopped into <count>',
    kind: 'strike',
    head: 'leaf|leaves|stem|stems|root|roots be~? chopped|cut|sliced|snipped|divided up? into',
    shape: 'subject',
    when: (p, f, t) => p[t]?.is === 'count' && p.slice(0, f).some(({ is }) => is === 'plant'),
    phrasings: ['a streptocarpus leaf chopped into nine, bits in perlite'],
    mustNot: ['a streptocarpus leaf chopped into nothing for the hens'],
  },
];
