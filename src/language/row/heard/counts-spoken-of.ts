/** Numbers of those spoken of before: "free of them have routed", "put the for in their own pots". */
import { TREE_AND_FREE } from './number-words.js';
import type { Misheard } from './record.js';

export const heardSpokenOf: readonly Misheard[] = [
  {
    name: 'free of the <plant> have rotted',
    mends: TREE_AND_FREE,
    when: (v) =>
      v.word(1) === 'of' &&
      ((v.clauseStart && /^(?:the|my)$/.test(v.word(2)) && v.isName(3)) ||
        // "Free of them have routed", but "are free of them".
        (/^(?:them|em|those|these)$/.test(v.word(2)) &&
          /^(?:have|has|had|are|were|gone|survived|rooted|routed|died|dyed|rotted|went)$/.test(v.word(3)) &&
          v.verb(-1) !== 'be')),
    phrasings: [
      ['free of the Salt Harrier have rotted', 'three of the Salt Harrier have rotted'],
      ['the Salt Harrier yes free of them have rooted', 'the Salt Harrier yes three of them have rooted'],
      ['Salt Harrier tree of them have died', 'Salt Harrier three of them have died'],
    ],
    mustNot: ['free of the slugs at last', 'the Salt Harrier are free of them at last'],
  },
  {
    name: 'put the for in their own pots',
    mends: { for: 'four', too: 'two', fore: 'four', ate: 'eight' },
    when: (v) =>
      v.word(-1) === 'the' &&
      /^(?:in|into|on|up|out|that|which|with|have|are|were|rooted|best|left)$/.test(v.word(1)),
    phrasings: [['so I put the for in their own pots', 'so I put the four in their own pots']],
    mustNot: ['weighed the for and against'],
  },
];
