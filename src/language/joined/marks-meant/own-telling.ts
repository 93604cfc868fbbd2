/** What a plant, a place or a number tells of itself: "Tallow Bell just watered", "5 rooted", "the rest didn't". */
import { wordAt } from '../../grammar/rule.js';
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import { hasObject } from './deeds.js';

export const OF_THEM = whole`the|my|our|all|both|those|these|of|old`;
/** Of these, what may come first. */
export const OPENS = whole`the|my|our|all|both|those|these`;
export const HAVE = whole`have|has|are|were|was|is|isn't|aren't|haven't|hasn't|didn't|look`;
const HOW = whole`just|still|now|all|both|only|also|not|finally|already|newly|well`;
/** What is said of a plant, and never of what was done to another: "Tallow Bell didn't need it". */
const FINITE = whole`
  didn't|hasn't|haven't|wasn't|weren't|isn't|aren't|doesn't|don't|is|are|was|were|has|have|looks|look|seems|needs|nothing|none
`;
/** How plants are, in a word that is no verb. */
export const STATE = whole`dead|gone|up|out|alive|ok|fine|soft|mush|dry|mouldy|rotten|blind|left`;
export const STATE_OF_NUMBER = whole`dead|gone|up|alive|rot|mould|botrytis|wilt|failures|fails`;
const DOING = whole`thinking|looking|hanging|sulking|struggling|doing|coming`;
/** Behind a participle, it only tells which: "12 rooted cuttings". */
const THINGS = whole`cuttings?|plants?|ones?|plugs?|tubers?|liners?|tips|tray|trays|pot|pots|of|from|stock|young`;

export const isParticiple = (piece: Piece | undefined): boolean =>
  piece?.is === 'word' &&
  piece.verb?.form === 'past' &&
  !/^(?:be|have|do|think|say|mean|get|want)$/.test(piece.verb.lemma);

/** Past the plant, the place or the number of it that something may be told of; `from` where none stands. */
function pastSubject(row: readonly Piece[], from: number): number {
  let at = from;
  while (OF_THEM.test(wordAt(row, at)) || row[at]?.is === 'count') at++;
  const piece = row[at];
  if (piece?.is === 'plant' || (piece?.is === 'place' && piece.prep === undefined)) return at + 1;
  return from;
}

/** A deed told of what stands before it, and of nothing behind it that tells nothing of its own. */
export function isDoneToIt(row: readonly Piece[], at: number): boolean {
  if (!isParticiple(row[at])) return false;
  return (
    !hasObject(row.slice(at)) ||
    tellsOwn(row, at + 1) !== undefined ||
    (row[at + 1]?.is === 'count' && isStateOfNumber(row, at + 2))
  );
}

/** "Out to the standing ground": where it was taken, without the deed. */
const isTakenThere = (row: readonly Piece[], at: number): boolean =>
  /^(?:out|over|across|up|down|back|outside|off)$/.test(wordAt(row, at)) &&
  (/^(?:to|onto|into|in|of)$/.test(wordAt(row, at + 1)) || row[at + 1]?.is === 'place');

/** How a subject with a telling of its own that begins there tells it. */
export function tellsOwn(row: readonly Piece[], from: number): 'deed' | 'state' | 'there' | undefined {
  let at = pastSubject(row, from);
  if (at === from) return undefined;
  if (FINITE.test(wordAt(row, at))) return 'state';
  if (isTakenThere(row, at)) return 'there';
  const number = row[at];
  if (number?.is === 'count')
    return isStateOfNumber(row, at + 1) ||
      (number.quantity.whole !== undefined &&
        (isDoneToIt(row, at + 1) || /^(?:them|of)$/.test(wordAt(row, at + 1))))
      ? 'state'
      : undefined;
  const how = wordAt(row, at);
  while (HOW.test(wordAt(row, at))) at++;
  if (isDoneToIt(row, at)) return /^(?:not|still)$/.test(how) ? 'state' : 'deed';
  return FINITE.test(wordAt(row, at)) ? 'state' : undefined;
}

/** "Rooted", "dead", "12 dumped": what became of a number, which the word behind does not take up. */
export function isStateOfNumber(row: readonly Piece[], from: number): boolean {
  // "30 blind ones binned".
  const ones = [from, from + 1].find((n) => /^(?:ones|cuttings|plants)$/.test(wordAt(row, n)));
  const at = ones === undefined || !isDoneToIt(row, ones + 1) ? from : ones + 1;
  const next = row[at + 1];
  if (
    next?.is === 'plant' ||
    next?.is === 'cutting' ||
    next?.is === 'size' ||
    THINGS.test(wordAt(row, at + 1))
  )
    return next?.is === 'plant' && tellsOwn(row, at + 1) !== undefined;
  return (
    STATE_OF_NUMBER.test(wordAt(row, at)) ||
    /^(?:didn't|haven't|hasn't|aren't|weren't)$/.test(wordAt(row, at)) ||
    (wordAt(row, at) === 'out' && wordAt(row, at + 1) === 'with') ||
    (DOING.test(wordAt(row, at)) && /^(?:about|like|along|on|a|well|ok)$/.test(wordAt(row, at + 1))) ||
    isDoneToIt(row, at)
  );
}
