/** Batches parted and put together. */
import { anyOf, beginning, whole } from '../../phrases.js';
import { trailing } from '../runs.js';
import { starts } from './opening.js';
import { partsTold } from './parting.js';
import type { InstructionRule } from './rule.js';

/** "Split them into single pots": potted on, and no batch of their own. */
const POTTED =
  /\b(?:broke|divided|separated|and (?:re)?potted|into (?:single|individual|separate|own|their own|bigger|larger|\d+ ?cm|\d+ inch) (?:\w+ ){0,2}pots)\b/;

/** What is said of two lots that are kept as one. */
const ENTRY = anyOf`batch|lot|label|record|entry`;
const FROM_NOW = trailing`
  from (here on|now on|here|now|today)|in future|going forward|now|again|too|please|pls|would you|will you
`;
const AS_ONE = new RegExp(
  String.raw`\b${anyOf`
    (lump|club|count|treat|log|call|class|consider|keep|have|put)\b.* as (the )?(one|a single one)${FROM_NOW}$
    (lump|club|count|treat|log|call|class|consider|keep|have|put)\b.* (as |on )?(the )?(one|a single) ${ENTRY}${FROM_NOW}$
    (lump|club|count|treat|log)\b.* together(${FROM_NOW}$| (the|both)\b)
    put\b.* (lots|batches|records) together( please| pls)?${FROM_NOW}$
    put (the two|both)( of)?( the| my)? plantname together(?! (?:on|in|under|by|at|into|near|beside|with)\b)
    put\b.* (lots|batches) of (the )?plantname together(?! (?:on|in|under|by|at|into|near|beside|with)\b)
  `}`,
);
/** "SH1 and SH2", "both lots of Salt Harrier". */
const BOTH = anyOf`
  plantname and plantname
  (both|the two)( lots| batches)?( of)?( the)? plantname( lots| batches)?
`;
const ONE_BATCH =
  /\b(?:(?:into|as|in) (?:one|a single|the same) (?:batch|lot|record)|one batch|together (?:as|in|into) one(?! (?:pot|tray)))\b/;

/** "The Salt Harriers are all one lot now", "they can all go back in one batch" has a verb of its own. */
const ARE_ONE = whole`
  (both )?(the |my )?plantname( lots| batches)? (are|can be|should be|is) (all |now |just |really )*(one|a single|the same) (lot|batch)${FROM_NOW}
`;

export const batches: readonly InstructionRule[] = [
  {
    name: 'split <plant> into <counts>',
    pattern: starts('(?:split|divide|separate|break up|break)\\b.*'),
    read: (words) => {
      const [plant] = words.plants;
      return plant && !POTTED.test(words.line) ? { kind: 'split', plant, ...partsTold(words) } : undefined;
    },
  },
  {
    name: 'make <count> of <plant> a batch of their own',
    pattern:
      /\b(?:(?:batch|lot) of (?:their|its) own|(?:a |into a )?(?:new batch|(?:separate|own) (?:batch|lot)))\b/,
    read: (words) => {
      const { plants, line } = words;
      // "New batch: 9 tip cuttings of …" tells of cuttings.
      // "Moved the new batch of 8 …" tells of one that is there.
      return plants[0] &&
        !/^(?:took|struck|i took|a? ?new batch)\b|\bcuttings\b|\bthe (?:new|separate) (?:batch|lot)\b/.test(
          line,
        )
        ? { kind: 'split', plant: plants[0], ...partsTold(words) }
        : undefined;
    },
  },
  {
    name: 'keep <count> of <plant> apart',
    pattern: starts(
      '(?:keep|set|put|have) (?!the |my |those |these |them )\\S+(?: of)?(?: the| my| those)? plantname (?:apart|separate|separately)\\b.*',
    ),
    read: (words) => {
      const [plant] = words.plants;
      const { parts } = partsTold(words);
      return plant && parts[0] && 'count' in parts[0] ? { kind: 'split', plant, parts } : undefined;
    },
  },
  {
    // Of the lot that was just told of, or the only one.
    name: 'keep <count> apart',
    pattern: starts(
      '(?:keep|set) (?!the |my |those |these |them )\\S+(?: of (?:them|those|these))? (?:apart|separate|separately)\\b.*',
    ),
    read: (words) => {
      const { parts } = partsTold(words);
      return words.plants.length === 0 && parts[0] && 'count' in parts[0]
        ? { kind: 'split', plant: {}, parts }
        : undefined;
    },
  },
  {
    name: 'merge <plant> and <plant>',
    pattern: starts`
      ${anyOf`
        merge|join|combine|unite|pool|amalgamate|lump|club|roll|put|make|have|keep
        treat|count|call|class|consider|log
      `}\b.*
    `,
    read: ({ plants, line }) =>
      /^(?!.*\b(?:they|it|these|those)(?: can| could| will| would)? (?:merge|join|combine)\b)(?:.*\b)?(?:merge|join|combine|pool|amalgamate|unite)\b/.test(
        line,
      ) ||
      AS_ONE.test(line) ||
      ONE_BATCH.test(line)
        ? {
            kind: 'merge',
            plants: / plantname (?:in)?to plantname/.test(line) ? plants.toReversed() : plants,
          }
        : undefined,
  },
  {
    name: '<plant> are all one lot now',
    pattern: ARE_ONE,
    read: ({ plants }) => (plants.length > 0 ? { kind: 'merge', plants } : undefined),
  },
  {
    // Labels alone: "put the Salt Harrier in with the Tallow Bell" carries them.
    name: 'put <label> in with <label>',
    pattern: starts(
      `(?:put|tip|fold|add|roll|lump) plantname (?:in with|into|in|to|with) plantname${FROM_NOW}$`,
    ),
    read: ({ plants }) =>
      plants.length === 2 && plants.every(({ batch }) => batch !== undefined)
        ? { kind: 'merge', plants: plants.toReversed() }
        : undefined,
  },
  {
    name: '<label> and <label> are one batch',
    pattern: beginning`
      (so |ok |right )?${BOTH} ${anyOf`
        can|could|should|will|may as well|might as well|are|are to
      `}( (all|now|both|just))*( be| count as| go down as)?( now)? (the )?${anyOf`
        one|a single|the same
      `} (batch|lot|record)${FROM_NOW}$
      (there('s| is) )?no (need|point) (to keep|in keeping|keeping) .*\bplantname\b.* (apart|separate|as two)\b
    `,
    read: ({ plants }) => (plants.length > 0 ? { kind: 'merge', plants } : undefined),
  },
  {
    name: 'add the younger <plant> to the older batch',
    pattern: starts`
      (add|put|tip|fold|move) (the|my) (younger|youngest|newer|newest|later|second) .*\b${anyOf`
        to|into|in with|with
      `} the (older|oldest|old|earlier|first|original)( one| batch| lot| ones)?( so .*)?$
    `,
    read: ({ plants }) => (plants.length > 0 ? { kind: 'merge', plants } : undefined),
  },
];
