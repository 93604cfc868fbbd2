/** A part of a sentence that only says how something came about. */
import { findHits } from '../grammar/hits.js';
import { wordAt } from '../grammar/rule.js';
import { rules } from '../grammar/rules.js';
import type { Piece } from '../pieces/pieces.js';

/** How a reason may begin: with whom or what it is about. */
const ABOUT =
  /^(?:(?:sure|cos|because|as|but|since|turns out) )?(?:only|just|never|i|i'd|i've|i'm|we|we'd|he|he'd|she|she'd|it|it's|they|they're|they've|that|that's|there|somebody|someone|nobody|turns|my|the|mum|mom|dad|himself|herself)\b/;

/** "They're staying where they were": asks for nothing. */
const WHERE_THEY_WERE = /\bwhere (?:they|it|she|he|we) (?:were|was|are|is|had)\b/g;

/** "Mum gave them back", "Eileen has returned the violets": what went out is here again, which says why an entry is taken back. */
export function tellsReturn(part: readonly Piece[], line: string): boolean {
  return (
    part.every(({ is }) => is === 'word' || is === 'plant') &&
    (/\b(?:brought|bringing|gave|given|giving|sent|sending|handed|handing|took|taken|dropped|carried) (?:\S+ ){1,4}(?:straight |str8 |right )?back\b/.test(
      line,
    ) ||
      /\b(?:has|have|had|he's|she's|they've|he|she|they|plantname|mum|mom|dad) returned (?:it|them|those|the plantname|all)\b/.test(
        line,
      ))
  );
}

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
      line.replace(WHERE_THEY_WERE, ''),
    ) &&
    findHits(rules, part).length === 0
  );
}
