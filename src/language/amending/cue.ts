/** The words that announce a new value: "should be", "I meant", "make that". */
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';
import { isSettable } from './settable.js';

/** What announces the value better than a word before it. */
const LATER = /^(?:be|been|to|meant|actually)$/;
const LATER_OR_WAS = /^(?:be|been|to|meant|actually|was|were|read)$/;

/** "It was six that went to the porch": the "to" belongs to what was done. */
const isOfDeed = (pieces: readonly Piece[], from: number, to: number): boolean =>
  from >= 0 && relativeAt(pieces.slice(from, to)) >= 0;

/** Where what is told of a value begins: the "that" of "six that I gave her"; -1 where nothing is. */
export const relativeAt = (pieces: readonly Piece[]): number =>
  pieces.findIndex(
    (_, at) =>
      at > 0 && /^(?:that|which|who)$/.test(wordAt(pieces, at)) && pieces.slice(0, at).some(isSettable),
  );

/** The piece past the last word that announces the new value. */
export function cueEnd(pieces: readonly Piece[]): number {
  let end = -1;
  let later = LATER;
  for (let at = 0; at < pieces.length; at++) {
    const text = wordAt(pieces, at);
    if (text === 'to' && isOfDeed(pieces, end, at)) break;
    if (
      /^(?:be|been|meant|mean|read|said|say|actually|really|correction|amend|to|was|were|mistyped|miscounted|last)$/.test(
        text,
      )
    )
      end = at + 1;
    else if (/^(?:that|it)$/.test(text) && /^(?:make|call)$/.test(wordAt(pieces, at - 1))) {
      end = at + 1;
      // "Make that 3 to Jo": what follows is the value.
      if (pieces[end]?.is === 'count') return end;
    } else if (text === 'should' && end < 0) end = at + 1;
    // "Put that loss down as 2"; "I put it down as today but it was Monday" goes on.
    else if (
      text === 'as' &&
      wordAt(pieces, at - 1) === 'down' &&
      !pieces.slice(at).some((_, n) => /^(?:was|were)$/.test(wordAt(pieces, at + n)))
    )
      return at + 1;
    // "Correction, yesterday's strike was 14": the day only tells which.
    if (text === 'correction') later = LATER_OR_WAS;
    if (
      end >= 0 &&
      pieces.slice(end).some(isSettable) &&
      !pieces
        .slice(end)
        .some((_, n) => later.test(wordAt(pieces, end + n)) && !isOfDeed(pieces, end, end + n))
    )
      return end;
  }
  return end;
}
