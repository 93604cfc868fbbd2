/** When something was done, and where it stands. */
import { anyOf, beginning, closing, either, opening } from '../../phrases.js';
import type { QuestionRule } from './rule.js';

const MONTH = anyOf`
  january|february|march|april|may|june|july|august|september|october|november|december
`;

/** "What have we done with Salt Harrier" asks where they are; with "since March" it asks what was done. */
const WHERE_PUT = anyOf`
  what have (i|we) done with(?! .* (last|since|this|over|during|in ${MONTH})\b)
  what did (i|we) do with(?! .* (last|since|this|over|during|in|on)\b)
  what happened (to|with)
  (have i|i've) lost track of
  (have you|has anyone) seen
`;

/** "Where are they", but not "where are we with Salt Harrier". */
const WHERE = anyOf`
  where(?! (are|do|have) (we|i)( (at|stand|got to|got|up to))? (with|on|at with|regarding)\b)(?! am i\b)
  wheres|where abouts|whereabouts|location of
`;

/** "Which shelf are they on", "contents of the cold frame". */
const IN_WHICH_PLACE = anyOf`
  which (bench|shelf|place|tunnel|house|frame|windowsill|tray|room|greenhouse|bed)
  what (bench|shelf|place|tunnel) (is|are)
  (on|in) what
  (the )?contents of
`;

/** What "in" may stand before that is no place: "what is in total", "anything in May". */
const NO_PLACE = anyOf`
  (the |my |our )?${anyOf`
    plantname|${MONTH}|(spring|summer|autumn|winter)(?! (garden|house|room))|total|all|record|file
    (last|first|second|third|past|same) (week|weekend|month|fortnight|days|few)
  `}\b
`;

/** "What did I do in the greenhouse" asks of the past. */
const DONE_THERE = anyOf`
  what (on earth )?did|what (cuttings|plants|varieties|things|else) (did|have)
  what have (i|we) done
  what (i|we) did
  what was done
`;

export const whenQuestions: readonly QuestionRule[] = [
  {
    name: 'when did I',
    topic: 'when',
    pattern: either(
      closing`when`,
      // "Was it last Tuesday I took them": a yes would tell the day.
      opening`was it (?!plantname).* (i|we) (took|struck|stuck|cut|potted|planted|pinched|moved|sold|gave|fed|watered|did)`,
      opening`
        when|since when|what time|(what|which) (day|date)|what('s| is| was) the (day|date)
        how old
        how long (ago|since|till|until|before|have|has|is it|are|were|do|does|did|will)
        how many (days|weeks|months) (ago|since|till|until|before|have|has|old|is|are)
      `,
    ),
    phrasings: [
      'When did I take the Salt Harrier?',
      'how old are the Salt Harrier',
      'Potted the Salt Harrier when?',
    ],
  },
];

export const whereQuestions: readonly QuestionRule[] = [
  {
    name: 'where is <plant>',
    topic: 'where',
    pattern: opening`
      ${WHERE}
      ${IN_WHICH_PLACE}
      ${WHERE_PUT}
    `,
    phrasings: [
      'Where is Salt Harrier?',
      'which bench are the Salt Harrier on?',
      'what have I done with the Salt Harrier?',
    ],
  },
];

/** Behind "what have I got left", which asks how many. */
export const placeQuestions: readonly QuestionRule[] = [
  {
    name: 'what is in <place>',
    topic: 'where',
    unasked: /^(?:list|show me) (?:everything|all)\b/,
    alone: true,
    pattern: beginning`
      (is|are) there (anything|owt|any|much) … (in|on|under)(?= )(?! ${NO_PLACE})
      (?!${DONE_THERE}\b)(what|whats|which|who's|list|anything|show) … (in|on|under|at) (?!${NO_PLACE})
    `,
    phrasings: [
      'What is in the greenhouse?',
      'whats in the winter garden',
      'list everything in the propagator',
      'is there anything on the bench?',
    ],
  },
];
