/** What stands around a question, and the question without it. */
import { anyOf, beginning, opening, within } from '../../phrases.js';
import { leadingSome } from '../runs.js';

/** Words before the question proper: "hi, quick question, any idea how …". */
export const PREAMBLE = new RegExp(
  `^${leadingSome`
    oh|ah|um|uh|eh|yo|ugh|lol|omg|omfg|yoke|wait|listen|say|pray|just|then|also|so|now|and|but|right|well|yes|ok|okay
    hey|hi|hello|hiya|morning|evening|mate|lads|bot|slipnote|thanks|please|kindly|sorry
    by the way|btw|out of interest|in the name of god|in heaven's name|for the love of god|what on earth|help me out

    question|(quick|one) question|quick one
    wondering|i wonder|remember|(do|can) you remember|(can|may) i ask
    do (you|we) know|would you know|you wouldn't know|any idea|(y'all |you )?got any (idea|clue)|any clue|no idea|(i'm )?not sure
    i forget|i forgot|forgot|(i've|i have|i've quite) forgotten|(i )?(can't|don't) remember|cannot remember

    remind (a|an|this|your) (poor |daft |forgetful )?(old )?(fool|man|woman|lady|lad|soul|duffer|codger|brain|gardener)
    (tell|say|remind|inform|advise) me|tell us|let me know|do tell me|be a dear and tell me|mind telling me
    (can|could) you (please )?tell me|(would|will) you tell me|would you ever tell me|could you say
    you might tell me|perhaps you could tell me|(can|could|will) you remind me
    i should like to know|i'd like to know|i want to know|could do with knowing|kindly advise

    show me|give (me|us)|gimme|let me see|(run|talk) me through|print me|print|pull up|call up
    list|list of|a (list|rundown|run down|breakdown) of
  `}`,
);

/** Verbs that a word which asks may stand before. */
const ASKED_VERB = anyOf`
  is|are|was|were|am|did|do|does|have|has|had|can|could|should|will|need|needs|got|went|rooted|died
`;

/** "What all did I do", "where exactly are they": a word behind the one that asks changes nothing that is asked. */
const STRESSED = opening`
  (?<asks>what|who|where|when|which|how|why)('s)? ${anyOf`
    all|exactly|precisely|on earth|in the world|the (heck|hell|devil|blazes)
  `}(?= ${ASKED_VERB}\b)
`;

/** "What have I all done": the same behind who did it. */
const STRESSED_BEHIND = /^((?:what|who|where|when|which) (?:have|did|has|had|do) (?:i|we|you)) all(?= )/;

/** "How'd they do", "whatd i get up to". */
const CLIPPED =
  /^(what|who|where|when|how)(?:'d|d|'re|re) (?=(?:i|we|they|the|my|our|it|those|these|plantname)\b)/;

/** "Salt Harrier, what have I got", "out of the Salt Harrier how many made it": what is asked about stands first. */
const PLANT_FIRST = beginning`
  ((out of|of|from|for|on|with|re|about|as for) )?((the|my|our) )?plantname (?=${anyOf`
    how (many|much|long|old|are|is|did|do)
    what (have|did|do)
    where (are|is|did|have|do)
    when (did|do|was|were|will|are|is|can|should|due|ready|next)
    who (had|got|has|bought)
  `}\b)
`;

/** A line without the stress on the word that asks, and with that word whole. */
export function unstressed(line: string): string {
  return line
    .replace(CLIPPED, (clipped: string, asks: string) => `${asks} ${/re $/.test(clipped) ? 'are' : 'did'} `)
    .replace(STRESSED, '$<asks>')
    .replace(STRESSED_BEHIND, '$1');
}

/** A line without the words before its question, and without stress. */
export function questionProper(line: string): string {
  return unstressed(
    line
      .replace(PREAMBLE, '')
      .replace(PLANT_FIRST, '')
      .replace(/(?<=.)(?: (?:please|pls|then|thanks|thank you))+$/, ''),
  );
}

/** "Show me everything I took": what the program is bidden to tell is asked. */
export const BIDS_TO_TELL = within`
  show me|give (me|us)|gimme|let me see|(run|talk) me through|could do with knowing
  list|list of|rundown of|print|pull up|call up
`;

/** What it may be bidden to tell. */
export const TOLD_WHEN_BIDDEN = opening`
  everything|every|all|any|anything
  what|how|which|where|when|who
  yesterday|last (week|month|year)
  (the|my|our) (losses|sales|count|numbers|figures|totals?|jobs|ones|batches|history)
`;
