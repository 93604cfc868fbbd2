/** Days that are not the act's own: when it was due, how long it was meant, when somebody was away or is coming. */
import { isBoundary } from '../../clauses/boundaries.js';
import { wordAt } from '../../grammar/rule.js';
import { pastPerson } from '../../mood/somebody-else.js';
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';

export const PLANNED = /^(?:due|down|planned|supposed|meant|booked|set|scheduled|pencilled)$/;

/** "Due" or the like before it, and "but" or "so" between it and the act. */
export const isPlannedFor = (pieces: readonly Piece[], at: number, act: number): boolean =>
  pieces.slice(Math.max(0, at - 4), at).some((piece) => piece.is === 'word' && PLANNED.test(piece.text)) &&
  pieces.slice(at, act).some((piece) => piece.is === 'word' && /^(?:but|so)$/.test(piece.text));

/** Behind "been meaning to", "been putting it off". */
export function isHowLongMeant(pieces: readonly Piece[], at: number): boolean {
  const from = Math.max(0, at - 6);
  const before = pieces.slice(from, at).map((_, n) => wordAt(pieces, from + n));
  const been = before.lastIndexOf('been');
  return (
    been >= 0 &&
    before
      .slice(been)
      .some((word) => /^(?:meaning|putting|promising|intending|planning|list|dodging)$/.test(word))
  );
}

/** "…, we were away", "…, I'd been at my sister's" behind a break. */
export function wasAway(pieces: readonly Piece[], at: number): boolean {
  const start = pieces.slice(0, at).findLastIndex(({ is }) => is === 'break') + 1;
  const part = pieces.slice(start, at);
  return (
    start > 0 &&
    /^(?:we|i|he|she|they)$/.test(wordAt(part, 0)) &&
    /^(?:was|were|had)$/.test(wordAt(part, 1)) &&
    part.some((_, n) => /^(?:away|off|at|down|in|out|on|up|over|abroad|ill|poorly)$/.test(wordAt(part, n)))
  );
}

/** "…, Doreen coming for them on Saturday", "as Jim is calling on Friday": told of somebody behind a break or a reason. */
export function isSomeonesComing(pieces: readonly Piece[], to: number): boolean {
  for (let at = to - 1; at > 0 && at > to - 7; at--) {
    if (pieces[at]?.is === 'break') return false;
    if (!/^(?:coming|calling|visiting|collecting)$/.test(wordAt(pieces, at))) continue;
    const start = pieces
      .slice(0, at)
      .findLastIndex(
        (piece, n) => piece.is === 'break' || /^(?:as|because|since|cos|for)$/.test(wordAt(pieces, n)),
      );
    return start > 0 && pieces.slice(start + 1, at).every(({ is }) => is === 'word');
  }
  return false;
}

/** Straight before: "the ten I potted on", "those we moved out". */
export function dealtWithBefore(pieces: readonly Piece[], to: number): boolean {
  let at = to - 1;
  while (/^(?:on|up|out|in|back|over)$/.test(wordAt(pieces, at))) at--;
  const deed = pieces[at];
  // A look is the act itself: "by the Salt Harrier I have looked today, from 15 have 9 roots made".
  if (deed?.is !== 'word' || deed.verb?.form !== 'past' || /^(?:look|check|tug)$/.test(deed.verb.lemma))
    return false;
  // "Of the four I turned out yesterday two have roots".
  if (
    /^(?:lift|turn|tip|knock)$/.test(deed.verb.lemma) &&
    pieces.slice(to).some((_, n) => /^(?:roots?|rooted|rooting|held|hold)$/.test(wordAt(pieces, to + n)))
  )
    return false;
  while (/^(?:had|have|only|just|last)$/.test(wordAt(pieces, at - 1))) at--;
  if (!/^(?:i|we)$/.test(wordAt(pieces, at - 1))) return false;
  const those = pieces[at - 2];
  return (
    those?.is === 'plant' ||
    those?.is === 'count' ||
    /^(?:ones?|those|that|which|lot|batch|plants|cuttings)$/.test(wordAt(pieces, at - 2))
  );
}

/** Behind these a day is compared with, or bounds what is told. */
const BOUNDS = /^(?:than|for|of|by|until|till|since|before|from)$/;
/** Told of what is to come, of what ought to have been, or of a bound. */
const NOT_DONE = whole`
  is|are|isn't|aren't|it's|they're|i'm|we're|he's|she's|will|it'll|they'll|i'll|we'll|can|could|would|should|ought|may|might
  coming|calling|visiting|collecting|due|going|expected|forecast|wants|want|needs|need|left|since|till|until
`;

/** Whether the day that ends a row is of its excuse or its outlook, where no deed took it for its own. */
export function isOfOtherDeed(row: readonly Piece[], at: number): boolean {
  const start = row
    .slice(0, at)
    .findLastIndex((piece) => isBoundary(piece) || EXCUSES.test(wordAt([piece], 0)));
  return (
    BOUNDS.test(wordAt(row, at - 1)) ||
    isHowLongMeant(row, at) ||
    wasAway(row, at) ||
    isSomeonesDeed(row, start + 1) ||
    row.some((_, n) => n >= start && n < at && isNotDone(row, n))
  );
}

/** "…, Jean took two on Sunday"; no "… because it was her birthday", "… and a lady asked for more". */
function isSomeonesDeed(row: readonly Piece[], from: number): boolean {
  const deed = row[pastPerson(row, from)?.to ?? -1];
  return (
    from > 0 &&
    deed?.is === 'word' &&
    deed.verb?.form === 'past' &&
    !/^(?:be|have|ask|say|tell|want)$/.test(deed.verb.lemma)
  );
}

const isNotDone = (row: readonly Piece[], at: number): boolean =>
  NOT_DONE.test(wordAt(row, at)) ||
  // "Balance to follow"; no "got round to the porch".
  (wordAt(row, at) === 'to' && /^(?:do|go|be|follow|come|finish|get)$/.test(wordAt(row, at + 1)));
const EXCUSES = /^(?:as|because|since|cos|coz)$/;
