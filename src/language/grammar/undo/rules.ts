/** What takes the last entry back. */
import { alternatives, anyOf, whole, within } from '../../phrases.js';
import { entryNouns } from '../entry-words.js';
import { leading, trailing } from '../runs.js';

interface UndoRule {
  readonly name: string;
  readonly pattern: RegExp;
}

/** "Oh no wait, …", "could you please …". */
const OPEN = leading`
  oh|ah|ach|och|arra|argh|ugh|um|erm|hmm|oops|oopsie|whoops|omg|eek|yikes|doh|wait|hang on|hold on
  damn|dammit|darn|shoot|sugar|heck|hell|crap|drat|blast|bother|bugger|balls|feck|crikey|jeez|gosh
  no|nope|nah|nvm|so|and|ok|just|actually|sorry|please|pls|kindly
  (can|could) you|you (can|could|may)|can we|lets|let's|i (need|want) to
  wrong|mistake|my mistake|(that|i) was wrong|(i )?didn't mean that|as you were
`;

/** "… please", "… from the record", "… it was a mistake". */
const AFTER = trailing`
  out|off|again|then|too|as well|also|please|pls|thanks|sorry|lol|mate|bot|(would|will) you
  from the (records?|log|ledger|books?|list)
  off the (records?|log|ledger|list)
  mistake|my mistake|i made a mistake|i (got|had) (it|that) wrong
  (it|that) was (wrong|(a mistake|an error)( (from|of) me| on my part)?)|it's wrong|its wrong
  wrong (plant|one|pot|batch|button|entry|person|chat|window|group)( entirely| altogether)?
  i was (looking at|on|thinking of) (the wrong|my \w+|another|the other) \w+
`;

/** A noun for an entry; the only group of a rule that is caught. */
const NOUN = `(${entryNouns})`;

/** What an entry may be called: "loss", "Ember Fox sale", "sale of the Ember Fox", "gift to Ines". */
const KIND = `(?:plantname )?${NOUN}${alternatives`
  ( (of|for|on|with) (the )?plantname)?( to (?!be\b|plantname)[a-z']+( [a-z']+)?)?( before( it| that| this)?)?
`}`;

/** "That last bit", "that loss". */
const THAT_ONE = anyOf`
  it|this|last one|(the|my) entry|(the|that) one before( it| that)?
  that( ${anyOf`
    one|note|entry|last|last (one|entry|bit|note)|${KIND}
  `})?
`;

/** "The last message I sent", "my previous sale". */
const LAST = `${alternatives`
  (the |my |that )?(very )?(last|previous|latest|most recent)
`}(?: ${anyOf`
  one|entry|note|thing|bit|log|message|line|writing|record|post|update|${KIND}
`})?(?: ${anyOf`
  (i|you) (just )?(said|wrote|logged|made|put( in| down)?|entered|told you|gave you|typed)
  (i|i've|you|you've) (just )?(sent|texted|messaged)( you| in| through| over| across| to you)?
`})?`;

/** "What I just said about the Ember Fox". */
const WHAT_I_SAID = alternatives`
  (what )?i (just )?${anyOf`
    said|wrote|(sent|texted|messaged)( you| in| through| over)?|logged|put( in)?|told you|spoke|mentioned
  `}( that| it| anything)?( (about|on|for) (the |my )?plantname)?( ${anyOf`
    (just|only) now|(just |only )?(a|one|two) (moment|minute|second|sec|min)s? ago
  `})?
`;

const THAT = anyOf`
  ${THAT_ONE}
  ${LAST}
  (the|that) last lot (that )?(i|you) (just )?(said|sent|told you|gave you|put in|logged)
  ${WHAT_I_SAID}
`;

/** Verbs that undo what stands behind them; some only there, as `undo.ts` says. */
const UNDO = anyOf`
  undo|unlog|revert|reverse|retract|withdraw|void|cancel|back out
  delete|del|remove|erase|discard|get rid of|kill|lose|drop|bin|skip
  scrap|scrub|scratch|strike|wipe|(scrub|strike|rub|cross) out|(wipe|knock) off
  forget|ignore|disregard|(take|pay) no (notice|heed|attention)( of| to)|nix
  take (off|out|away|back)
`;

const PUT_BACK = anyOf`take|put|rub|cross|strike|knock|wipe`;

/** Words without one of which a line undoes nothing, and is looked at no further. */
export const MAY_UNDO = within`
  ${UNDO}|(${PUT_BACK}|make|throw) … (back|out|off|away)
  happen(ed)?|one before|as you were|never ?mind|mistake|wrong|error|not right
`;

/** Those that nobody would say of a plant's own losses and sales in the flesh. */
const UNDO_A_PLANTS = anyOf`
  undo|unlog|revert|retract|withdraw|cancel|take back
  delete|remove|erase|scrap|scratch
  ignore|forget|disregard|(take|pay) no (notice|heed|attention)( of| to)|nix
  (cross|strike|rub) out|wipe|void
`;

/** Never said of what is done to plants in the flesh. */
const DEATHS = '(deaths?|loss(?:es)?)';

export const undoRules: readonly UndoRule[] = [
  {
    name: 'undo that',
    pattern: whole`${OPEN}${UNDO}( undo)?( ${THAT})?${AFTER}`,
  },
  {
    name: 'take that back',
    pattern: whole`
      ${OPEN}${PUT_BACK}${anyOf`
        ( (back|out|off) ${THAT})
        ( ${THAT} (back out|back off|back|out|off))
        ( (the|those|that|my) ${DEATHS} (back out|back off|back|out|off))
      `}( will you| would you)?( please| again| thanks)*
    `,
  },
  {
    name: 'that never happened',
    pattern: whole`${OPEN}(that|it|this|(the|that|my) ${KIND}) (never happened|didn't happen)${AFTER}`,
  },
  // As it is said where "away" goes with a verb of making.
  { name: 'make the last entry away', pattern: whole`${OPEN}(make|take|throw|put) ${LAST} away${AFTER}` },
  { name: 'ignore me', pattern: whole`${OPEN}(ignore|disregard) me${AFTER}` },
  // Behind verbs that nobody would say of plants: "take off the watering" and "drop the feed" may be anything.
  {
    name: 'undo the watering',
    pattern: whole`${OPEN}(undo|unlog|revert|scratch|retract) (the|my) ${KIND}${AFTER}`,
  },
  {
    name: 'undo the <plant> loss',
    pattern: whole`
      ${OPEN}${UNDO_A_PLANTS}( about)? (the|my|that) (last )?plantname (${NOUN}|one|entry|note|line|bit|part)${AFTER}
    `,
  },
  {
    name: 'undo that one, the <plant>',
    pattern: whole`${OPEN}((undo|revert|scratch|delete|cancel) that one (the |my )?|(undo|unlog|revert) (the |my )?(last )?)plantname${AFTER}`,
  },
  // Behind an undo; alone it would say nothing.
  {
    name: 'and the one before',
    pattern: /^(?:and|also|plus) (?:also )?(?:undo )?the one before(?: that| it| too| as well)*$/,
  },
  { name: 'as you were', pattern: /^as you were$/ },
  { name: 'never mind that', pattern: whole`${OPEN}(never mind|nevermind) ${THAT}` },
  {
    name: 'that was a mistake',
    pattern: whole`
      ${leading`oops|whoops|oh|no|wait|hang on|hold on|sorry|actually`}${anyOf`
        that|(that )?last one|the last one|last entry
      `} was (a mistake|wrong|an error|not right|the wrong (one|plant|batch))( please)?${anyOf`
        ( undo( it| that)?)
        ( (delete|scrap|forget|ignore) it)
      `}?
    `,
  },
];
