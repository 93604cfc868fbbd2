/**
 * What is remembered of another time or another garden: "the winter the boiler packed in we lost the lot", "when we lived
 * in Devon", "in my old garden".
 */
import type { Clause } from '../clauses/clauses.js';
import { wordAt } from '../grammar/rule.js';
import { anyOf, opening } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';

/** Whether a clause tells of one, for the sake of this year or of nothing. */
export function isRecalled(pieces: readonly Piece[], clause: Clause): boolean {
  return (
    isOfSeason(pieces, clause) ||
    isThisTimeLastYear(pieces, clause) ||
    isOfOtherGarden(pieces, clause) ||
    isOfThoseThen(pieces, clause) ||
    isThenOfNone(pieces, clause) ||
    isOnce(pieces, clause)
  );
}

/** "The ones that died last year were in the shade", "the Salt Harrier I lost last winter was the old one": told of to compare. */
function isOfThoseThen(pieces: readonly Piece[], { from, to, hit }: Clause): boolean {
  if (!hit || !isThen(pieces[hit.to])) return false;
  let at = hit.from - 1;
  if (!/^(?:that|which|i|we)$/.test(wordAt(pieces, at))) return false;
  while (/^(?:that|which|i|we)$/.test(wordAt(pieces, at))) at--;
  const own = pieces.slice(from, to);
  if (own.some(({ is }) => is === 'count')) return false;
  // Of a plant by its name only where the sentence says more of it.
  if (pieces[at]?.is === 'plant')
    return (
      wordAt(pieces, at - 1) === 'the' &&
      /^(?:was|were|did|had|came|looked)$/.test(wordAt(pieces, hit.to + 1))
    );
  return /^(?:ones|lot|cuttings|plants)$/.test(wordAt(pieces, at)) && !own.some(({ is }) => is === 'plant');
}

/** "Last year I took twenty and lost the lot": told to compare with this year's, of no plant by its name. */
function isThenOfNone(pieces: readonly Piece[], { to, hit }: Clause): boolean {
  if (!hit || pieces.slice(hit.from, to).some(({ is }) => is === 'plant')) return false;
  const mark = pieces.slice(0, hit.from).findLastIndex(({ is }) => is === 'break');
  const opens = mark + (/^(?:and|but|though|whereas|while)$/.test(wordAt(pieces, mark + 1)) ? 2 : 1);
  return (
    isThen(pieces[opens]) &&
    /^(?:i|we)$/.test(wordAt(pieces, opens + 1)) &&
    !pieces.slice(mark, hit.from).some(({ is }) => is === 'plant')
  );
}

const isThen = (piece: Piece | undefined): boolean =>
  piece?.is === 'when' &&
  /^(?:last (?:year|season|spring|summer|autumn|winter)|(?:in )?\d{4}|the year before)$/i.test(
    piece.when.words,
  );

/** A season told by what happened in it, long ago. */
function isOfSeason(pieces: readonly Piece[], { from, hit }: Clause): boolean {
  const season = pieces[from];
  return (
    season?.is === 'when' &&
    hit !== undefined &&
    hit.from > from + 2 &&
    /^the (?:year|winter|spring|summer|autumn|fall|season)$/i.test(season.when.words) &&
    /^(?:the|my|our|her|his|we|i|it|that|when|mum|dad)$/.test(wordAt(pieces, from + 1))
  );
}

/** "This time last year they had all rooted", "last spring they had all rotted by now". */
function isThisTimeLastYear(pieces: readonly Piece[], { from, to, hit }: Clause): boolean {
  const day = pieces[from];
  const before = pieces.slice(from, hit?.to ?? from);
  const own = pieces.slice(from, to);
  return (
    day?.is === 'when' &&
    (/^(?:by )?this time last year$/i.test(day.when.words) ||
      (/^last (?:year|spring|summer|autumn|winter|season)$/i.test(day.when.words) &&
        /^(?:at|by|around)$/.test(wordAt(own, 1)) &&
        /^(?:this|the same)\b/.test(own[2]?.is === 'when' ? own[2].when.words : wordAt(own, 2))) ||
      (/^last\b/i.test(day.when.words) &&
        own.some((_, at) => wordAt(own, at) === 'by' && wordAt(own, at + 1) === 'now') &&
        before.some((piece) => piece.is === 'word' && /^(?:had|were|was)$/.test(piece.text))))
  );
}

/** "Last time I planted out this early I lost the lot", "once lost 50 to a mouse", "years ago I sold these". */
function isOnce(pieces: readonly Piece[], { from, hit }: Clause): boolean {
  if (!hit || /^(?:stock|receive)$/.test(hit.rule.kind)) return false;
  const told = `${words(pieces.slice(0, hit.from), 0)} `;
  return (
    /^(?:the )?(?:last|first|only|next|one) time (?:i|we|mum|dad|he|she) (?!looked|checked|counted|saw)/.test(
      told,
    ) ||
    (hit.rule.kind !== 'check' &&
      /^(?:i |we |i've |we've )?once$/.test(words(pieces.slice(from, hit.from), 0))) ||
    pieces
      .slice(from, hit.from)
      .some((piece) => piece.is === 'when' && /^(?:many |some )?years (?:ago|back)$/i.test(piece.when.words))
  );
}

/** Where the grower gardened or worked before. */
const FORMER = opening`
  ((the|my|our) )?(old|last|previous|former|first) ${anyOf`
    garden|house|place|flat|home|allotment|plot|job|nursery|farm|school
  `}
  the (good )?old days|days gone by|my (youth|childhood|student days|training)
`;
/** "A child", "apprentice". */
const YOUNG = anyOf`child|kid|boy|girl|lad|lass|student|apprentice|trainee`;
/** "When we lived in Devon", "when I worked at the nursery", "as a child". */
const LIFE = opening`
  (when|while|whilst|where) (\w+ ){1,4}${anyOf`
    lived|grew up
    (was|were) (still )?(alive|younger|small|little|kids|children|an? (${YOUNG}|nipper))
  `}
  (when|while|whilst|where) (i|we) (\w+ ){0,2}${anyOf`
    (worked|trained|studied) (at|for|in|with)|rented|at (school|college|university|uni)
  `}
  as (an? )?${YOUNG}|growing up
`;

/** Told of it as a time or, before the act, as a place; no "took six from the plant in my old garden". */
function isOfOtherGarden(pieces: readonly Piece[], { from, to, hit }: Clause): boolean {
  const named = pieces.slice(from, to).some(({ is }) => is === 'plant');
  for (let at = from; at < to; at++) {
    const word = wordAt(pieces, at);
    const isPlace = pieces[at]?.is === 'place' || word === 'in' || word === 'at';
    if (isPlace && (!named || at < (hit?.from ?? 0)) && FORMER.test(words(pieces, word === '' ? at : at + 1)))
      return true;
    if (/^(?:when|while|whilst|where|as|growing)$/.test(word) && LIFE.test(words(pieces, at))) return true;
  }
  return false;
}

/** The next few words; a place keeps its own. */
const words = (pieces: readonly Piece[], from: number): string =>
  pieces
    .slice(from, from + 8)
    .map((piece) => (piece.is === 'word' ? piece.text : piece.is === 'place' ? piece.place : '-'))
    .join(' ');
