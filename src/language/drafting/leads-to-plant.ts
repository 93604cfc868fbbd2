/** Whether a number or a container is told of a plant that stands close behind it. */
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces.js';

const AFTER_COUNT =
  /^(?:of|the|my|those|these|more|cuttings|cutting|basal|little|new|good|nice|big|small|extra|healthy|strong|plants|plant|plugs|pots|out|our|fresh|rooted|young|from|off|remaining|different|tiny|baby|poor|lovely|other|older|oldest|newer|newest|younger|youngest|earlier|for)$/;

/** Whether the clause, which ends at `end`, names a plant behind the piece with only such words between. */
export function leadsToPlant(pieces: readonly Piece[], at: number, end: number): boolean {
  for (let next = at + 1; next < Math.min(end, at + 6); next++) {
    const piece = pieces[next];
    if (!piece) return false;
    if (piece.is === 'plant') return true;
    if (piece.is === 'cutting' || piece.is === 'size' || piece.is === 'pots') continue;
    if (piece.is === 'word' && AFTER_COUNT.test(piece.text)) continue;
    return false;
  }
  return false;
}

/** "Two pots of these": whether the containers are of a plant that the clause names behind them. */
export function leadsToAnother(pieces: readonly Piece[], at: number, end: number): boolean {
  return wordAt(pieces, at + 1) === 'of' && leadsToPlant(pieces, at, end);
}
