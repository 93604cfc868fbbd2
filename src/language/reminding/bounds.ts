/** Where a reminder begins and ends in its sentence. */
import type { FoundRemind } from '../grammar/remind.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces.js';

/** Where the clause of the words that ask for it begins. */
export function startOf({ rule, from, to }: FoundRemind, pieces: readonly Piece[]): number {
  // "Sow the sweet peas on Saturday - remind me": of what stands before.
  if (!rule.beforeVerb && pieces.slice(to).every(({ is }) => is === 'break')) return 0;
  let start = from;
  while (
    start > 0 &&
    pieces[start - 1]?.is !== 'break' &&
    !/^(?:and|but|then|so|or)$/.test(wordAt(pieces, start - 1))
  )
    start--;
  return start;
}

/** Where a clause of things done begins behind the reminder. */
export function nextDoneClause(pieces: readonly Piece[], from: number): number {
  for (let at = from; at < pieces.length; at++) {
    const piece = pieces[at];
    const boundary =
      piece?.is === 'break' || (piece?.is === 'word' && /^(?:and|but|then|so|because|as)$/.test(piece.text));
    if (!boundary) continue;
    for (let next = at + 1; next < Math.min(at + 5, pieces.length); next++) {
      const word = pieces[next];
      if (word?.is === 'break') break;
      if (
        word?.is === 'word' &&
        word.verb?.form === 'past' &&
        !/^(?:was|were|had|been|are|is|set|put|cut|has|have|rooted|potted|given|left)$/.test(word.text) &&
        !/^(?:be|get|have)$/.test(wordAt(pieces, next - 1))
      )
        return at;
      if (word?.is === 'word' && /^(?:be|been|get|getting|will|to)$/.test(word.text)) break;
    }
  }
  return pieces.length;
}
