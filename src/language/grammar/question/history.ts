/** What was done, and what came of it. */
import { anyOf, closing, either, opening, whole } from '../../phrases.js';
import { trailing } from '../runs.js';
import type { QuestionRule } from './rule.js';

/** The figures of a ledger by their names alone: "losses so far this year", "sales last month please". */
const FIGURES = whole`
  (show )?((all|total|the|my|our|any) )*${anyOf`
    losses|loss|deaths|sales|gifts|dispatches|deliveries
    strikes|strikings|stickings|checks|swaps|entries
  `}${trailing`
    to date|so far|on|of|for|from|in
    the|my|our|plantname|please|pls
    this|last|year|month|week|season|spring|summer|autumn|winter|fall|yesterday|today
    january|february|march|april|may|june|july|august|september|october|november|december
  `}
`;

/** "What cuttings did I take": what is asked for by its sort. */
const THINGS = anyOf`
  cuttings|plants|varieties|things|stuff|else|other (cuttings|plants|varieties)|new (cuttings|plants|varieties)
`;

/** "What did we lose", "what Doreen did take", "everything I sold". */
const WHAT_WE_DID = anyOf`
  what( ${THINGS})? (did|have) (i|we)
  what did [a-z']+ (do|take|lose|pot|plant|sell|give)
  what (i|we) ${anyOf`
    did|have done|took|struck|stuck|sold|gave|lost|binned
    potted|planted|moved|pinched|bought|swapped|fed|watered
  `}
  (which|what)( ones| plants| cuttings)? (have|did) (i|we) (lost|lose)
  (everything|all|anything|every \w+)( that)? (i|we)
  (have|did) (i|we)
  (has|did) anyone
`;

/** "What happened in May", "what's been going on". */
const WHAT_HAPPENED = anyOf`
  what (happened|went (on|out)|came in|was done|has been done|got done|was i doing)
  (what's|whats) (been done|happened|the story|been happening|been going)
  what (sold|died|rooted|arrived|left) (last|this|in|on|yesterday|today|over|so far)
  (did|have|has) .*\b(turn(ed)? up|arrived?|com(e|ing)|show(ed|n)? up)
  who (got|had|took|bought|has had|did (i|we)|have (i|we))
`;

/** "The log for March", "last week's losses". */
const RECORD = anyOf`
  (log|diary|record|summary|recap|journal|story|notes) (of|for|on|from)
  last (week|month)'s
`;

/** "May I have the record of what was struck", "could I see a list of what we lost". */
const ASKED_FOR = anyOf`
  (can|could|may|might) (i|we|you) (please )?(have|see|get|show me|give me|send me|tell me) (please )?(the |a |my |our )?${anyOf`
    (records?|lists?|log|diary|summary|history|account|run-?down) (of|for|from)
    what (was|were|i|we|has been|have)
  `}
`;

/** "Do I have anything written down about Salt Harrier", "is there a note on them". */
const NOTED = anyOf`
  (is|was|have (i|we)|do (i|we) have|did (i|we) (make|have|keep|write)) (there )?(got )?(anything|owt|any (notes?|records?)|a (note|record)) ${anyOf`
    (written|noted|put|jotted|marked|set|wrote)( down)?|recorded|logged|down|about|on|of|for
  `}
`;

export const historyQuestions: readonly QuestionRule[] = [
  {
    name: 'history of <plant>',
    topic: 'history',
    unasked: /\bhistory\b|^(?:log|diary|record|summary|recap)\b/,
    pattern: either(
      /\bhistory\b/,
      opening`
        ${WHAT_WE_DID}
        ${WHAT_HAPPENED}
        ${RECORD}
        ${ASKED_FOR}
      `,
      closing`log|diary|journal|summary|recap`,
      whole`
        yesterday|last night
        (last|this) (week|month|year)
        show .*\b(records?|history|story|log)
      `,
    ),
    phrasings: [
      'history of Salt Harrier',
      'What did we lose last month?',
      'what happened in March?',
      'Who had the Salt Harrier?',
      'What cuttings did I actually take in the last week of February?',
      'Did the plugs ever turn up?',
      'May I have the record of what was struck in March?',
      'could I see a list of what we lost in April',
    ],
  },
  {
    name: 'anything noted on <plant>',
    topic: 'history',
    needsPlant: true,
    pattern: opening`${NOTED}`,
    phrasings: [
      'do I have anything written down about the Salt Harrier',
      'is there a note on the Salt Harrier?',
    ],
  },
  {
    name: 'losses so far',
    topic: 'history',
    unasked: /./,
    alone: true,
    pattern: FIGURES,
    phrasings: ['losses so far this year', 'sales last month please'],
  },
];
