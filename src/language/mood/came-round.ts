/** Plants that drooped and live: "wilted but perked up again", "keeled over, then recovered after a drink". */
import { isBoundary } from '../clauses/boundaries.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';

/** What may stand before it, that tells of no others. */
const LEADS =
  /^(?:and|but|then|though|they|they've|they're|they'll|should|will|it|it's|have|has|had|are|is|were|was|all|both|now|since|soon|seem|to|be|again|looking|look|looked|completely|fully|mostly|quickly|just|about)$/;
const RECOVERED =
  /^(?:(?:recover|recovered|recovering|revived|rallied)\b|(?:fine|ok|okay|alright|right|unharmed|unhurt|live|survive|mend|good as new|right as rain|none the worse)(?: (?:again|now|today|since|after|by|this|for)\b|$| -)|(?:perk|perked|perking|pick|picked|picking) up\b|(?:bounced|sprang|sprung|came|come|coming) (?:back|round|through)\b(?! (?:from|to|with|here|and)\b)|(?:pulled|pull) through\b)/;

/** Whether those just told of came round: behind a joint, before any others are named. */
export function cameRound(pieces: readonly Piece[], from: number): boolean {
  for (let at = from; at < pieces.length && !namesOthers(pieces[at]); at++)
    if (isBoundary(pieces[at]) && tellsRecovery(pieces, at)) return true;
  return false;
}

function tellsRecovery(pieces: readonly Piece[], joint: number): boolean {
  let at = joint;
  while (/^(?:break|when|count)$/.test(pieces[at]?.is ?? '') || LEADS.test(wordAt(pieces, at))) {
    if (namesOthers(pieces[at])) return false;
    at++;
  }
  const told = pieces.slice(at, at + 4).map((piece) => (piece.is === 'word' ? piece.text : '-'));
  return RECOVERED.test(told.join(' '));
}

/** What only those do that were taken for dead. */
const REVIVED =
  /^(?:(?:(?:came|come|coming) )?(?:back )?(?:to life|from the dead)\b|(?:resprouted|resurrected|alive|shooting|sprouted|sprouting|growing|regrowing)\b|turned out (?:alive|fine|to be alive)\b)/;

/** Whether those called dead or lost live: "one of the dead ones came back to life", "one back from the dead". */
export function livesAfterAll(pieces: readonly Piece[], to: number): boolean {
  if (wordsBefore(pieces, to, 4) === 'back from the dead') return true;
  let at = to;
  while (pieces[at]?.is === 'plant' || /^ones?$/.test(wordAt(pieces, at)) || LEADS.test(wordAt(pieces, at)))
    at++;
  const told = pieces.slice(at, at + 4).map((piece) => (piece.is === 'word' ? piece.text : '-'));
  return at > to && (RECOVERED.test(told.join(' ')) || REVIVED.test(told.join(' ')));
}

const wordsBefore = (pieces: readonly Piece[], to: number, many: number): string =>
  pieces
    .slice(Math.max(0, to - many), to)
    .map((_, n, all) => wordAt(pieces, to - all.length + n))
    .join(' ');

/** Another number or plant; "both" and "all" are those told of. */
const namesOthers = (piece: Piece | undefined): boolean =>
  piece?.is === 'plant' ||
  (piece?.is === 'count' && piece.quantity.whole !== 'all' && piece.quantity.both !== true);
