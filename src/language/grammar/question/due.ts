/** What is due, and when. */
import { anyOf, closing, either, opening, whole } from '../../phrases.js';
import type { QuestionRule } from './rule.js';

/** "What …", "is there anything …", "jobs …". */
const ASKS_FOR_WORK = anyOf`
  what|whats|which|who
  any|anything|owt|something|is (there|any|anything)|are
  do i have anything|have (i|we) anything|(have i )?got anything|do any|does anything
  should i
  jobs|tasks|list|todo|to do
`;

/** What is still to be done: "jobs", "outstanding", "on my list". */
const TO_DO = anyOf`
  due|overdue|late|behind|next|outstanding|pending|waiting|ready|happening|coming up|needed
  jobs|tasks|chores|today's|to do|must i do
  on (today|for|the cards|the list|my list)
  up (today|next|this|tomorrow)
  (left|still) to (pot|plant|pinch|stop|prick|harden|move|check|go out|come)
`;

/** "What needs watering", "which want a look". */
const IN_NEED = anyOf`
  need(s|ing)? (to be )?${anyOf`
    to|done|doing|seeing to|attention|planting|moving
    (check|pott|water|pinch|mist)(ing|ed)|a check|looking at|feeding
  `}
  needs (me|my)
  wants? (doing|seeing to|looking at|checking|potting|watering|misting|feeding|pinching|moving|planting)
  wanting (attention|doing|seeing to)
`;

/** "What should I do first", "what must we pinch". */
const TO_BE_SET_ABOUT = anyOf`
  do (today|tomorrow|next|now|first|this|on|at)
  doing (today|this week)
  (be|i) doing|be (looking at|seeing to|checking|potting|watering)
  get on with|tackle first|start (with|on) (today|first)|check today
  (must|should|shall|ought) (i|we) (to )?${anyOf`
    check|look (at|over)|see to|pot|pinch|water|feed|mist|move|plant|harden
  `}
`;

/** "Today", "this week". */
const DAYS_AHEAD = anyOf`today|tomorrow|(this|next|the) (week|weekend)`;

/** A list of jobs by its name alone: "jobs for today", "what's on". */
const LIST_OF_JOBS = anyOf`
  due( today| now| this week| tomorrow)?
  todo|to do|the list|list for today
  what now|what next|what today|whats (next|on)|what's (next|up|on|to do)( today| this week| tomorrow)?
  anything (today|for me|i should do|else today|to do|doing)
  (the |my |any )?(jobs|tasks|chores|to do) list( for)?( ${DAYS_AHEAD})?
  (agenda|schedule)( for)?( ${DAYS_AHEAD})?
  (today|tomorrow|this week)('s)? (jobs|list|round|tasks|chores)
  (the |my |any )?(jobs|tasks|chores)( to do)?( for| on| over)?${anyOf`
    ( ${DAYS_AHEAD})
    ( tonight)
    ( (mon|tues|wednes|thurs|fri|satur|sun)day)
  `}?
`;

/** "When must I pot …", "when are … ready". */
const THE_DAY = anyOf`
  due|ready|needs?
  (be|have) rooted
  be (checked|potted|planted|looked)
  shall i
  to (check|pot|plant|pinch|look|repot)
  do i (check|pot|plant|pinch|need)
  can i (check|pot|plant|pinch|move|put)
  should i (check|pot|plant|pinch|look|repot|move|harden|water|feed)
  must i (check|pot|plant|pinch|look|repot|transplant|move|water)
`;

export const dueQuestions: readonly QuestionRule[] = [
  {
    name: 'what is due',
    topic: 'due',
    unasked: /^(?:list|show me) .*\b(?:needs?|needing|due|wants?)\b/,
    alone: true,
    pattern: opening`
      (?!what (did|was) )${ASKS_FOR_WORK} … ${anyOf`
        ${TO_DO}
        ${IN_NEED}
        ${TO_BE_SET_ABOUT}
      `}
    `,
    phrasings: [
      "What's due this week?",
      'which ones need potting on?',
      'what should I do first?',
      'Is there anything overdue?',
    ],
  },
  {
    name: 'is it time to look at <plant>',
    topic: 'due',
    pattern: opening`
      (is it|are they|is that|would it be) (about |nearly |getting on )?(time|due) (to|for|i|we)
    `,
    phrasings: ['Is it time to look at Salt Harrier?', 'are they due for a look'],
  },
  {
    name: 'due today',
    topic: 'due',
    unasked: /./,
    alone: true,
    pattern: whole`
      ${LIST_OF_JOBS}
    `,
    phrasings: ['due today', 'jobs for tomorrow', "what's next", "today's list"],
  },
  {
    name: 'when are <plant> due',
    topic: 'due',
    pattern: either(
      opening`
        due date|date due|eta
        when … ${THE_DAY}
        how (long|soon|many (days|weeks)) (till|until|before|to) … due
      `,
      closing`eta|due date`,
    ),
    phrasings: [
      'When are Salt Harrier due?',
      'how long till the Salt Harrier are due a look?',
      'when should I pinch the Salt Harrier?',
      'Salt Harrier eta?',
    ],
  },
];
