/** The words around counted containers and what they hold. */
import { wordAt } from '../../grammar/rule.js';
import type { Piece, PieceOf } from '../../pieces/pieces.js';

export const HOLDS = /^(?:with|of|holding|has|have|had|contains|containing|at)$/;
/** Words between a container and what it holds, and behind that. */
export const BETWEEN = /^(?:only|just|about|cuttings?|each|in|it|them|apiece|every|one|of)$/;
export const MORE =
  /^(?:one|pot|pots|tray|trays|jar|jars|of|them|which|that|is|was|are|were|being|it's|only|just)$/;

export const valueAt = (pieces: readonly Piece[], at: number): number | undefined => {
  const piece = pieces[at];
  return piece?.is === 'count' && piece.quantity.outOf === undefined ? piece.quantity.value : undefined;
};

export const counted = (value: number | undefined, { from, to }: Piece): PieceOf<'count'> => ({
  is: 'count',
  quantity: value === undefined ? { vague: true } : { value },
  from,
  to,
});

/** Past the marks and the words that join one container to the next. */
export function pastJoint(pieces: readonly Piece[], at: number): number {
  let next = at;
  while (
    (pieces[next]?.is === 'break' && !(pieces[next] as PieceOf<'break'>).hard) ||
    /^(?:and|then|plus|but)$/.test(wordAt(pieces, next))
  )
    next++;
  return next;
}

/** Nothing behind says what became of them ("two of 6 rooted"). */
export function endsThere(pieces: readonly Piece[], at: number): boolean {
  const piece = pieces[at];
  return (
    piece?.is !== 'word' ||
    (piece.verb === undefined && /^(?:and|then|plus|in|into|on|at|all|under|for|today|now)$/.test(piece.text))
  );
}

/** Past "full", "only half full", "not quite full", "three quarters full". */
export function pastFull(pieces: readonly Piece[], at: number): number {
  for (let next = at; next < at + 4; next++) {
    if (/^(?:full|filled)$/.test(wordAt(pieces, next))) return next + 1;
    const piece = pieces[next];
    if (
      piece?.is !== 'count' &&
      !/^(?:only|just|not|quite|half|nearly|almost|part|partly|about)$/.test(wordAt(pieces, next))
    )
      return at;
  }
  return at;
}

/** Where the break stands behind what the containers are of, or the word that excepts one of them. */
export function breakBehind(pieces: readonly Piece[], from: number): number | undefined {
  for (let at = from; at < Math.min(pieces.length, from + 6); at++) {
    const piece = pieces[at];
    if (piece?.is === 'break') return piece.hard ? undefined : at;
    if (/^(?:bar|except|but|and)$/.test(wordAt(pieces, at))) return at;
    if (piece?.is === 'word' && !/^(?:of|the|my|cuttings?|those|in|a|per|each|with)$/.test(piece.text))
      return undefined;
    if (piece?.is === 'count') return undefined;
  }
  return undefined;
}

export function pastBehind(pieces: readonly Piece[], at: number): number {
  let next = at;
  while (
    BETWEEN.test(wordAt(pieces, next)) &&
    pieces[next + 1]?.is !== 'place' &&
    pieces[next + 1]?.is !== 'medium'
  )
    next++;
  return next;
}
