/** Where "root" is no root that a cutting made: rooting powder, rot, a delivery. */
import type { Piece } from '../../pieces.js';
import { wordAt } from '../rule.js';

/** Whether what stands behind the word, or anywhere beside it, makes it one of these. */
export const notAboutRoots = (pieces: readonly Piece[], _from: number, to: number): boolean =>
  /^(?:cutting|cuttings|powder|hormone|rot|stock|ball|balls|bound)$/.test(wordAt(pieces, to)) ||
  pieces.some(
    (piece, at) =>
      piece.is === 'word' &&
      /^(?:arrived|delivered|received|bought|came|dropped)$/.test(piece.text) &&
      // Tugged, "they came straight out, no roots".
      !/^(?:(?:straight|right|clean) )?(?:out|up|away) /.test(
        `${wordAt(pieces, at + 1)} ${wordAt(pieces, at + 2)} `,
      ),
  );
