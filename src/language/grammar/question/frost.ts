/** Frost, and whether it is warm enough outside. */
import { anyOf, either, opening, whole, within } from '../../phrases.js';
import type { QuestionRule } from './rule.js';

export const frostQuestions: readonly QuestionRule[] = [
  {
    name: 'last frost',
    topic: 'frost',
    pattern: either(
      whole`frost (forecast|risk|tonight|warning|dates?)`,
      opening`
        ${anyOf`
          what|whats|when|whens|how
          is|are|do|does|did|has|have|will|would|could|should
          any|chance|the|our|first|last|usual|average
        `} … (frosts?|frosty|freeze|freezing)
      `,
    ),
    phrasings: ['When is the last frost?', 'frost forecast?', 'Any chance of frost this week?'],
  },
  {
    name: 'is it safe to plant out',
    topic: 'frost',
    pattern: within`
      ${anyOf`
        safe|ok|okay|all right|alright|clear of frost
        warm enough|too cold|too early|too soon
      `} … (plant|planting|put|putting|outside|out|outdoors)
    `,
    phrasings: ['Is it safe to plant out?', 'is it too early to put the Salt Harrier outside?'],
  },
  {
    name: 'is it cold tonight',
    topic: 'frost',
    pattern: opening`
      (do|should|must|shall|had) (i|we) (need to |have to |better |want to |be )?${anyOf`
        (fleece|fleecing|cover|covering|bring|bringing)\b.* (tonight|this week|this weekend|yet)$
      `}
      how cold (is|will|are|does|might)
      will it be cold
      is it (going to be |gonna be )?cold
      what's the (forecast|temperature) (for )?tonight
      cold tonight
    `,
    phrasings: ['Should I fleece them tonight?', 'how cold will it get?', "What's the forecast for tonight?"],
  },
];
