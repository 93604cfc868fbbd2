/** "Weak" for a week. */
import type { Misheard } from './record.js';

export const heardWeeks: readonly Misheard[] = [
  {
    name: 'a weak ago',
    mends: { weak: 'week' },
    when: (v) =>
      /^(?:this|next|last|each|per|every|once|one|two|three|four|six|first|second|third|fourth|sunday|monday|tuesday|wednesday|thursday|friday|saturday)$/.test(
        v.word(-1),
      )
        ? !v.isPlant(1) && !/^(?:one|ones|and|but|plant|plants|cuttings?|looking)$/.test(v.word(1))
        : /^(?:a|the)$/.test(v.word(-1)) &&
          /^(?:ago|last|on|next|from|tomorrow|today|before|after|of|commencing|sunday|monday|tuesday|wednesday|thursday|friday|saturday)$/.test(
            v.word(1),
          ),
    phrasings: [
      ['took six a weak ago', 'took six a week ago'],
      ['pot them on next weak', 'pot them on next week'],
      ['pinch the Salt Harrier Sunday weak', 'pinch the Salt Harrier sunday week'],
      ['struck in the first weak of May', 'struck in the first week of may'],
    ],
    mustNot: [
      'gave her a weak feed',
      'binned the last weak one',
      'a weak one of the Salt Harrier',
      'the last weak cuttings',
    ],
  },
];
