/** Where "root" is no root that a cutting made: rooting powder, rot, a delivery, something that nobody has told of. */
import type { Piece } from '../../pieces/pieces.js';
import { whole } from '../../phrases.js';
import { wordAt } from '../rule.js';

/** What is looked at without its name; behind any other word stands something that nobody here knows. */
const OF_PLANTS = whole`
  them|those|these|it|that|any|any of them|either|both|all|each|every|one|ones|lot|lots|batch|batches|pots?|trays?|jars?
  others?|rest|remaining|cuttings?|slips?|plants?|tips|stems?|leaf|leaves|babies|roots?|bottom|top|surface|so|yet|day|week
  first|second|third|old|older|oldest|new|newer|newest|last|latest|next|big|bigger|biggest|small|smaller|little|tiny
  left|right|back|front|most|mine|ours|half|good|bad|weak|my|our|the|of|here|there|now|today|top|show
`;

/** "Nothing on the telly", "nothing on wriggly": what nobody has told of. */
export const onSomethingElse = (pieces: readonly Piece[], to: number): boolean => {
  if (wordAt(pieces, to - 1) !== 'on') return false;
  const at = /^(?:the|my|our)$/.test(wordAt(pieces, to)) ? to + 1 : to;
  const next = pieces[at + 1];
  return (
    pieces[at]?.is === 'word' &&
    !OF_PLANTS.test(wordAt(pieces, at)) &&
    next?.is !== 'plant' &&
    !/^(?:ones?|lot|lots|batch|batches|crowd|cuttings?|slips?|plants?|stems?|leaves)$/.test(
      wordAt(pieces, at + 1),
    )
  );
};

/** Whether what stands behind the word, or anywhere beside it, makes it one of these. */
export const notAboutRoots = (pieces: readonly Piece[], _from: number, to: number): boolean =>
  /^(?:cutting|cuttings|powder|hormone|rot|stock|ball|balls|bound)$/.test(wordAt(pieces, to)) ||
  onSomethingElse(pieces, to) ||
  onSomethingElse(pieces, to + 1) ||
  pieces.some(
    (piece, at) =>
      piece.is === 'word' &&
      /^(?:arrived|delivered|received|bought|came|dropped)$/.test(piece.text) &&
      // Tugged, "they came straight out, no roots".
      !/^(?:(?:straight|right|clean) )?(?:out|up|away) /.test(
        `${wordAt(pieces, at + 1)} ${wordAt(pieces, at + 2)} `,
      ),
  );
