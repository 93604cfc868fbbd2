/** A part of a sentence that only says how something came about. */
import { findHits } from './grammar/hits.js';
import { wordAt } from './grammar/rule.js';
import { rules } from './grammar/rules.js';
import type { Piece } from './pieces.js';

/** How a reason may begin: with whom or what it is about. */
const ABOUT =
  /^(?:only|just|never|i|i'd|i've|i'm|we|we'd|he|he'd|she|she'd|it|it's|they|they're|they've|that|that's|there|somebody|someone|nobody|turns|my|the|mum|mom|dad|himself|herself)\b/;

/** "…, they were only limp", "…, I'd picked up the wrong tray": words alone, that tell of nothing and put nothing else right. */
export function onlySaysWhy(part: readonly Piece[], line: string): boolean {
  return ABOUT.test(line) && tellsNothing(part, line);
}

/** Words alone, in which nothing is done, asked or put right. */
export function tellsNothing(part: readonly Piece[], line: string): boolean {
  return (
    part.every(
      (piece, at) =>
        piece.is === 'word' ||
        piece.is === 'medium' ||
        piece.is === 'place' ||
        // "The second two were only sulking": of which it is said.
        (piece.is === 'count' &&
          (piece.quantity.weak === true || /^(?:was|were|are|had)$/.test(wordAt(part, at + 1)))),
    ) &&
    !/\b(?:other|others|instead|meant(?! for| as| to)|mean|should|rather|what|which|when|where|how|why)\b/.test(
      line,
    ) &&
    findHits(rules, part).length === 0
  );
}
