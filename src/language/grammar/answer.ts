/** Bare replies to a prompt: words that mean nothing without one, and nothing else in the note. */
import type { AnswerValue } from '../../ledger/entry.js';
import type { Piece } from '../pieces.js';
import type { Quantity } from '../quantities/quantity.js';
import { wordAt } from './rule.js';
import { leading, trailing } from './runs.js';

export interface AnswerRule {
  readonly name: string;
  readonly value: AnswerValue;
  readonly pattern: RegExp;
}

const OPEN = leading(
  "just looked|had a look|looked|just checked|checked|had a peek|yes|yeah|yep|yup|no|nope|nah|oh|well|ah|so|ok|okay|sorry|um|eh|i am|i'm|just|ha|hi|hello|sadly|unfortunately|the answer is|answer|oops|right|hm|only|think|i think|sure|please|still|(?:yes|yeah|yep|yup|aye|no|nope|nah|not yet|sorry|ah|oh|hi|hello) (?:mate|boss|love|duck|pet|hun|pal|chuck|lad|lads|bot)",
);
const CLOSE = trailing(
  "thanks|thank you|cheers|mate|pls|please|i am afraid|i'm afraid|sadly|unfortunately|boss|love|duck|pet|hun|pal|chuck|lad|lads|so far|for now|today|now|this time|at all|of course|sorry|i think|yet|grand|lol|actually|still|really|too|as well|surely|indeed|honest|honestly|aye",
);
const whole = (body: string): RegExp => new RegExp(`^${OPEN}(?:${body})${CLOSE}$`);

/** In the order in which they are tried. */
export const answerRules: readonly AnswerRule[] = [
  {
    name: 'not yet',
    value: 'notYet',
    pattern: whole(
      "not yet|none yet|none as yet|not as yet|nothing as yet|nothing (?:doing|happening|showing|stirring|moving)(?: as)? yet|no not yet|nothing yet|not quite(?: yet)?|no roots yet|not just yet|(?:they |it )?(?:haven't|hasn't|have not|has not|aren't|isn't|are not|is not)(?: done)? yet|no yet|not ready(?: yet)?|too (?:early|soon)(?: yet| to (?:say|tell))?|nope yet|yet to|(?:still )?waiting|give it time|nowt yet|nout yet|no sign yet|no change|no joy yet|no luck yet|no show yet|never yet|still not|still no|still nothing|maybe next week|none so far|nothing so far|not so far",
    ),
  },
  {
    name: 'none',
    value: 'none',
    pattern: whole(
      'none|none of (?:them|em|it|those)|zero|zilch|nil|nada|nought|0|not (?:a single|one|any)(?: (?:one|root|of them|of em))?|nothing|nowt|no one|not a sausage|not a one|not a thing|no signs?|no roots (?:that i can see|to see|showing)|zip|bugger all|sod all|neither|no roots|none at all|nothing doing|not one of them|divil a (?:one|bit|root)|not a whit|never a one',
    ),
  },
  {
    name: 'all of them',
    value: 'all',
    pattern: whole(
      "all|all of (?:them|em|it|those)|all (?:have|did|rooted up)|the (?:whole )?lot|the lot of (?:them|em)|every (?:single )?one(?: of (?:them|em))?|everything|everyone|they (?:all )?(?:all have|all did|have all|did all)|they all (?:have|did|are|were)|every last one|100 %|all good|whole lot|each one|all them|(?:they )?all are|(?:they're|they are) all|lot",
    ),
  },
  {
    name: 'done',
    value: 'yes',
    pattern: whole(
      "yes+|yea+h|ye+p+|yup|ya|yah|aye|sure|sure did|sure have|sure thing|ok|okay|done|all done|done it|did it|did that|done that|have done|has been done|is done|is ready|finished|all finished|i did|i have|we did|we have|they have|they did|it is|it has|they are|it did|correct|that's right|right|absolutely|definitely|of course|indeed|sorted|all sorted|yes indeed|job done|affirmative|yis|yessir|yes sir|i have done(?: it)?|have done it|done and dusted|just done|just did|just did it|i've done it|i've done that|i have yeah|got it done|it's done|its done|that's done|that is done|they're done|completed|y|did so|yes did|ticked off|tick|sure i did|i did yeah|i did so|already did|already done|already have|that's it done",
    ),
  },
  {
    name: 'no',
    value: 'no',
    pattern: whole(
      "no|nope|nah|afraid not|not done|no not done|not today|i haven't|haven't|i have not|i didn't|didn't|did not|i did not|not really|no i haven't|no i didn't|n|negative|not at all|never|i'm afraid not|i am afraid not|no way|nay|not done it|haven't done it|didn't do it|no they haven't|they haven't|they didn't|it hasn't|it didn't|not this time|no chance|nuh|naw|no luck|no joy|didn't get to it|didn't get round to it|didn't manage it",
    ),
  },
];

const AROUND =
  /^(?:and|of|them|em|those|yes|yeah|yep|yup|but|just|only|so|far|oh|ok|okay|well|got|i|think|thanks|the|now|please|about|it's|have|did|there|are|is|in|total|fact|all|think|today|er|sorry|say|cuttings|plants|pots|ones|did|sadly|out|do|tho|though|it|i'd|can|see|answer|looks|look|like|seems|seem|to|be|count|counted|reckon|exactly|end|eventually|altogether|overall|told)$/;
/** Behind a second number, which is then how many have not. */
const HAVE_NOT = /^(?:haven't|hasn't|didn't|don't|not|aren't)$/;

/** Before a number to what asked "have they all?"; with nothing asked it corrects ("no, just 1"). */
const NO = /^(?:no|nope|nah)$/;

/** Whether the number behind one left open is the one to go by. */
const settles = ({ settles: isSay }: Quantity, pieces: readonly Piece[], at: number): boolean =>
  isSay === true || /^call (?:it|that)$/.test(`${wordAt(pieces, at - 2)} ${wordAt(pieces, at - 1)}`);

/** A quantity that is all the note says, fillers aside; vague where two are told ("two, maybe three"). */
export function bareQuantity(pieces: readonly Piece[], asked: boolean): Quantity | undefined {
  let found: Quantity | undefined;
  let another = false;
  for (const [at, piece] of pieces.entries()) {
    const text = piece.is === 'word' ? piece.text : '';
    if (piece.is === 'count') {
      const behind = pieces[at + 1];
      // "Seven all told".
      if (found && piece.quantity.whole === 'all' && wordAt(pieces, at + 1) === 'told') continue;
      // "Half, say six", "five or six, call it five".
      if (found === undefined || settles(piece.quantity, pieces, at)) found = piece.quantity;
      // "Three have, two haven't".
      else if (behind?.is === 'word' && HAVE_NOT.test(behind.text)) return found;
      // "Two, maybe three"; "five, I think, yes, five".
      else if (pieces.length > 6 || piece.quantity.value === undefined) return undefined;
      else if (piece.quantity.value !== found.value) another = true;
    } else if (text === 'well' && found?.whole === 'all')
      return undefined; // "All well".
    else if (text === 'half' && found === undefined) found = { share: [1, 2] };
    else if (piece.is === 'break' || piece.is === 'when' || AROUND.test(text)) continue;
    else if (text === "let's" && asked) continue;
    else if (text === 'call' && found !== undefined) continue;
    else if (at === 0 && asked && NO.test(text)) continue;
    else if (/^(?:maybe|or|possibly|perhaps)$/.test(text) && found !== undefined) continue;
    // "I make it five", but not "make it five".
    else if (text === 'make' && /^(?:i|we)$/.test(wordAt(pieces, at - 1))) continue;
    else return undefined;
  }
  return another ? { vague: true } : found;
}
