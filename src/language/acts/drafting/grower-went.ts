/** Where the grower went when it was done: "that was me back in the shed", "then I sat in the porch", "had my dinner in the tunnel". */
import type { Clause } from '../../clauses/clauses.js';
import { wordAt } from '../../grammar/rule.js';
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import { pastPerson } from '../../mood/somebody-else.js';

/** What growers do in a place, and plants do not. */
const WENT = whole`
  legged|retired|retreated|sheltered|hid|hunkered|scarpered|dashed|bolted|dived|ducked|slunk|sloped|napped|dozed
  scuttled|nipped|skulked|fled|hurried|scurried|trudged|hobbled|waited|ate|drank
`;
const MEAL = whole`
  sandwich|sandwiches|dinner|lunch|tea|brew|cuppa|snap|bait|coffee|flask|breakfast|nap|sit|sulk|rest|elevenses|butties|butty
`;
const JOINT = /^(?:and|then|so|but|before|while|whilst|after)$/;
const THEM = /^(?:them|those|these|it|the|my|everything)$/;

/** Whether the words for it begin at a piece, and no more of the deed is told behind them. */
export function growerWentAt(pieces: readonly Piece[], at: number, { to }: Clause): boolean {
  const tellsMore = (piece: Piece): boolean =>
    piece.is === 'plant' || (piece.is === 'count' && piece.quantity.value !== undefined);
  if (pieces.slice(at, to).some(tellsMore)) return false;
  return isThatWasMe(pieces, at) || isGone(pieces, at) || isMeal(pieces, at) || isSomeoneThere(pieces, at);
}

/** "That was me back in the shed", "I was back in the shed". */
function isThatWasMe(pieces: readonly Piece[], at: number): boolean {
  const [first, second, third] = [0, 1, 2].map((n) => wordAt(pieces, at + n));
  if (/^that$/.test(first ?? '') && /^(?:was|is)$/.test(second ?? '')) return /^(?:me|us)$/.test(third ?? '');
  if (first === "that's") return /^(?:me|us)$/.test(second ?? '');
  return (
    /^(?:i|we)$/.test(first ?? '') &&
    /^(?:was|were)$/.test(second ?? '') &&
    /^(?:back|off|in|inside|indoors|sat|stuck|straight|home)$/.test(third ?? '')
  );
}

/** "Then I legged it to the shed", "and sat in the porch"; no plants behind it that were sat there. */
function isGone(pieces: readonly Piece[], at: number): boolean {
  const isLed = pieces[at - 1]?.is === 'break' || JOINT.test(wordAt(pieces, at - 1));
  const isGrower = /^(?:i|we)$/.test(wordAt(pieces, at));
  const verb = isGrower ? at + 1 : at;
  const word = wordAt(pieces, verb);
  // Plants are sat on a bench, too.
  if (!isLed || !(WENT.test(word) || (word === 'sat' && isGrower) || isSpent(pieces, verb))) return false;
  const next = pieces[verb + 1];
  if (isSpent(pieces, verb)) return true;
  const isIt = wordAt(pieces, verb) === 'legged' && wordAt(pieces, verb + 1) === 'it';
  return isIt || (next?.is === 'word' && !THEM.test(next.text));
}

/** "Spent the rest of the day in the shed". */
const isSpent = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at) === 'spent' &&
  !pieces.slice(at, at + 8).some((piece) => piece.is === 'word' && piece.verb?.form === 'ing');

/** "… while Ron was in the shed". */
function isSomeoneThere(pieces: readonly Piece[], at: number): boolean {
  if (!/^(?:while|whilst|when)$/.test(wordAt(pieces, at)) || /^(?:they|it)$/.test(wordAt(pieces, at + 1)))
    return false;
  const person = /^(?:i|we)$/.test(wordAt(pieces, at + 1)) ? at + 2 : pastPerson(pieces, at + 1)?.to;
  return person !== undefined && /^(?:was|were|sat|hid)$/.test(wordAt(pieces, person));
}

/** "Had my dinner in the tunnel", "then a cuppa in the shed". */
function isMeal(pieces: readonly Piece[], at: number): boolean {
  const isLed = pieces[at - 1]?.is === 'break' || /^(?:and|then|so|but)$/.test(wordAt(pieces, at - 1));
  if (!isLed) return false;
  let noun = /^(?:i|we)$/.test(wordAt(pieces, at)) ? at + 1 : at;
  if (/^(?:had|ate|drank|took|stopped|break|broke)$/.test(wordAt(pieces, noun))) noun++;
  while (/^(?:my|our|us|me|a|an|the|for|quick|nice|well|earned|cup|mug|of|some)$/.test(wordAt(pieces, noun)))
    noun++;
  return MEAL.test(wordAt(pieces, noun)) || isBackFor(pieces, at);
}

/** "Then back in the shed for a brew". */
const isBackFor = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at) === 'back' &&
  [3, 4, 5].some(
    (n) =>
      /^(?:for|with)$/.test(wordAt(pieces, at + n)) &&
      [1, 2, 3].some((m) => MEAL.test(wordAt(pieces, at + n + m))),
  );
