/** What was fetched and paid for: "the council picked up 50, paid cash", "Doreen collected six for £12". */
import type { Rule } from '../grammar/rule.js';
import { wordAt } from '../grammar/rule.js';
import { opening } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';

/** Behind these nothing is paid. */
const NOT =
  /^(?:not|never|nobody|hasn't|haven't|hadn't|isn't|wasn't|be|get|half|put|part|who|i|we|i've|we've)$/;
/** "Paid me back for lunch", "paid for her tea", "paid a visit": for something else. */
const FOR_ELSE = /^(?:back|a|off|to|attention|no|nothing|less)$/;

/** Whether plants that somebody fetched were sold to them, by what stands in [from, to). */
export function isPaidFor(
  { kind, how, sense }: Rule,
  pieces: readonly Piece[],
  from: number,
  to: number,
): boolean {
  if (kind !== 'dispatch' || !(how === undefined || (how === 'given' && sense === 'recipient first')))
    return false;
  for (let at = from; at < to; at++) {
    if (isForMoney(pieces, at)) return true;
    if (wordAt(pieces, at) !== 'paid' || NOT.test(wordAt(pieces, at - 1))) continue;
    const whom = /^(?:me|us)$/.test(wordAt(pieces, at + 1)) ? at + 2 : at + 1;
    if (FOR_ELSE.test(wordAt(pieces, whom))) continue;
    if (wordAt(pieces, whom) !== 'for' || isThem(pieces, whom + 1)) return true;
  }
  return false;
}

/** "For nothing", "no charge", "as a little thank you": what left was given, whatever the words that carried it. */
export const isForNothing = (
  { kind, how }: Rule,
  pieces: readonly Piece[],
  from: number,
  to: number,
): boolean =>
  kind === 'dispatch' &&
  how === undefined &&
  pieces.slice(from, to).some(
    (_, n) =>
      FREE.test([0, 1, 2, 3, 4].map((next) => wordAt(pieces, from + n + next)).join(' ')) &&
      // "All that work for nothing", "not for nothing".
      !/^(?:work|effort|time|bother|trouble|fuss|that|not)$/.test(wordAt(pieces, from + n - 1)),
  );

const FREE = opening`
  for (nothing|nowt|free)|gratis|free of charge|(no|without) charge
  (as|for) (a|an|her|his|their) (little|small|wee|belated|birthday|nice)? (thank you|thankyou|thank-you|thanks|present|gift)
`;

/** "£12", and no "no 9". */
const isPrice = (piece: Piece | undefined): boolean => piece?.is === 'money' && !piece.numbers;

/** "For £12", "for cash", "cash in hand". */
const isForMoney = (pieces: readonly Piece[], at: number): boolean =>
  (/^(?:for|at)$/.test(wordAt(pieces, at)) &&
    (isPrice(pieces[at + 1]) || wordAt(pieces, at + 1) === 'cash')) ||
  /^cash in hand$/.test([0, 1, 2].map((n) => wordAt(pieces, at + n)).join(' '));

/** "Paid for", "paid for them", "paid for the lot". */
function isThem(pieces: readonly Piece[], at: number): boolean {
  const piece = pieces[at];
  return (
    piece === undefined ||
    piece.is === 'break' ||
    piece.is === 'when' ||
    (piece.is === 'count' && piece.quantity.whole !== undefined) ||
    /^(?:them|those|these|already|too|and|in|up|by|now)$/.test(wordAt(pieces, at))
  );
}
