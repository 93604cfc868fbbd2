/** What a row has told so far, and what its next clause may lean on. */
import type { Clause } from '../clauses/clauses.js';
import type { Draft } from './drafting/draft.js';
import type { Hit } from '../grammar/hits.js';
import type { Mood } from '../mood/case.js';
import type { Piece, PlantWords, When } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import type { Quantity } from '../pieces/quantities/quantity.js';
import { carriedFrom } from './spoken-before.js';
import type { Utterance } from '../pieces/utterance.js';

export interface Telling {
  readonly pieces: readonly Piece[];
  readonly clauses: readonly Clause[];
  readonly moods: readonly Mood[];
  readonly utterance: Utterance;
  /** What was proposed before the row, and of it. */
  readonly earlier: readonly Proposal[];
  readonly proposals: Proposal[];
  plantNamed?: PlantWords | undefined;
  /** Of a look told before what it found: how many were looked at, and when. */
  lookedAt?: number | undefined;
  lookedOn?: When | undefined;
  /** How many were said not to have rooted: "they" that go out behind it. */
  unrooted?: Quantity | undefined;
  /** The same of each plant, where several were told of: "3 Salt Harrier and 4 Tallow Bell had no roots". */
  unrootedOf?: readonly Draft[] | undefined;
}

/** A clause that names an act, the `n`th of its row. */
export interface Act {
  readonly n: number;
  readonly clause: Clause;
  readonly hit: Hit;
}

/** The plant that an act without one is about. */
export const carriedHere = ({ plantNamed, earlier, proposals }: Telling): PlantWords | undefined =>
  plantNamed ?? carriedFrom([...earlier, ...proposals]);

/** Where what is told behind an act ends. */
export const endOf = ({ clauses, pieces }: Telling, { n }: Act): number =>
  clauses[n + 1]?.from ?? pieces.length;
