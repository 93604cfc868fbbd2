/** How well they strike, and whether there will be enough. */
import { anyOf, either, opening, within } from '../../phrases.js';
import type { QuestionRule } from './rule.js';

/** "What's the strike rate", "what proportion". */
const RATE = anyOf`
  (strike|rooting|success|take|hit|failure|what|which) rate|rate of|the take
  (strike|striking|rooting) wise
  percentage|percent|per cent
  what (proportion|fraction|share)|odds
  how many out of|out of plantname how many
`;

/** "How well do they root", "which did best". */
const SUCCESS = anyOf`
  success|how successful|how good (is|am|are)|how well (do|does|did)
  how (did|have) (i|we) (do|done|get on|got on)
  (did|does|do|worked|works|rooted|roots|took|struck|come up) (the )?(best|worst)
  (best|worst) (rooters?|crop|variety|method|results?)
`;

/** "Are we on track", "will they be ready in time". */
const ON_TRACK = anyOf`
  on (track|course|target|schedule)|in time|behind|ahead|enough
  how (are we|am i) looking for
  target|reach|(hit|meet) my|make (my|the|it(?! (\d|one|two|three|four|five|six|seven|eight|nine|ten|a dozen)\b))
  the plan|plan for
`;

/** "How many should I take". */
const TO_TAKE = anyOf`
  how many (more )?(cuttings )?(should|must|shall|will) (i|we) (need|take|want|have|strike|do to)
  how many (more )?(cuttings )?do (i|we) (need|take|want|have to|strike|do to)
  how many (of )?(the |my )?plantname (cuttings )?(do|must|should) (i|we) ${anyOf`
    (need|take|strike|stick|have) to (take|strike|stick|start|get|end|make|have)
  `}
  how many cuttings (for|to get|do i need)
  how many to take|should i take|(need|have) to take
`;

/** "Is it too late to start", "when should I take them", but not "when should I take the lid off". */
const WHEN_TO_TAKE = anyOf`
  too late (in the (year|season|day) )?(to|for)|still time
  (latest|last) (date|day|time) (to|for|i can)|latest i can
  when to take|when do i (need|have) to (take|strike|start|begin|cut)
  when (should|must) i take(?! ${anyOf`away|off|out|down|in|the (fleece|cover|shad(e|ing)|lid|dome)`})
`;

export const growingQuestions: readonly QuestionRule[] = [
  {
    name: 'strike rate of <plant>',
    topic: 'rate',
    unasked: /\b(?:strike rate|success rate|rooting rate|percentage|what %|take %|percent)\b/,
    pattern: either(
      within`
        ${RATE}
        ${SUCCESS}
      `,
      /%/,
    ),
    phrasings: [
      'strike rate of Salt Harrier',
      'What percentage of the Salt Harrier took?',
      'how well do they root?',
      'which variety rooted best?',
    ],
  },
  {
    name: 'will I have enough',
    topic: 'plan',
    pattern: either(
      opening`
        (will|can|could|would) (i|we) (have (?!to\b)|get to|make|manage|reach|end up with) … (by|before|ready|when)
        how many more\b(?!.*\b(are|were|have)\b).*\bfor
      `,
      within`
        ${ON_TRACK}
        ${TO_TAKE}
        ${WHEN_TO_TAKE}
      `,
    ),
    phrasings: [
      'Will we have forty Salt Harrier by June?',
      'Are we on track?',
      'How many cuttings should I take?',
      'Is it too late to take more Salt Harrier?',
    ],
  },
];
