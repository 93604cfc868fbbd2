/** Plants that are there already, and are taken off, out or into somewhere: "took all the Salt Harrier into the greenhouse". */
import type { Piece } from '../../pieces/pieces.js';
import { OUTSIDE } from '../move/to-place.js';
import { endsAt, nextPlant, wordAt } from '../rule.js';
import { isWhole } from '../stand-ins.js';
import { CUTTINGS } from '../taken-away.js';

/** A place straight behind, which something was taken off, or into. */
export function placeBehind(pieces: readonly Piece[], from: number, prep: 'off' | 'into' = 'off'): boolean {
  let at = from;
  while (pieces[at]?.is === 'word') at++;
  const piece = pieces[at];
  return at <= from + 2 && piece?.is === 'place' && piece.prep === prep;
}

/** Plants that are there already, by an article or "all", straight before "into" a place. */
export function isCarriedInto(pieces: readonly Piece[], to: number): boolean {
  const plant = nextPlant(pieces, to);
  if (plant < to || plant > to + 4) return false;
  const before = pieces.slice(to, plant);
  return (
    wordAt(pieces, plant + 1) === 'into' &&
    placeBehind(pieces, plant + 1, 'into') &&
    before.every((piece) => piece.is === 'count' || (piece.is === 'word' && !CUTTINGS.test(piece.text))) &&
    before.some(
      (piece) => isWhole(piece) || (piece.is === 'word' && /^(?:the|my|our|those|these)$/.test(piece.text)),
    )
  );
}

/** All there is, or the others, no plant named, and a place that it was taken to or from; nothing was taken off anything. */
export function isAllOfPlace(pieces: readonly Piece[], to: number): boolean {
  const all = pieces[to];
  if (all?.is !== 'count' || (all.quantity.whole === undefined && !all.quantity.besides)) return false;
  const end = pieces.findIndex((piece, at) => at > to && piece.is === 'break');
  const own = pieces.slice(to + 1, end < 0 ? undefined : end);
  return (
    own.some(({ is }) => is === 'place') &&
    own.every(
      (piece) =>
        !/^(?:plant|cutting|pots)$/.test(piece.is) && !(piece.is === 'word' && CUTTINGS.test(piece.text)),
    )
  );
}

/** Plants, and where they were carried: "out for", "along to", "home again", "indoors", "into work". */
export function isCarriedAlong(pieces: readonly Piece[], to: number): boolean {
  let plant = to;
  while (pieces[plant]?.is === 'count' || pieces[plant]?.is === 'word') plant++;
  if (pieces[plant]?.is !== 'plant' || plant > to + 4) return false;
  if (pieces.slice(to, plant + 2).some((piece) => piece.is === 'word' && CUTTINGS.test(piece.text)))
    return false;
  const [whither, next] = [wordAt(pieces, plant + 1), wordAt(pieces, plant + 2)];
  return (
    (/^(?:out|along|over|round|home|away|back|across)$/.test(whither) &&
      /^(?:for|to|with|but|again|and)$/.test(next)) ||
    // "Took six Salt Harrier outside" may tell where they were put.
    (isThere(pieces[plant + 1]) &&
      (next === 'for' || endsAt(pieces, plant + 2)) &&
      !pieces.slice(to, plant).some(({ is }) => is === 'count')) ||
    // "Took the Salt Harrier out of the sun".
    (whither === 'out' && next === 'of' && !pieces.slice(to, plant).some(({ is }) => is === 'count')) ||
    (/^(?:home|in|out|away|back)$/.test(whither) && endsAt(pieces, plant + 2)) ||
    (/^(?:to|into)$/.test(whither) && /^(?:work|town|college|uni|hospital)$/.test(next))
  );
}

/** "Outside", "indoors": heard as a place or a word. */
const isThere = (piece: Piece | undefined): boolean =>
  (piece?.is === 'word' && OUTSIDE.test(piece.text)) || (piece?.is === 'place' && OUTSIDE.test(piece.place));
