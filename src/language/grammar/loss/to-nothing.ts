/** What plants come to that are lost: "crisped to nothing", "went to dust". */
import type { Piece } from '../../pieces/pieces.js';
import { wordAt } from '../rule.js';

/** "To nothing", "to a crisp", "to death": nothing is left of them. */
export const cameToNothing = (pieces: readonly Piece[], at: number): boolean => {
  const end = /^(?:an?|bone)$/.test(wordAt(pieces, at)) ? at + 1 : at;
  const none = pieces[end];
  return (
    /^(?:nothing|nowt|slime|goo|rags|shreds|skeletons|dust|death|crisps?|bits|cinders?|crumbs|tinder|ashes|straw|sticks)$/.test(
      wordAt(pieces, end),
    ) ||
    (none?.is === 'count' && none.quantity.value === 0)
  );
};
