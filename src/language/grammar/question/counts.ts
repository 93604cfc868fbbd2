/** How many there are. */
import { anyOf, closing, either, opening, whole, within } from '../../phrases.js';
import type { QuestionRule } from './rule.js';

/** "Number of Salt Harrier", "grand total". */
const HEADS_A_COUNT = anyOf`
  ((grand|overall|running|stock|head|current) )*${anyOf`
    number of|count|total|tally|qty|quantity|figures?|levels?|availability
  `}
  numbers (on|in|for|of)
`;

/** "What am I down to", "how big is it", "any stock of". */
const ASKS_A_COUNT = anyOf`
  what's (the|my) (counts?|totals?|tally)
  what (am i|are we|i'm|we're) down to
  how big (is|are)
  any stock of
  stock (of|level of|on) (the |my )?plantname
  (do (i|we) have|have (i|we)|is there|are there|got) (got )?any … (left|more|spare|still)
`;

/** "Salt Harrier tally", "how many Salt Harrier". */
const UNASKED_COUNT = either(
  closing`count|total|tally|headcount`,
  whole`(the )?plantname numbers( please| pls)?`,
  opening`
    count|total|tally|number of|qty|quantity|availability|how many
    (stock|head) \w+
    stock of (the |my )?plantname
  `,
);

export const leftQuestions: readonly QuestionRule[] = [
  {
    name: 'what have I got left',
    topic: 'count',
    pattern: whole`
      what('s|s|'ve)?( (do|have|is|am|i|we|got|had|still|alive|there))* ${anyOf`
        left|remaining|alive|got|in stock
      `}( ${anyOf`over|now|alive|in all|altogether|of (them|it all)`})*
    `,
    phrasings: ['What have I got left?', "what's still alive?", 'what do we have in stock?'],
  },
];

export const countQuestions: readonly QuestionRule[] = [
  {
    name: 'list',
    topic: 'count',
    unasked: /./,
    alone: true,
    pattern: whole`
      (list|full list|list (all|everything|the lot))( please| pls)?
      list (my |the |all )?(plants|batches|cuttings)( please| pls)?
    `,
    phrasings: ['list', 'full list please', 'list all plants'],
  },
  {
    name: 'how many <plant>',
    topic: 'count',
    unasked: UNASKED_COUNT,
    pattern: either(
      within`
        how (many|much)
        what (number|quantity|total|count)
        availability
        (need|want|like|after) (a|the) (count|total|tally|headcount|number)
      `,
      opening`
        ${HEADS_A_COUNT}
        ${ASKS_A_COUNT}
      `,
      closing`count|total|tally|headcount|stock level|numbers|qty|quantity|availability`,
    ),
    phrasings: [
      'How many Salt Harrier?',
      'Salt Harrier tally',
      'number of Salt Harrier',
      'have I got any Tallow Bell left?',
    ],
  },
];
