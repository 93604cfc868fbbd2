/** Where a clause ends before its end: behind its act something else begins that is no part of what was done. */
import type { Clause } from '../clauses.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces.js';

interface Ending {
  readonly name: string;
  readonly when: (pieces: readonly Piece[], at: number) => boolean;
}

const isBehindBreak = (pieces: readonly Piece[], at: number): boolean => pieces[at - 1]?.is === 'break';

const endings: readonly Ending[] = [
  {
    // "…, found the label under the bench": what was come upon meanwhile.
    name: ', found …',
    when: (pieces, at) =>
      isBehindBreak(pieces, at) &&
      /^(?:found|saw|noticed|spotted|discovered|heard)$/.test(wordAt(pieces, at)),
  },
  {
    // "…, half to do tomorrow": what was not done.
    name: ', <count> to do',
    when: (pieces, at) =>
      isBehindBreak(pieces, at) &&
      pieces[at]?.is === 'count' &&
      wordAt(pieces, at + 1) === 'to' &&
      /^(?:do|go)$/.test(wordAt(pieces, at + 2)),
  },
  {
    // A reason given.
    name: 'because …',
    when: (pieces, at) => /^(?:because|since)$/.test(wordAt(pieces, at)) && pieces[at + 1]?.is === 'word',
  },
];

/** Whether what was done ends before the piece. */
export const endsBefore = (pieces: readonly Piece[], at: number, clause: Clause): boolean =>
  at > (clause.hit?.to ?? 0) && endings.some(({ when }) => when(pieces, at));
