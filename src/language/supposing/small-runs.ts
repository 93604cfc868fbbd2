/** Runs of words in small letters where what was struck is told: "took 6 porch dime on Sunday", "8 eight bells tk". */
import { NEVER } from '../joined/new-names/no-names.js';
import { isFirm, isPerson, isTitled } from '../joined/new-names/people.js';
import { isName } from '../joined/new-names/unaccounted.js';
import { whole } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import type { Token } from '../row/tokens.js';
import type { Run } from './title-runs.js';

/** No name in small letters that a grower gives no hint of is longer. */
const LONGEST = 3;

/** They tell that something was struck. */
const STRUCK = whole`
  took|taken|tk|struck|strk|stuck|snipped|inserted|dibbed|did|done|popped|put|cuttings?|cutting|slips|snippets
`;

/** Behind them the name is over. */
const ENDS = whole`
  taken|tk|struck|stuck|inserted|done|in|into|on|onto|at|round|around|from|off|to|with|for|by|per|across|over|under|and|but|then|so|today|yesterday|this|last
  she's|he's|it's|they're|that's|thats|its|there's|i|we|they|she|he|it|a|an|my|same|each|all|both|cuttings?|tips?|slips?|shoots?|basals?|nodals?|semi-ripes?|softwoods?|heels?|are|is|were|was|have|had|while|before|after
  soft|semi|hard|basal|nodal|tip|heel|leaf|stem|root|roots|plugs?|plants?|tubers?|pots?|trays?
`;

const CUTTINGS =
  /^(?:cuttings?|slips?|tips?|shoots?|basals?|nodals?|snippets|trays?|pots?|flats?|batch|batches)$/;

/** What stands between a number and the name. */
const LEADS = /^(?:of|the|my|our|more)$/;

/** Each run that may be a name, the longest of those that begin together first; none where the note tells of no striking. */
export function smallRuns(tokens: readonly Token[], pieces: readonly Piece[]): readonly Run[] {
  if (!tokens.some(({ text }) => STRUCK.test(text))) return [];
  const runs: Run[] = [];
  for (const start of startsOf(tokens, pieces)) {
    let from = start;
    while (LEADS.test(tokens[from]?.text ?? '')) from++;
    let to = from;
    while (to - from < LONGEST && isWithin(tokens, pieces, to)) to++;
    for (; to - from >= 2; to--)
      if (isNameLike(tokens, pieces, from, to)) runs.push({ from, to, isSource: true });
  }
  return runs;
}

/** Behind a number or pots, behind "cuttings of" or "tips off", and where a note opens. */
function startsOf(tokens: readonly Token[], pieces: readonly Piece[]): readonly number[] {
  const behind = pieces.flatMap((piece) =>
    piece.is === 'pots' || (piece.is === 'count' && piece.quantity.value !== undefined) ? [piece.to] : [],
  );
  const of = tokens.flatMap(({ text }, at) =>
    /^(?:of|off|from)$/.test(text) && CUTTINGS.test(tokens[at - 1]?.text ?? '') ? [at + 1] : [],
  );
  return [...behind, ...of, 0];
}

function isWithin(tokens: readonly Token[], pieces: readonly Piece[], at: number): boolean {
  const token = tokens[at];
  const ofDay = pieces.some((piece) => piece.is === 'when' && piece.from <= at && piece.to > at);
  return token?.is === 'word' && !token.capital && !ENDS.test(token.text) && !ofDay;
}

function isNameLike(tokens: readonly Token[], pieces: readonly Piece[], from: number, to: number): boolean {
  const words = tokens.slice(from, to).map(({ text }) => text);
  const next = tokens[to];
  const isOver =
    next === undefined ||
    next.is !== 'word' ||
    ENDS.test(next.text) ||
    pieces.some((piece) => piece.from === to && /^(?:when|break|pots|size)$/.test(piece.is));
  return (
    isOver &&
    !words.some((word) => NEVER.has(word) || STRUCK.test(word)) &&
    isName(tokens, from, to) &&
    !isPerson(words) &&
    !isTitled(words) &&
    !isFirm(words.slice(1)) &&
    !pieces.some(
      (piece) =>
        piece.from < to && piece.to > from && piece.is === 'plant' && (piece.known || piece.from === from),
    )
  );
}
