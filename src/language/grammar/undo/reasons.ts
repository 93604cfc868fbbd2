/** Reasons given beside an undo: "…, meant for my sister", "…, wrong pot". */
import { anyOf, whole } from '../../phrases.js';
import { leading, trailing } from '../runs.js';

/** "It was meant for my sister", "sent to the wrong chat", "it's for somebody else". */
const MEANT_FOR_ANOTHER = anyOf`
  (${anyOf`
    it|that|this|they|those|these|(the|that|my) last (one|entry|note|message|bit)|that message
  `}( was| were| is)? )?(only |really |just )?(meant|intended|sent|(?<=(was|is) )for) ?(for|to)? ${anyOf`
    (my|our) \w+( \w+)?
    (someone|somebody|anybody)( else)?
    (the other|another|the wrong|a different) \w+
    (?!the |my |a |plantname)\w+
  `}
  (it |that )?(wasn't|was not|weren't|isn't) (meant )?for (you|here|this( \w+)?)
  (i )?(only )?meant to (text|message|tell|ring|send it to) (my )?\w+
`;

/** "Wrong pot", "I was looking at the wrong tray", "pressed the wrong button". */
const WRONG_ONE = anyOf`
  wrong|wrong \w+( (entirely|altogether|sorry))?
  i (was|am|must have been) (looking at|on|in|thinking of) the wrong \w+( lol)?
  i misread (the|it|my)( \w+)?
  ${anyOf`
    i'd|(i )?had|(i was |was )?holding|(i )?(picked up|grabbed|read)
  `} (got )?the wrong \w+( in my hands?| in front of me| out)?
  i (pressed|hit|tapped|clicked|touched|picked|chose|typed|put) the wrong ${anyOf`
    thing|one|button|key|plant|pot|batch|name|place|entry|person|number|date|day
  `}
  (i'd |i had |i've |i have |had |i got |got )?(got )?(hold of )?the wrong end of the stick( there| entirely| altogether)?|wrong end of the stick
`;

/** "My mistake", "that's not right", "it never happened". */
const MISTAKEN = anyOf`
  mistake|my mistake|i made a mistake|typo|i misspoke|autocorrect
  ${anyOf`
    it|that|this|the last (one|entry|note)|that last (one|entry|note|bit)|last one|last entry
  `} (was|is) (wrong|a mistake|an error|not right|rubbish|nonsense|incorrect)
  (that's|thats|that is|it's|its) (tomorrow's|next week's|another day's|still) (job|to do)
  (that's|thats) wrong|that's not right|that isn't right|not right
  i (didn't|did not) mean (that|it|to)
  (it |that |they )?(wasn't|was not|weren't) (today|yesterday|this morning|this week|me|us|mine|ours)
  i (got|was) (it|that|mixed up|muddled|confused)( wrong)?|got (it|that) wrong
  (i was |i'm |i am )?(mixing|muddling|confusing) (it|them|that|things)( up)?
  i (must have |'d |had )?(counted|noted|entered|logged|told you) ${anyOf`
    it|them|that|one|some|(a )?(couple|few)|two|three
  `}( of (them|those))? twice|i (must have |'d |had )?(double|mis) ?counted( (it|them|that))?
  wrongly entered|in error|it was in error|(it|that) never happened
`;

/** "Cold thumbs", "the cat walked over the phone". */
const HOW_IT_CAME = anyOf`
  (fat|cold|clumsy|wet) (fingers|thumbs)|butterfingers|silly me
  (i )?(have |i've )?changed my mind( about (that|it|the \w+))?
  (the |my )?(cat|dog|kitten|puppy|baby|toddler|kid) ${anyOf`
    (walked|sat|trod|stood|jumped|ran|stepped) (on|over|across) (the |my )?(phone|screen|keyboard|tablet)
  `}
  (i )?(wasn't|wasnt|was not) (looking|thinking|concentrating|paying attention)
  (i )?(was|got|had been|must have been) ${anyOf`
    distracted|interrupted|half asleep|miles away|daydreaming|rushing|in a (hurry|rush)|tired
  `}( by (the |my |a )?[a-z']+( [a-z']+)?)?
`;

/** "The Salt Harrier have perked up", "no wait, it's grand": those given up live. */
const CAME_ROUND = `${leading`
  the|my|those|all
  oh|no|ah|wait|hang on|hold on|sorry|actually
`}(?:plantname|they|it|she|he|they've|they're|it's|she's|he's)${trailing`
  have|has|had|are|is|were|was|look|looks|seem|all|both|only|just|actually|looking
`} ${anyOf`
  perked up|picked up|(come|came) (round|around|back)|recovered|revived|rallied|bounced back|pulled through
  fine|ok|okay|alright|grand|(still )?alive|(still )?living|not dead|limp|sulking|dry|thirsty|resting
`}${trailing`
  now|again|after all|since|overnight|nicely|after a drink|with a drink|this morning|today
`}`;

/** Whether the line tells that those given up live. */
export const TELLS_CAME_ROUND = whole`${CAME_ROUND}`;

/** "That was the plan for tomorrow": nothing of it was done. */
const NOT_YET_DONE = anyOf`
  (that|it|this|those|they|these) (was|were|is|are) (only |just |still )?(the|my|a) plans?( (for|of) (the )?[a-z]+( [a-z]+)?)?
  i (haven't|have not) (actually )?done (it|that|them|those|either)( yet)?
`;

/** "Oh bother", "please". */
const BESIDE = anyOf`
  oh|oh no|no|no wait|wait|hang on|hold on|(oh )?bother|blast|drat|damn|argh|oops|whoops|sorry
  actually|actually no|no actually|please|pls|thanks|thank you|ta|(would|will) you
`;

export const WHY = whole`
  ${MEANT_FOR_ANOTHER}
  ${WRONG_ONE}
  ${MISTAKEN}
  ${HOW_IT_CAME}
  ${CAME_ROUND}
  ${NOT_YET_DONE}
  ${BESIDE}
`;
