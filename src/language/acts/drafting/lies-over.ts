/** What hangs, lies or happened beside another plant, told behind a deed: "took six, new lamp hung over the Tallow Bell". */
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';

const BESIDE =
  /^(?:over|under|underneath|above|below|beneath|beside|behind|near|nearer|next|against|alongside)$/;
const SWEPT = /^(?:blown|blew|fallen|fell|come|came|torn|ripped|slid|slipped)$/;
/** Words that lead to a place, where cuttings may have been taken from what stands there. */
const TO_PLACE = /^(?:over|down|up|in|out|off|from|of|also|and|then|plus|but|both|all|the|my|each)$/;

/**
 * Whether a thing is told of from a mark on that only stands somewhere by a plant: words alone up to "over the
 * <plant>", one at least, and the first no way to a place.
 */
export function liesByPlant(pieces: readonly Piece[], from: number): boolean {
  if (pieces[from - 1]?.is !== 'break' || TO_PLACE.test(wordAt(pieces, from))) return false;
  let at = from;
  while (pieces[at]?.is === 'word' || pieces[at]?.is === 'medium') at++;
  if (pieces[at]?.is !== 'plant') return false;
  let lead = at - 1;
  while (/^(?:the|my|our|those|to)$/.test(wordAt(pieces, lead))) lead--;
  const isSwept = wordAt(pieces, lead) === 'off' && SWEPT.test(wordAt(pieces, lead - 1));
  return lead > from && (BESIDE.test(wordAt(pieces, lead)) || isSwept);
}
