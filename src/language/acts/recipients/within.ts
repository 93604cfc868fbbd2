/** Recipients that stand within the words of the act: "sent Sue home with two", "order for Hexley gone". */
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';

/** Past the "for" of an order. */
export const withinStart = (pieces: readonly Piece[], from: number): number =>
  wordAt(pieces, from) === 'for' ? from + 1 : from;

/** "Sent Sue home with two", "made Sue a present of two": she, and not where to. */
export function withinEnd(pieces: readonly Piece[], to: number): number {
  let end = to;
  while (/^(?:home|off|away|back|up|a|the|present|gift)$/.test(wordAt(pieces, end - 1))) end--;
  return end;
}
