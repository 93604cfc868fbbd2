/** Where the grower went, by words that may tell of cuttings taken too: "got out there between showers and took six". */
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import { wordAt } from '../rule.js';

const WAY = whole`out|up|down|over|round|back|there|here`;
const WHEN_AND_WHERE = whole`there|here|and|between|before|after|early|at|while|when|ahead|to`;

/** "Got out there …", "popped up to the greenhouse before work and …", told from `from` with what follows at `to`. */
export const isWayThere = (pieces: readonly Piece[], from: number, to: number): boolean =>
  /^(?:got|popped|nipped)$/.test(wordAt(pieces, from)) &&
  WAY.test(wordAt(pieces, to)) &&
  WHEN_AND_WHERE.test(wordAt(pieces, to + 1));
