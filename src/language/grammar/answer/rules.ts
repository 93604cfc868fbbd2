/** What a bare reply says where it tells no number: "not yet", "all of them", "done". */
import type { AnswerValue } from '../../../ledger/entry.js';
import { alternatives, type Listed } from '../../phrases.js';
import { CALLED } from '../called.js';
import { leading, trailing } from '../runs.js';

export interface AnswerRule {
  readonly name: string;
  readonly value: AnswerValue;
  readonly pattern: RegExp;
}

/** "Yes mate, just looked, …". */
const OPEN = leading`
  yes|yeah|yep|yup|no|nope|nah|ok|okay|sure|right|well|so|just|only|still|please
  oh|ah|um|eh|hm|ha|hi|hello|oops|sorry|sadly|unfortunately
  i am|i'm|(i'm |i am |am )?(afraid|feart|afeared)|(i )?think|(the answer is|answer)
  looked|just looked|(just )?checked|had a (look|peek)
  (yes|yeah|yep|yup|aye|no|nope|nah|not yet|sorry|ah|oh|hi|hello) (${CALLED})
`;

/** "… yet, I'm afraid". */
const CLOSE = trailing`
  thanks|thank you|cheers|pls|please|sorry|sadly|unfortunately|(i am|i'm) afraid
  lol|${CALLED}
  so far|for now|today|now|then|this time|yet|still|at all|too|as well
  i think|actually|really|of course|surely|indeed|honest|honestly|aye|grand
`;

/** The note is one of these and nothing else, fillers aside. */
function bare(...list: Listed): RegExp {
  return new RegExp(`^${OPEN}(?:${alternatives(...list)})${CLOSE}$`);
}

/** In the order in which they are tried. */
export const answerRules: readonly AnswerRule[] = [
  {
    name: 'not yet',
    value: 'notYet',
    pattern: bare`
      (no |none |nothing |nowt |nout |nope |never |no not |not )yet|(none|not|nothing) as yet
      no (roots|sign|joy|luck|show) yet|no change|not just yet|not quite( yet)?|not ready( yet)?
      nothing (doing|happening|showing|stirring|moving)( as)? yet
      (they |it )?(haven't|hasn't|have not|has not|aren't|isn't|are not|is not)( done)? yet
      too (early|soon)( yet| to (say|tell))?|yet to|(still )?waiting|give it time|maybe next week
      still (not|no|nothing)|(none|nothing|not) so far
    `,
  },
  {
    name: 'none',
    value: 'none',
    pattern: bare`
      none|none of (them|em|it|those)|none at all|neither|not one of them|no one
      zero|zilch|nil|nada|nought|0|zip|nothing|nowt|nothing doing
      not (a single|one|any)( (one|root|of them|of em))?|not a (one|thing|sausage|whit)
      (no|not a) signs?|no roots( (that i can see|to see|showing))?
      bugger all|sod all|divil a (one|bit|root)|never a one
    `,
  },
  {
    name: 'all of them',
    value: 'all',
    pattern: bare`
      all|all of (them|em|it|those)|all them|all good|all (have|did|rooted up)|(they )?all are|(they're|they are) all
      they (all )?(have|did) all|they all (have|did|are|were)
      the (whole )?lot|the lot of (them|em)|(whole )?lot
      every (single )?one( of (them|em))?|every last one|each one|everything|everyone|100 %
    `,
  },
  {
    name: 'done',
    value: 'yes',
    pattern: bare`
      yes+|yea+h|ye+p+|yup|ya|yah|yis|y|aye|yessir|yes sir|yes indeed|yes did
      sure|sure (did|have|thing)|sure i did|ok|okay|right|correct|that's right|affirmative
      absolutely|definitely|of course|indeed
      (all |just )?done|(all )?finished|completed|(all )?sorted|job done|done and dusted|tick|ticked off
      (done|did) (it|that)|did so|just did( it)?|got it done|has been done|is (done|ready)
      i (did|have)( yeah)?|i did so|(we|they) (did|have)|it (is|has|did)|they are|already (did|done|have)
      i have done( it)?|have done( it)?|i've done (it|that)
      (it's|its|that's|that is|they're) done|that's it done
    `,
  },
  {
    name: 'no',
    value: 'no',
    pattern: bare`
      no|nope|nah|nay|naw|nuh|n|negative|never|no (way|chance|luck|joy)
      not (today|really|at all|this time)|(i'm |i am )?afraid not
      (no )?not done|not done it
      (no )?i (haven't|didn't)|haven't|didn't|did not|i (have|did) not
      (no )?they haven't|they didn't|it (hasn't|didn't)
      haven't done it|didn't (do|get to|get round to|manage) it
    `,
  },
];
