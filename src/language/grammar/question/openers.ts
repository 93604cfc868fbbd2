/** Words that open a question even without its mark. */
import { anyOf, opening } from '../../phrases.js';

/** "What did I take", but not "what a day" or "what the slugs left". */
const OF_WHAT = anyOf`
  what('s)? (?!${anyOf`
    (a|with)\b
    the (slugs?|snails?|frost|mice|mouse|pigeons?|rabbits?|wind) \w+\b
    (i|we|you|i've|we've|you've) … plantname (is|are|was|were|turns|turned|should)\b
  `})
  whats|what way
  which(?! reminds)
  who|who's|whose
`;

/** "When were they taken", "where are they", but not "where there's a draught". */
const OF_WHEN_AND_WHERE = anyOf`
  when's|whens
  when (due|ready|next)\b
  when ${anyOf`
    is|are|was|were|am|did|do|does|have|has|to|the|our|my
    will|would|ought|might|should|can|could|must|shall
  `}
  where('s|s|(?! there('s| is)?\b)\b)
  whereabouts (is|are|did|have)
`;

const OF_HOW = anyOf`
  how's|hows
  how (many|much|long|old|well|good|about|come|goes|to)
  how (am|is|are|was|were|be|do|does|did|have|has|can|will|would|should)
  how (big|far|often|soon|cold|warm|hot) (is|are|do|does|did|will|would|can|should|have|has|it)\b
`;

const WEEKDAY = anyOf`(mon|tues|wednes|thurs|fri|satur|sun)day|mon|tues?|wed|thur?s?|fri|sat|sun`;

/** "Did the misting", "did the fuchsias today", "did the lavender and forgot to tell you". */
const DONE = anyOf`
   plantname$
   (watering|misting|feeding|spraying|rounds)\b
   \w+ing (on |up |out |off )?of\b
   plantname (plantname|\d+|on \w+day|today|yesterday|last|this|at last|finally|first|too|as well)\b
   plantname (and|but) … (forgot|never (told|said|mentioned|wrote))
`;

/** "Did we lose any", but not "did the watering" or "is done". */
const OF_A_VERB = anyOf`
  is (?!done)
  are (?!rooted)
  am i
  is there|are there|would there be\b
  would ((the|my|our) plantname|they|these|those|i|we|it) (?!never|not\b)
  do (i|we|the|my|they|you|any)\b
  does
  did (i|we|they|you|any|it(?! (on|yesterday|today|this|last|at|in|before|after|over|${WEEKDAY})\b))\b
  did (the|my)\b(?! ${DONE})
  have (i|we|they|you|any)\b
  has (the|my|it|anyone|any)\b
  (have|has) (the |my )?plantname (ever )?been\b
  have (the|my)\b(?=.*\b(yet|rooted|taken|struck|got roots)\b)
`;

/** "Can they go out", but not "can you put me down for ten". */
const OF_WHAT_MAY_BE = anyOf`
  will (i|we|the|my|they|it|there|this|these)\b
  (may|might) (i|we) (please )?(have|see|know|ask)\b
  can (i|we|they)\b
  can you (?!put (me|us) down)
  could (i|you|we)\b
  should (i|we|they|the)\b
  shall (i|we)\b
`;

/** "Any roots", "anything due", "owt to do". */
const OF_ANY = anyOf`
  any (stock|joy|luck|news|signs?|updates?|roots|idea|jobs|word|progress|change|chance|frost)
  (anything|owt) (still|left|else) (in|on|under)\b
  (anything|owt) (due|to do|need)
  anything (needs|ready|for)
  anything (rooted|struck|showing|moving|happening|up|through) … (yet|so far)
  owt want
`;

export const OPENS_QUESTION = opening`
  ${OF_WHAT}
  ${OF_WHEN_AND_WHERE}
  ${OF_HOW}
  ${OF_A_VERB}
  ${OF_WHAT_MAY_BE}
  ${OF_ANY}
`;
