/** The ways in which growers name what they left undone; the plant or the place stands before them or behind. */
import { leading, trailing } from '../../grammar/runs.js';
import { alternatives, anyOf, type Listed, whole } from '../../phrases.js';

/** A way to say it: `pattern` sees a part of a row, in which a plant is `<plant>`, a place `<place>`. */
interface Phrase {
  readonly name: string;
  readonly pattern: RegExp;
  /** Behind "potted on the Salt Harrier", these leave the Tallow Bell out. */
  readonly phrasings: readonly string[];
  /** Behind the same, these pot on the Tallow Bell as well, or say nothing of what was left. */
  readonly mustNot?: readonly string[];
}

const OPENING = leading(
  'i|we|doing|leaving|saving|just|only|also|sadly|sorry|oh|still|then|so|even|simply|for|as for|to',
);
/** "All the other Tallow Bell cuttings", "the greenhouse lot". */
const NAMED = alternatives`
  ((<count>|all) )?(of )?((the|my|our|those|these|that) )?(other |last |rest of the )?<(plant|place)>( ${anyOf`
    cuttings|ones|lot|batch
  `})?
`;
/** How many of what was told of before. */
const OTHERS = alternatives`
  <count>( (cuttings|ones|others))?
  (the )?(others|rest)
`;
const CLOSING = trailing`
  yet|today|now|for now|so far|this time|before dark|in the end|till|until|<when>|<later>
  (where|as) (they were|they are)|where it (is|was)|be|in peace|alone|out|properly|at all|instead
  though|however|either|sadly|sorry|i am afraid
`;

const before = (...words: Listed): RegExp =>
  new RegExp(`^${OPENING}(?:${NAMED}|${OTHERS}) ${anyOf(...words)}${CLOSING}$`);
const behind = (...words: Listed): RegExp =>
  new RegExp(`^${OPENING}${anyOf(...words)} (?:${NAMED}|${OTHERS})${CLOSING}$`);

/** What was left, then that it was. */
export const leftPhrases: readonly Phrase[] = [
  {
    name: '<plant> not',
    pattern: before`
      ((is|are|was|were) )?not( yet)?( ${anyOf`
        done|ready|touched|up to it|looked at|quite|just|so|worth it|(big|strong|large|far) enough
      `}( yet)?)?
      neither|nope
    `,
    phrasings: [
      'the Tallow Bell not',
      'the Tallow Bell not yet',
      'but the Tallow Bell not big enough',
      'the Tallow Bell and the Marble Wren not ready yet',
      'the Tallow Bell neither',
    ],
    mustNot: ['the Tallow Bell too, not bad for an afternoon', 'and the Tallow Bell, not before time'],
  },
  {
    name: '<plant> still to do',
    pattern: before`
      ((is|are|has|have|was|were) )?((still|yet) )?to (do|go|come|follow|finish|be done|be seen to|get to)
      ((is|are) )?(still )?(next|outstanding|undone|untouched|pending)
      ((is|are) )?(up )?next( time)?
      ((is|are) )?still (waiting|not done)
    `,
    phrasings: [
      'the Tallow Bell still to do',
      'Tallow Bell to follow tomorrow',
      'and the Tallow Bell yet to do',
      'Tallow Bell next',
      'the Tallow Bell is still outstanding',
    ],
    mustNot: ['next the Tallow Bell'],
  },
  {
    name: '<plant> can wait',
    pattern: before`
      ${anyOf`
        can|could|must|will|may|to|has to|have to|had to
        (it |they )?will have to|they'll have to|'ll have to
      `} wait( (for|till|until)( (another|a better|the next|next) (day|time))?)?
      wait|waits|waiting
    `,
    phrasings: ['the Tallow Bell can wait', 'the Tallow Bell will have to wait till Saturday'],
  },
  {
    name: '<plant> another day',
    pattern: before`
      (another|some other) (day|time)
      later( on)?|<later>|on <later>
    `,
    phrasings: [
      'Tallow Bell another day',
      'the Tallow Bell tomorrow',
      'the Tallow Bell later',
      'doing the Tallow Bell tomorrow',
    ],
    mustNot: ['the Tallow Bell yesterday'],
  },
  {
    name: '<plant> stays where it is',
    pattern: before`
      (stays|stay|stayed|staying|can stay|still)$
      (stays|stay|stayed|staying|left|can stay|still) ${anyOf`
        put|alone|be|(where|as) (it (is|was)|they (are|were))
        (in|on|at|under) (the |my )?<place>
        in (their|its) (pots?|trays?|<pots>)
      `}
      (i|we) (left|skipped|have left|did not do|did not|have not)( (be|alone|out|as they are|where they are))?
      (i|we) (will|shall) (do|leave)
    `,
    phrasings: [
      'the Tallow Bell stays in the greenhouse',
      'the Tallow Bell I left alone',
      'the Tallow Bell I have not',
      'the Tallow Bell still in the greenhouse',
    ],
  },
  {
    name: "to <plant> I didn't come",
    pattern: before`
      (i|we) (only )?${anyOf`
        forgot|missed|(came|got|reached) not
        had no (time|water|pots|compost)( left)?( for)?
        (did not|didn't|never|could not|couldn't|have not|haven't) (yet )?${anyOf`
          get|got|come|came|reach|reached|manage|managed|do|did|done|touch|touched
        `}( to| there| at| that far)?
      `}
    `,
    phrasings: [
      "but to the Tallow Bell I didn't come",
      'the Tallow Bell I forgot',
      'but for the Tallow Bell I had no time',
      'the Tallow Bell I never got to',
    ],
    mustNot: ['the Tallow Bell I came to last'],
  },
];

/** "Didn't", "have not". */
const NOT = anyOf`
  not|never|can't|won't|cannot
  (did|have|had|could|can|do|will|has)( not|n't)
`;

/** What was not come to: "get round to", "had time for". */
const COME_TO = anyOf`
  get|got|gotten|make it|made it|reach|reached|go|gone|manage|managed|do|done|did|touch|touched
  start|started|begin|begun|finish|finished|bother|bothered|face|feel
  look|looked|look at|looked at|see|seen|count|counted|include|included|(have|had) (time|room)
`;

/** That something was not reached, then what. */
export const notReachedPhrases: readonly Phrase[] = [
  {
    name: 'not <plant>',
    pattern: behind`
      not( yet| so much| quite| just)?
      nothing (to|for|on|done to|done on|done with)
    `,
    phrasings: ['not the Tallow Bell', 'but not the Tallow Bell', 'not yet the Tallow Bell'],
    mustNot: ['not bad that, and the Tallow Bell'],
  },
  {
    name: "didn't get as far as <plant>",
    pattern: behind`
      ${NOT}${trailing`
        yet|quite|even|actually|really|ever|manage|managed
      `}( to)? ${COME_TO}${trailing`
        round|around|as|far|near|further|than|past|beyond|on|at|to|for|with|about|into|in|out
        time|room|any|anything|anywhere|like|the energy
      `}
    `,
    phrasings: [
      "didn't get as far as the Tallow Bell",
      "but I haven't got round to the Tallow Bell yet",
      'never got to the Tallow Bell',
      "couldn't face the Tallow Bell",
      "didn't touch the Tallow Bell",
    ],
    mustNot: ['got as far as the Tallow Bell'],
  },
  {
    name: 'no time for <plant>',
    pattern: behind`
      (had |there was |with |got )?no ${anyOf`
        time|room|energy|pots|compost|light|daylight|need|point
      `}( left)?( (for|to do|to get to|to touch|doing|in))?
      ran out of [a-z]+( [a-z]+)? (for|before|at|by|on)( (i|we) (got|reached|did))?( to)?
      (had to )?(skip|skipped|leave|left|leaving|forgot|missed|missing|ignored)( out| about| off)?
    `,
    phrasings: [
      'no time for the Tallow Bell',
      'ran out of compost for the Tallow Bell',
      'left the Tallow Bell for now',
      'left the others where they were',
      'skipped the Tallow Bell',
      'forgot about the Tallow Bell',
    ],
    mustNot: ['no hormone, then the Tallow Bell'],
  },
];

/** What others wanted. */
export const wantedPhrases: readonly Phrase[] = [
  {
    name: 'everybody wanted <plant>',
    pattern: whole`
      ${OPENING}${anyOf`
        everybody|everyone|people|folks?|they|customers|nobody|no one|most people|all they
      `} ((all|only|just|mostly) )?${anyOf`
        want|wants|wanted|preferred|fancied|(ask|asked) for|asked about|looked at|came for
        (go|went) for|(is|was|were|are) after
      `}( (was|were|is))? ${NAMED}${CLOSING}
    `,
    phrasings: ['everybody wanted Tallow Bell', 'people only asked for the Tallow Bell'],
  },
];

export const isLeft = (line: string): boolean => leftPhrases.some(({ pattern }) => pattern.test(line));
export const isNotReached = (line: string): boolean =>
  [...notReachedPhrases, ...wantedPhrases].some(({ pattern }) => pattern.test(line));

/** "Not the Tallow Bell", straight. */
export const isLeftOut = (line: string): boolean => /^not\b/.test(line);
