/** "Gone down the polytunnel", "took them up the greenhouse": on the way to it, without the "to" that others say. */
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';

const ARTICLE = /^(?:the|my|our)$/;
const CARRY =
  /^(?:go|take|move|shift|carry|bring|cart|lug|haul|put|pop|send|shove|bung|trundle|wheel|run|get|relocate|transfer|drag|hump)$/;
/** Those carried, right before the way they went. */
const CARRIED = /^(?:them|those|these|it|lot|everything|rest|others|ones|cuttings|plants|trays?|pots)$/;
const STAND = /^(?:be|stand|sit|live)$/;
/** How far back the carrying may stand. */
const REACH = 12;

/** The row with a "to" between such a way and its place, or an "in" where something stands there ("is down the polytunnel now"). */
export function withTowards(pieces: readonly Piece[]): readonly Piece[] {
  if (!pieces.some(({ is }) => is === 'place')) return pieces;
  return pieces.flatMap((piece, at) => {
    const way = isWay(pieces, at) ? meantAt(pieces, at) : undefined;
    if (way !== undefined) return [piece, { is: 'word', text: way, from: piece.to, to: piece.to }];
    const before = ARTICLE.test(wordAt(pieces, at - 1)) ? at - 2 : at - 1;
    const prep = piece.is === 'place' && isWay(pieces, before) ? meantAt(pieces, before) : undefined;
    return [piece.is === 'place' && prep !== undefined ? { ...piece, prep } : piece];
  });
}

const isWay = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:down|up)$/.test(wordAt(pieces, at)) &&
  pieces[ARTICLE.test(wordAt(pieces, at + 1)) ? at + 2 : at + 1]?.is === 'place';

/** What the way leaves unsaid; undefined where nothing was carried and nothing stands there. */
function meantAt(pieces: readonly Piece[], at: number): 'to' | 'in' | undefined {
  const before = pieces[at - 1];
  if (before?.is === 'word' && /^(?:gone|went)$/.test(before.text)) return 'to';
  if (before?.is === 'word' && STAND.test(before.verb?.lemma ?? '')) return 'in';
  if (before?.is === 'break' || (before?.is === 'word' && !CARRIED.test(before.text))) return undefined;
  for (let back = at - 1; back >= Math.max(0, at - REACH); back--) {
    const piece = pieces[back];
    if (piece?.is === 'break' && piece.hard) return undefined;
    if (piece?.is !== 'word' || piece.verb === undefined || /^(?:be|have)$/.test(piece.verb.lemma)) continue;
    return CARRY.test(piece.verb.lemma) ? 'to' : undefined;
  }
  return undefined;
}
