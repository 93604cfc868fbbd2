/** What came back for plants that left: "swapped two with Ken for one of her ferns", "two went to Ken, swapped for a bag of shallots". */
import type { Clause } from '../clauses/clauses.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece, When } from '../pieces/pieces.js';

const SWAP = /^(?:return|swap|swaps|swapped|trade|traded|exchange|exchanged|barter|bartered)$/;

/** Where the words begin that tell of a clause's plants, told to be gone, that they were swapped; -1 where none do. */
export function swappedAt(pieces: readonly Piece[], { hit, to }: Clause): number {
  if (hit?.rule.kind !== 'dispatch') return -1;
  const at = pieces.findIndex(
    (_, n) =>
      n > hit.to &&
      n < to &&
      SWAP.test(wordAt(pieces, n)) &&
      (wordAt(pieces, n) !== 'return' || wordAt(pieces, n - 1) === 'in') &&
      /^(?:for|with)$/.test(wordAt(pieces, n + 1)) &&
      // "In exchange for absolutely nothing".
      !pieces
        .slice(n + 2, n + 5)
        .some((_, m) => /^(?:nothing|nowt|love|free)$/.test(wordAt(pieces, n + 2 + m))) &&
      (pieces[n - 1]?.is === 'break' || /^(?:in|a|as|and|it|them)$/.test(wordAt(pieces, n - 1))),
  );
  if (at < 0) return -1;
  return wordAt(pieces, at - 1) === 'in' ? at - 1 : at;
}

/** "… for a gooseberry with Ken a fortnight ago": the day of a swap, told at its end behind what came back. */
export function dayBehindReturn(pieces: readonly Piece[], clause: Clause): When | undefined {
  if (clause.hit?.rule.kind !== 'dispatch') return undefined;
  const last = pieces
    .slice(beforeReturn(pieces, clause).to, clause.to)
    .findLastIndex(({ is }) => is !== 'break');
  const at = beforeReturn(pieces, clause).to + last;
  const day = pieces[at];
  return last > 0 &&
    day?.is === 'when' &&
    !/^(?:from|of|for|since|until|till|by)$/.test(wordAt(pieces, at - 1))
    ? day.when
    : undefined;
}

/** Of a swap, what came back is no part of what left. */
export function beforeReturn(pieces: readonly Piece[], clause: Clause): Clause {
  const swapped = swappedAt(pieces, clause);
  if (swapped > 0) return { ...clause, to: swapped };
  if (clause.hit?.rule.how !== 'swapped') return clause;
  const from = clause.hit.to;
  const named = clause.hit.rule.shape === 'subject' ? clause.from : from;
  const back = pieces.findIndex(
    (_, at) =>
      at >= from &&
      at < clause.to &&
      wordAt(pieces, at) === 'for' &&
      pieces.slice(named, at).some(({ is }) => is === 'plant'),
  );
  return back < 0 ? clause : { ...clause, to: back };
}
