/** Whether a number or a container is told of a plant that stands close behind it. */
import { wordAt } from '../../grammar/rule.js';
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';

const AFTER_COUNT = whole`
  of|on|from|off|out|for|the|my|our|those|these|more|other|remaining|different|extra
  cuttings?|plants?|plugs|pots|basal|rooted|fresh|strong|healthy|good|nice|lovely|poor
  little|small|tiny|big|baby|young|younger|youngest|new|newer|newest|older|oldest|earlier
`;

/** Whether the clause, which ends at `end`, names a plant behind the piece with only such words between. */
export function leadsToPlant(pieces: readonly Piece[], at: number, end: number): boolean {
  for (let next = at + 1; next < Math.min(end, at + 6); next++) {
    const piece = pieces[next];
    if (!piece) return false;
    if (piece.is === 'plant') return true;
    if (piece.is === 'cutting' || piece.is === 'size' || piece.is === 'pots') continue;
    if (piece.is === 'word' && AFTER_COUNT.test(piece.text)) continue;
    // "Six of a new dahlia": the "of" went with the number.
    if (next === at + 1 && endsWithOf(pieces[at]) && /^an?$/.test(wordAt(pieces, next))) continue;
    // "Two off a fuchsia".
    if (/^(?:of|off|from) an?$/.test(`${wordAt(pieces, next - 1)} ${wordAt(pieces, next)}`)) continue;
    return false;
  }
  return false;
}

/** "6 of": a number of more than one word. */
export const endsWithOf = (piece: Piece | undefined): boolean =>
  piece?.is === 'count' && piece.quantity.value !== undefined && piece.to > piece.from + 1;

/** "Two pots of these": whether the containers are of a plant that the clause names behind them. */
export function leadsToAnother(pieces: readonly Piece[], at: number, end: number): boolean {
  return wordAt(pieces, at + 1) === 'of' && leadsToPlant(pieces, at, end);
}
