/** How a plant is getting on. */
import { anyOf, closing, either, opening, whole } from '../../phrases.js';
import type { QuestionRule } from './rule.js';

export const statusQuestions: readonly QuestionRule[] = [
  {
    name: 'how are <plant>',
    topic: 'status',
    needsPlant: true,
    pattern: opening`
      how|hows|what|whats (up|happening|the)|which|any
      where (are|do|have) (we|i)
      are|is|have|has|did(?! (exactly |just )?the same\b)|do|does|will|can|could|should|would
      status|state|update on
    `,
    phrasings: [
      'How are the Salt Harrier?',
      'any roots on the Salt Harrier?',
      "what's the latest with Salt Harrier?",
    ],
  },
  {
    name: 'show me <plant>',
    topic: 'status',
    unasked: /./,
    needsPlant: true,
    pattern: whole`
      ${anyOf`
        show( me)?|list|let me see
        tell me (all )?about
        (the )?story of
      `}( (all|the|my|of))* plantname
      (pull|call|bring) up (the |my )?plantname( for (me|us))?( please)?
    `,
    phrasings: ['show me Salt Harrier', 'let me see the Salt Harrier', 'pull up the Salt Harrier please'],
  },
  {
    name: '<plant> status',
    topic: 'status',
    unasked: /./,
    needsPlant: true,
    pattern: either(
      closing`
        status|update|progress|doing ok
        (?<!(nothing|nowt) )doing
      `,
      whole`
        (the )?${anyOf`
          latest|update|news|status|progress|report
        `} (on|with|of|for|about|from) (the |my |our )?plantname( please| pls)?
      `,
    ),
    phrasings: ['Salt Harrier status', 'latest on the Salt Harrier', 'how the Salt Harrier are doing?'],
  },
  {
    name: '<plant>?',
    topic: 'status',
    needsPlant: true,
    pattern: /./,
    phrasings: ['Salt Harrier?'],
  },
];
