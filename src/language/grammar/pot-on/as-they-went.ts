/** Plants told of as potted while they were given or planted: how they went, and no potting on. */
import type { Piece } from '../../pieces/pieces.js';
import { wordAt } from '../rule.js';
import { isWhole } from '../stand-ins.js';

const GIVEN = /^(?:give|sell|send|swap|post|donate|hand|pass|drop|dispatch|deliver|flog|swop)$/;

/** What stands farther before says nothing of how they went. */
const LONGEST_TELLING = 60;

/** "Gave three to Nora, potted up", "planted out the five potted Salt Harrier": as they were when that was done. */
export const asTheyWent = (pieces: readonly Piece[], from: number, to: number): boolean => {
  const near = pieces.slice(Math.max(0, from - LONGEST_TELLING), from);
  const told = near
    .slice(near.findLastIndex((piece) => piece.is === 'break' && piece.hard) + 1)
    .flatMap((piece) => (piece.is === 'word' && piece.verb?.form === 'past' ? [piece.verb.lemma] : []));
  const given = told.some((lemma) => GIVEN.test(lemma));
  let lead = from - 1;
  while (
    /^(?:all|both|already|nicely|freshly|newly|just)$/.test(wordAt(pieces, lead)) ||
    isWhole(pieces[lead])
  )
    lead--;
  const before = pieces[lead];
  const behind = pieces[/^(?:on|up)$/.test(wordAt(pieces, to)) ? to + 1 : to];
  const isLast = behind === undefined || (behind.is === 'break' && behind.hard);
  return (
    (given && before?.is === 'break' && isLast) ||
    (told.length > 0 &&
      (before?.is === 'count' || /^(?:the|my|some)$/.test(wordAt(pieces, lead))) &&
      behind?.is === 'plant')
  );
};
