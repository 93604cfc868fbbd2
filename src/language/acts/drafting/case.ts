/** What a case of drafting is: a record named like the phrase, with when a piece is that and what it then tells. */
import type { Clause } from '../../clauses/clauses.js';
import type { Piece, PieceOf } from '../../pieces/pieces.js';
import type { OpenDraft } from './draft.js';
import type { ToldSoFar } from './told-so-far.js';

/** A piece in its place, and what the clause has told before it. */
export interface Seen<Is extends Piece['is']> {
  readonly piece: PieceOf<Is>;
  readonly pieces: readonly Piece[];
  readonly at: number;
  readonly clause: Clause;
  readonly told: ToldSoFar;
  /** The draft of the plant that is being told of. */
  readonly draft: OpenDraft;
}

export interface Case<A> {
  readonly name: string;
  /** Notes in which it decides; tests run them. */
  readonly phrasings: readonly string[];
  /** Of the cases for a piece the first that fits decides. */
  readonly when: (seen: A) => boolean;
  readonly does: (seen: A) => void;
  /** It only remembers; the later cases are asked as well. */
  readonly goesOn?: true;
}

/** What a case does that keeps a piece out of the draft. */
export const passOver = (): void => {};

/** Whether one of the cases decided what the piece tells. */
export function decided<A>(cases: readonly Case<A>[], seen: A): boolean {
  for (const each of cases) {
    if (!each.when(seen)) continue;
    each.does(seen);
    if (!each.goesOn) return true;
  }
  return false;
}

/** Whether the piece stands before the words of the act. */
export const isBeforeAct = ({ at, clause }: Pick<Seen<Piece['is']>, 'at' | 'clause'>): boolean =>
  at < (clause.hit?.from ?? 0);
