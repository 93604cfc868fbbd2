/** Words that tell whether plants went to somebody, and where the name of whoever it was ends. */
import { whole } from '../../phrases.js';

/** Words that no name of somebody goes on behind. */
export const STOP = whole`
  for|at|from|in|into|on|off|of|over|to|with|by|via|per|since|after|before|while|when|if|as|because
  and|but|then|so|too|also|plus|instead|he|she|they|who|which|that|this|each|already|last|finally|eventually|today|yesterday|leaving|home|free|gratis
`;

/** Words that are nobody, or begin something else: "to the", "to rot", "to sell". */
export const NOBODY = whole`
  the|a|an|my|our|his|her|their|some|each|own|it|them|him|me|us|myself|mine|everything
  lunch|lunchtime|dinnertime|teatime|noon|midday|elevenses|closing|then|now|mistake
  first|last|final|remaining|rest|up|down|away|good|home|hand|market|stall
  rot|mould|frost|slugs|snails|death|water|drink|feed
  be|go|grow|make|try|see|do|keep|use|sell|put|get|plant|take|pot|start|finish|order
`;

/** What carries plants to somebody, behind "on the" or "by". */
export const CARRIER = whole`
  vans?|lorry|lorries|truck|trolley|trailer|cart|bus|coach|train|ferry|boat|plane|bike|pickup|ute|wagon|car|pallet
  post|mail|courier|delivery|round|run|rail|road|sea|air|foot|hand|way|early|late
`;

/** People told by what they are: "the ladies at church". */
export const SOMEBODY = whole`
  people|everyone|someone|folks?|ladies|lady|woman|man|lads?|girls|boys|chap|bloke|fellow|gent|gentleman|fella|guys?|couple|family
  neighbours?|friends?|mates?|kids|team|lot|teacher|boss|colleagues?
`;
