/** Bare replies to a prompt: words that mean nothing without one, and nothing else in the note. */
import { whole } from '../phrases.js';
import { CALLED } from './called.js';
import type { Piece } from '../pieces/pieces.js';
import type { Quantity } from '../pieces/quantities/quantity.js';
import { wordAt } from './rule.js';

/** Words beside a number that leave it all that the note says: "well, I think it's five, all told". */
const AROUND = whole`
  yes|yeah|yep|yup|aye|ay|arr|ok|okay|fine|oh|er|lol|haha|well|so|but|and|then|thanks|please|sorry|sadly|answer
  i|i'd|it|it's|there|them|em|those|the|cuttings|plants|pots|ones
  got|have|did|do|are|is|be|can|see|say|look|looks|like|seem|seems|think|reckon|count|counted|told
  about|just|only|exactly|altogether|overall|all|total|fact|in|of|to|out|far|end|eventually|now|today|tho|though
  my|lovely|${CALLED}
`;

/** The same where something is asked: "17 good ones", "nine pieces", "180 up". */
const AROUND_ASKED = whole`
  good|great|grand|nice|decent|healthy|strong|happy|alright|right|up|away|going|growing|doing|goers?|winners?
  pieces?|bits|sticks|stems|babies|beauties|survivors|takers|successes|rooters
`;

/** Behind a second number, which is then how many have not. */
const HAVE_NOT = whole`
  haven't|hasn't|didn't|don't|aren't|not
  no|nope|nothing|still|without|to|unrooted|waiting
`;

/** Before a number to what asked "have they all?"; with nothing asked it corrects ("no, just 1"). */
const NO = /^(?:no|nope|nah)$/;

/** Before the number to go by: "2, or it might have been 3. Go with 3". */
const SETTLES = whole`
  (call|make|put) (it|that)|put down
  (go|going|went|stick|sticking) with|settle (on|for)
  we'll say|i'd say
`;
/** What may lead to it. */
const SETTLING = whole`
  call|make|put|go|going|stick|settle|with|on|for|down
  might|could|been|we'll|i'll|let's|safe
`;

/** Whether the number behind one left open is the one to go by. */
const settles = ({ settles: isSay }: Quantity, pieces: readonly Piece[], at: number): boolean =>
  isSay === true || SETTLES.test(`${wordAt(pieces, at - 2)} ${wordAt(pieces, at - 1)}`);

/** A quantity that is all the note says, fillers aside; vague where two are told ("two, maybe three"). */
export function bareQuantity(pieces: readonly Piece[], asked: boolean): Quantity | undefined {
  let found: Quantity | undefined;
  let another = false;
  const last = pieces.findLastIndex(
    (piece, at) => piece.is === 'count' && at > 1 && settles(piece.quantity, pieces, at),
  );
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
      else if (at < last) continue;
      else if (pieces.length > 6 || piece.quantity.value === undefined) return undefined;
      else if (piece.quantity.value !== found.value) another = true;
    } else if (text === 'well' && found?.whole === 'all')
      return undefined; // "All well".
    else if (text === 'half' && found === undefined) found = { share: [1, 2] };
    else if (piece.is === 'break' || piece.is === 'when' || AROUND.test(text)) continue;
    else if (asked && (text === "let's" || (found !== undefined && AROUND_ASKED.test(text)))) continue;
    else if (SETTLING.test(text) && found !== undefined) continue;
    else if (at === 0 && asked && NO.test(text)) continue;
    else if (/^(?:maybe|or|possibly|perhaps)$/.test(text) && found !== undefined) continue;
    // "I make it five", but not "make it five".
    else if (text === 'make' && /^(?:i|we)$/.test(wordAt(pieces, at - 1))) continue;
    else return undefined;
  }
  return another ? { vague: true } : found;
}
