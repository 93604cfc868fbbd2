/** Numbers of pots, of what they hold, and of those put somewhere. */
import { SMALL_WORDS } from './number-words.js';
import type { Misheard } from './record.js';

export const heardInPots: readonly Misheard[] = [
  {
    name: '<number> to a pot',
    mends: SMALL_WORDS,
    when: (v) =>
      v.word(1) === 'to' && /^(?:a|each)$/.test(v.word(2)) && /^(?:pot|tray|jar|cell)$/.test(v.word(3)),
    onlyIf: (v) => v.heard === 'too' || v.heard === 'for',
    phrasings: [['stuck them too to a pot', 'stuck them two to a pot']],
  },
  {
    name: 'a pot with <number> in it',
    mends: SMALL_WORDS,
    when: (v) =>
      v.word(-1) === 'with' && v.word(1) === 'in' && /^(?:it|each|them|that|every)$/.test(v.word(2)),
    phrasings: [['one pot of Salt Harrier with too in it', 'one pot of Salt Harrier with two in it']],
    mustNot: ['put them with to the others'],
  },
  {
    name: 'put those for in <place>',
    mends: { for: 'four' },
    when: (v) =>
      /^(?:those|these)$/.test(v.word(-1)) &&
      /^(?:in|into|out|outside|on|onto|up|back)$/.test(v.word(1)) &&
      v.verb(-2) !== '',
    phrasings: [['put those for in the shed', 'put those four in the shed']],
    mustNot: ['potted those for Nell'],
  },
  {
    name: 'all in <number> pots',
    mends: SMALL_WORDS,
    when: (v) =>
      /^(?:pot|pots|tray|trays)$/.test(v.word(1)) &&
      /^(?:in|into|all|pots)$/.test(v.word(-1)) &&
      !(v.heard === 'to' && v.word(-1) === 'in'),
    phrasings: [['all into for pots', 'all into four pots']],
    mustNot: ['brought in to pots'],
  },
];
