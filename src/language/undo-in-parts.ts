/** Undoes in parts: some take back, the others only say why. */
import { findHits } from './grammar/rule.js';
import { rules } from './grammar/rules.js';
import { isUndo, nounTakenBack, WHY } from './grammar/undo.js';
import type { Piece } from './pieces.js';
import { lineOf } from './sentences.js';
import type { Utterance } from './utterance.js';

/**
 * How many entries parts that undo, and others that only say why, take back ("whoops, wrong one, take it back" one); each
 * that names its entry takes back another. 0 where they say anything else.
 */
export function undosInParts(pieces: readonly Piece[], utterance: Utterance): number {
  const parts: Piece[][] = [[]];
  for (const piece of pieces) {
    if (piece.is === 'break') parts.push([]);
    else parts.at(-1)?.push(piece);
  }
  const said = parts.filter((part) => part.length > 0);
  if (said.length < 2 || said.length > 4) return 0;
  const lines = said.map((part) => lineOf(part, utterance));
  const undoes = lines.filter((line) => isUndo(line));
  const named = undoes.filter((line) => nounTakenBack(line) || /\bplantname\b/.test(line));
  return undoes.length > 0 &&
    lines.every(
      (line, n) =>
        isUndo(line) ||
        WHY.test(line) ||
        onlySaysWhy(said[n] ?? [], line.replace(/^(?:actually|no|oops|sorry) /, '')),
    )
    ? Math.max(1, named.length)
    : 0;
}

/** "…, they were only limp", "…, I'd picked up the wrong tray": words alone, that tell of nothing and put nothing else right. */
function onlySaysWhy(part: readonly Piece[], line: string): boolean {
  return (
    part.every(({ is }) => is === 'word' || is === 'medium' || is === 'place') &&
    /^(?:only|just|never|i|i'd|i've|i'm|we|we'd|it|it's|they|they're|that|that's|there)\b/.test(line) &&
    !/\b(?:other|others|instead|meant|mean|should|rather|what|which|when|where|how|why)\b/.test(line) &&
    (/^(?:only|just)\b/.test(line) || findHits(rules, part).length === 0)
  );
}
