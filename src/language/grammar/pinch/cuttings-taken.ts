/** Tips taken to be rooted: "nipped off the tips for cuttings", "… and put them in perlite". */
import type { Piece } from '../../pieces/pieces.js';
import { followsInAct, wordAt } from '../rule.js';

export const cuttingsTaken = (pieces: readonly Piece[], _from: number, to: number): boolean =>
  followsInAct(pieces, to, /^(?:cuttings|cutting|bits|slips)$/) ||
  pieces.some(
    ({ is }, at) =>
      at > to &&
      is === 'medium' &&
      /^(?:in|into)$/.test(wordAt(pieces, at - 1)) &&
      /^(?:put|stuck|popped|shoved|poked|pushed|bunged|dibbed)$/.test(wordAt(pieces, at - 3)),
  );
